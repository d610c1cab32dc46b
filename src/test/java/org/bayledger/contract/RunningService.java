package org.bayledger.contract;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.bayledger.BayledgerApplication;
import org.bayledger.platform.TestDatabase;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.test.context.ContextConfiguration;

/**
 * A test against the whole service on a port of its own and an empty database. All tests with this
 * annotation share one service.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        classes = BayledgerApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "springdoc.cache.disabled=true")
@ContextConfiguration(initializers = RunningService.OwnDatabase.class)
public @interface RunningService {

    /** Gives the service a database of its own. */
    class OwnDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

        @Override
        public void initialize(ConfigurableApplicationContext context) {
            TestDatabase.create()
                    .register(
                            (name, value) ->
                                    TestPropertyValues.of(name + "=" + value.get())
                                            .applyTo(context));
        }
    }
}
