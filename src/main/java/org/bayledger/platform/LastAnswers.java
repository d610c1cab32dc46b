package org.bayledger.platform;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.apache.catalina.connector.Connector;
import org.apache.tomcat.util.threads.ThreadPoolExecutor;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Holds a graceful stop until the last answer has left. The graceful stop itself waits until no
 * request is in the servlet any more; what the servlet wrote may still be in the container's buffer
 * then, and stopping the container would close the connection before it is sent.
 */
@Component
@ConditionalOnProperty(name = "server.shutdown", havingValue = "graceful")
class LastAnswers
        implements SmartLifecycle, WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    /** Between two looks; the container tells nobody when an answer has left. */
    private static final long PAUSE_MILLIS = 10;

    private final List<Connector> connectors = new CopyOnWriteArrayList<>();
    private volatile boolean running;

    @Override
    public void customize(TomcatServletWebServerFactory factory) {
        factory.addConnectorCustomizers(connectors::add);
    }

    /** In the phase of the graceful stop, so that one time limit holds for both. */
    @Override
    public int getPhase() {
        return WebServerApplicationContext.GRACEFUL_SHUTDOWN_PHASE;
    }

    /** Like the web server, whose connectors it pauses for good. */
    @Override
    public boolean isPauseable() {
        return false;
    }

    @Override
    public void start() {
        running = true;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    @Override
    public void stop() {
        running = false;
    }

    @Override
    public void stop(Runnable stopped) {
        running = false;
        // from here on no request begins, so that those that are left are the last
        connectors.forEach(Connector::pause);
        Thread waiting =
                new Thread(
                        () -> {
                            try {
                                while (connectors.stream().anyMatch(LastAnswers::isAnswering)) {
                                    TimeUnit.MILLISECONDS.sleep(PAUSE_MILLIS);
                                }
                            } catch (InterruptedException e) {
                                Thread.currentThread().interrupt();
                            }
                            stopped.run();
                        },
                        "last-answers");
        waiting.setDaemon(true);
        waiting.start();
    }

    /** Whether a request is in work or waits for a thread; connections without one need none. */
    private static boolean isAnswering(Connector connector) {
        return connector.getProtocolHandler().getExecutor() instanceof ThreadPoolExecutor threads
                && !threads.isShutdown()
                && threads.getSubmittedCount() > 0;
    }
}
