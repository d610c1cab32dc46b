package org.bayledger.platform;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.AppenderBase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import org.slf4j.LoggerFactory;

/** Everything that some loggers say down to DEBUG, each line after its request's identifier. */
final class Listened implements AutoCloseable {

    private final List<ILoggingEvent> events = new CopyOnWriteArrayList<>();
    private final AppenderBase<ILoggingEvent> appender =
            new AppenderBase<>() {
                @Override
                protected void append(ILoggingEvent event) {
                    event.prepareForDeferredProcessing();
                    events.add(event);
                }
            };
    private final Map<Logger, Level> before = new LinkedHashMap<>();

    Listened(String... loggers) {
        appender.start();
        root().addAppender(appender);
        for (String name : loggers) {
            quiet((Logger) LoggerFactory.getLogger(name));
        }
        quiet((Logger) LoggerFactory.getLogger("org.bayledger.requests"));
    }

    private void quiet(Logger logger) {
        before.put(logger, logger.getLevel());
        logger.setLevel(Level.DEBUG);
    }

    List<String> lines() {
        return events.stream()
                .map(
                        event ->
                                event.getMDCPropertyMap().getOrDefault("requestId", "-")
                                        + " "
                                        + event.getFormattedMessage()
                                        + (event.getThrowableProxy() == null
                                                ? ""
                                                : ThrowableProxyUtil.asString(
                                                        event.getThrowableProxy())))
                .toList();
    }

    private static Logger root() {
        return (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    }

    @Override
    public void close() {
        root().detachAppender(appender);
        before.forEach(Logger::setLevel);
    }
}
