package org.bayledger;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class BayledgerApplication {

    public static void main(String[] args) {
        SpringApplication.run(BayledgerApplication.class, args);
    }
}
