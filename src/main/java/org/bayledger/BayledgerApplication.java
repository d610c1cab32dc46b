package org.bayledger;

import org.bayledger.platform.DevelopmentToken;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.boot.security.oauth2.server.resource.autoconfigure.OAuth2ResourceServerAutoConfiguration;

/** Starts the service, or makes a token for development. There are no users with passwords. */
@SpringBootApplication(
        exclude = {
            UserDetailsServiceAutoConfiguration.class,
            OAuth2ResourceServerAutoConfiguration.class
        })
public class BayledgerApplication {

    public static void main(String[] args) {
        if (args.length > 0 && args[0].equals(DevelopmentToken.COMMAND)) {
            System.exit(DevelopmentToken.run(args, System.out, System.err));
        }
        SpringApplication.run(BayledgerApplication.class, args);
    }
}
