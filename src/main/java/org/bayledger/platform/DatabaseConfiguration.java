package org.bayledger.platform;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.boot.flyway.autoconfigure.FlywayConnectionDetails;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/**
 * Two credentials for one database: one migrates the schema and owns it, the other serves requests
 * and can only read and append.
 */
@Configuration(proxyBeanMethods = false)
class DatabaseConfiguration {

    private static final String URL = "spring.datasource.url";

    /** Migrations name the role they grant to with this placeholder. */
    private static final String SERVICE_ROLE = "serviceRole";

    @Bean
    FlywayConfigurationCustomizer twoCredentials(
            JdbcConnectionDetails service,
            FlywayConnectionDetails migrations,
            @Value("${bayledger.database.create-service-role:false}") boolean createServiceRole) {
        return configuration -> {
            String serviceUser = service.getUsername();
            String servicePassword = service.getPassword();
            String migrationUser = migrations.getUsername();
            if (!StringUtils.hasText(serviceUser)
                    || !StringUtils.hasText(migrationUser)
                    || serviceUser.equals(migrationUser)) {
                throw new StartupRefusedException(
                        "The database needs two different logins: one for migrations, which owns"
                                + " the tables, and one for the service, which can only read and"
                                + " append. With one login for both, the service could rewrite"
                                + " what it recorded.",
                        "Set SPRING_FLYWAY_USER and SPRING_FLYWAY_PASSWORD for migrations, and"
                                + " SPRING_DATASOURCE_USERNAME and SPRING_DATASOURCE_PASSWORD for"
                                + " the service. With BAYLEDGER_DATABASE_CREATE_SERVICE_ROLE=true"
                                + " the migration login creates the service's login.");
            }
            Map<String, String> placeholders = new HashMap<>(configuration.getPlaceholders());
            placeholders.put(SERVICE_ROLE, serviceUser);
            configuration.placeholders(placeholders);
            if (createServiceRole && servicePassword != null) {
                createServiceRole(configuration.getDataSource(), serviceUser, servicePassword);
            }
        };
    }

    private static void createServiceRole(
            DataSource migrations, String serviceUser, String servicePassword) {
        try (Connection connection = migrations.getConnection()) {
            DatabaseRoles.ensureLogin(connection, serviceUser, servicePassword);
        } catch (SQLException e) {
            throw new IllegalStateException("The service's database login was not created", e);
        }
    }

    @Bean
    @DependsOnDatabaseInitialization
    ServiceRoleCheck serviceRoleCheck(DataSource service, Flyway flyway) {
        ServiceRoleCheck check = new ServiceRoleCheck();
        check.verify(service, flyway.getConfiguration().getDefaultSchema());
        return check;
    }

    /** The database that the service starts for itself when it is given none. */
    @Configuration(proxyBeanMethods = false)
    @Conditional(NoDatabaseGiven.class)
    static class Embedded {

        @Bean(destroyMethod = "close")
        EmbeddedDatabase embeddedDatabase(
                @Value("${bayledger.embedded-database.directory:.bayledger/database}")
                        String directory) {
            return EmbeddedDatabase.start(Path.of(directory));
        }

        @Bean
        JdbcConnectionDetails serviceConnection(EmbeddedDatabase database) {
            return new JdbcConnectionDetails() {
                @Override
                public String getUsername() {
                    return EmbeddedDatabase.SERVICE;
                }

                @Override
                public String getPassword() {
                    return database.credentials().servicePassword();
                }

                @Override
                public String getJdbcUrl() {
                    return database.jdbcUrl();
                }
            };
        }

        @Bean
        FlywayConnectionDetails migrationConnection(EmbeddedDatabase database) {
            return new FlywayConnectionDetails() {
                @Override
                public String getUsername() {
                    return EmbeddedDatabase.OWNER;
                }

                @Override
                public String getPassword() {
                    return database.credentials().ownerPassword();
                }

                @Override
                public String getJdbcUrl() {
                    return database.jdbcUrl();
                }
            };
        }
    }

    /** True when no database address is configured. */
    static class NoDatabaseGiven implements Condition {

        @Override
        public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
            return !StringUtils.hasText(context.getEnvironment().getProperty(URL));
        }
    }
}
