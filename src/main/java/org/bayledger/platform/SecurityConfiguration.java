package org.bayledger.platform;

import jakarta.servlet.DispatcherType;
import java.net.InetAddress;
import java.util.Optional;
import org.bayledger.ledger.Caller;
import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.firewall.HttpFirewall;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import tools.jackson.databind.json.JsonMapper;

/**
 * Who may do what. Without configured authentication the service is open, to this machine alone;
 * with it, every operation needs a token with the operation's scope.
 */
@Configuration(proxyBeanMethods = false)
@ConditionalOnWebApplication(type = ConditionalOnWebApplication.Type.SERVLET)
@EnableWebSecurity
class SecurityConfiguration {

    /** What anybody may see: health, the contract and the pages about it, which hold no data. */
    private static final String[] PUBLIC = {
        "/",
        "/problems/**",
        "/actuator/health/**",
        "/v3/api-docs/**",
        "/v3/api-docs.yaml",
        "/swagger-ui.html",
        "/swagger-ui/**"
    };

    private final Optional<TokenSettings> settings;

    SecurityConfiguration(Environment environment) {
        this.settings = TokenSettings.of(environment);
    }

    /** Before anything is started: a database, or a port. */
    @Bean
    static BeanFactoryPostProcessor refusal(Environment environment) {
        return factory -> refuseToBeOpenToOthers(environment);
    }

    /**
     * Goes on with authentication, or on an address that other machines can't reach.
     *
     * @throws StartupRefusedException otherwise
     */
    static void refuseToBeOpenToOthers(Environment environment) {
        if (TokenSettings.of(environment).isPresent()) {
            return;
        }
        requireLoopback("server.address", environment);
        if (environment.containsProperty("management.server.port")) {
            requireLoopback("management.server.address", environment);
        }
    }

    /** Whether everybody on this machine may do everything. */
    boolean isOpen() {
        return settings.isEmpty();
    }

    private static void requireLoopback(String property, Environment environment) {
        InetAddress address =
                Binder.get(environment).bind(property, InetAddress.class).orElse(null);
        if (address == null || !address.isLoopbackAddress()) {
            throw new StartupRefusedException(
                    "Other machines could reach the service, and it would not ask them who they"
                            + " are: "
                            + (address == null
                                    ? property + " is not set"
                                    : property + " is " + address.getHostAddress())
                            + ", and no authentication is configured.",
                    "Set SERVER_ADDRESS=127.0.0.1 (and MANAGEMENT_SERVER_ADDRESS, where there is a"
                            + " MANAGEMENT_SERVER_PORT) to keep the service to this machine, or"
                            + " configure authentication. "
                            + TokenSettings.ADVICE);
        }
    }

    @Bean
    SecurityFilterChain everything(HttpSecurity http, JsonMapper json) {
        SecurityProblems problems = new SecurityProblems(json);
        // no cookie and no session anywhere, so nothing that a foreign page could ride on
        http.csrf(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                // RequestValve sets them, on the container's own answers too
                .headers(AbstractHttpConfigurer::disable)
                .sessionManagement(
                        session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS));
        if (settings.isPresent()) {
            withTokens(http, new Tokens(settings.get()), problems);
        } else {
            http.addFilterBefore(
                            new LoopbackHostFilter(problems), SecurityContextHolderFilter.class)
                    .anonymous(anyone -> anyone.principal(Caller.OPEN))
                    .authorizeHttpRequests(request -> request.anyRequest().permitAll());
        }
        return http.build();
    }

    private static void withTokens(HttpSecurity http, Tokens tokens, SecurityProblems problems) {
        http.authorizeHttpRequests(
                        requests -> {
                            requests.dispatcherTypeMatchers(DispatcherType.ERROR).permitAll();
                            requests.requestMatchers(PUBLIC).permitAll();
                            for (Scope.Rule rule : Scope.RULES) {
                                String scope = rule.scope().authority();
                                if (rule.method() == null) {
                                    requests.requestMatchers(rule.pattern()).hasAuthority(scope);
                                } else {
                                    requests.requestMatchers(rule.method(), rule.pattern())
                                            .hasAuthority(scope);
                                }
                            }
                            requests.anyRequest().authenticated();
                        })
                .exceptionHandling(
                        refusals ->
                                refusals.authenticationEntryPoint(problems)
                                        .accessDeniedHandler(problems))
                .oauth2ResourceServer(
                        server ->
                                server.authenticationEntryPoint(problems)
                                        .accessDeniedHandler(problems)
                                        .jwt(
                                                jwt ->
                                                        jwt.decoder(tokens::decode)
                                                                .jwtAuthenticationConverter(
                                                                        tokens::caller)));
    }

    /** Refuses what normalization could change; which methods exist is for the endpoints to say. */
    @Bean
    HttpFirewall firewall() {
        StrictHttpFirewall firewall = new StrictHttpFirewall();
        firewall.setUnsafeAllowAnyHttpMethod(true);
        return firewall;
    }
}
