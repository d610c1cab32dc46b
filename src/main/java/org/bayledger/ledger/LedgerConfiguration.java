package org.bayledger.ledger;

import java.time.Clock;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the ledger is built on besides the database. */
@Configuration(proxyBeanMethods = false)
class LedgerConfiguration {

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    @Bean
    Engine engine(BuildProperties build) {
        return new Engine(
                String.valueOf(build.getVersion()),
                document -> {
                    throw new IllegalStateException("This build has no review");
                });
    }
}
