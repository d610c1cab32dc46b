package org.bayledger.platform;

import java.util.List;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Refuses to start a service whose database login could change what it recorded. */
final class ServiceRoleCheck {

    /** Tables of the schema that the current login could alter, with or without owning them. */
    private static final String ALTERABLE =
            """
            SELECT c.relname
            FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
            WHERE n.nspname = :schema AND c.relkind IN ('r', 'p')
              AND (pg_has_role(current_user, c.relowner, 'MEMBER')
                   OR pg_has_role(current_user, n.nspowner, 'MEMBER')
                   OR has_table_privilege(c.oid, 'UPDATE, DELETE, TRUNCATE, TRIGGER')
                   OR has_any_column_privilege(c.oid, 'UPDATE'))
            ORDER BY c.relname
            """;

    void verify(DataSource service, String schema) {
        JdbcClient database = JdbcClient.create(service);
        List<String> alterable =
                database.sql(ALTERABLE).param("schema", schema).query(String.class).list();
        if (!alterable.isEmpty()) {
            String role = database.sql("SELECT current_user").query(String.class).single();
            throw new StartupRefusedException(
                    "The service's database login '"
                            + role
                            + "' could alter recorded rows (tables: "
                            + String.join(", ", alterable)
                            + "). It must own no table, be no superuser and have no UPDATE, DELETE,"
                            + " TRUNCATE or TRIGGER right.",
                    "Give the service a login of its own, with no membership in the owner's role,"
                            + " and take back what was granted to it beyond the migrations' own"
                            + " grants.");
        }
    }
}
