package org.bayledger.platform;

import java.io.PrintStream;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.crypto.SecretKey;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.Environment;
import org.springframework.security.oauth2.jose.jws.MacAlgorithm;
import org.springframework.security.oauth2.jwt.JwsHeader;
import org.springframework.security.oauth2.jwt.JwtClaimsSet;
import org.springframework.security.oauth2.jwt.JwtEncoderParameters;
import org.springframework.security.oauth2.jwt.NimbusJwtEncoder;

/**
 * The command that makes a token for development, signed with the secret that the service is
 * configured with: {@code java -jar bayledger.jar dev-token --org demo}.
 */
public final class DevelopmentToken {

    /** The command's name, first of the arguments. */
    public static final String COMMAND = "dev-token";

    private static final String USAGE =
            """
            usage: dev-token --org NAME [--subject NAME] [--scopes A,B] [--hours N]
              --org      organisation whose projects the token opens
              --subject  who it is for; developer where absent
              --scopes   what it allows: all where absent, of %s
              --hours    how long it is good for, 1 to 720; 8 where absent
            """
                    .formatted(
                            Arrays.stream(Scope.values())
                                    .map(Scope::text)
                                    .collect(Collectors.joining(", ")));

    private static final int MOST_HOURS = 720;

    private DevelopmentToken() {}

    /** No beans are needed to read the configuration. */
    static class Nothing {}

    /**
     * Prints a token.
     *
     * @param arguments the command and its options
     * @return the process's exit code
     */
    public static int run(String[] arguments, PrintStream out, PrintStream err) {
        try (ConfigurableApplicationContext configuration =
                new SpringApplicationBuilder(Nothing.class)
                        .web(WebApplicationType.NONE)
                        .bannerMode(Banner.Mode.OFF)
                        .logStartupInfo(false)
                        .registerShutdownHook(false)
                        .run()) {
            out.println(make(options(arguments), configuration.getEnvironment(), Instant.now()));
            return 0;
        } catch (StartupRefusedException refused) {
            err.println(refused.getMessage());
            err.println(refused.action());
            return 1;
        }
    }

    private static Map<String, String> options(String[] arguments) {
        Map<String, String> options = new HashMap<>();
        List<String> known = List.of("org", "subject", "scopes", "hours");
        for (int i = 1; i < arguments.length; i++) {
            String argument = arguments[i];
            int equals = argument.indexOf('=');
            String name = equals < 0 ? argument : argument.substring(0, equals);
            boolean fits = name.startsWith("--") && known.contains(name.substring(2));
            if (!fits || (equals < 0 && i + 1 == arguments.length)) {
                throw new StartupRefusedException("'" + argument + "' is not understood.", USAGE);
            }
            options.put(
                    name.substring(2),
                    equals < 0 ? arguments[++i] : argument.substring(equals + 1));
        }
        return options;
    }

    /** A token of the configured issuer. */
    static String make(Map<String, String> options, Environment environment, Instant now) {
        TokenSettings settings = TokenSettings.of(environment).orElse(null);
        SecretKey secret = settings == null ? null : settings.secret();
        if (settings == null || secret == null) {
            throw new StartupRefusedException(
                    "No secret is configured that a token could be signed with; the tokens of this"
                            + " service come from its issuer, or it is open.",
                    TokenSettings.ADVICE);
        }
        String organisation = options.getOrDefault("org", "");
        if (organisation.isBlank()) {
            throw new StartupRefusedException("The organisation is missing.", USAGE);
        }
        JwtClaimsSet claims =
                JwtClaimsSet.builder()
                        .issuer(settings.issuer())
                        .audience(settings.audiences())
                        .subject(options.getOrDefault("subject", "developer"))
                        .claim(settings.organisationClaim(), organisation)
                        .claim("scope", scopes(options.get("scopes")))
                        .issuedAt(now)
                        .expiresAt(now.plus(validity(options.getOrDefault("hours", "8"))))
                        .build();
        JwsHeader header = JwsHeader.with(MacAlgorithm.HS256).type("at+jwt").build();
        return NimbusJwtEncoder.withSecretKey(secret)
                .build()
                .encode(JwtEncoderParameters.from(header, claims))
                .getTokenValue();
    }

    private static String scopes(@Nullable String asked) {
        List<String> all = Arrays.stream(Scope.values()).map(Scope::text).toList();
        List<String> scopes = asked == null ? all : List.of(asked.split("[ ,]+"));
        if (!all.containsAll(scopes)) {
            throw new StartupRefusedException("There is no such scope in " + asked + ".", USAGE);
        }
        return String.join(" ", scopes);
    }

    private static Duration validity(String hours) {
        if (!hours.matches("[1-9][0-9]{0,2}") || Integer.parseInt(hours) > MOST_HOURS) {
            throw new StartupRefusedException("'" + hours + "' hours are not accepted.", USAGE);
        }
        return Duration.ofHours(Integer.parseInt(hours));
    }
}
