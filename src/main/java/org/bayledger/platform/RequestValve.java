package org.bayledger.platform;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.MDC;

/**
 * What every request gets, also one that the container refuses by itself: an identifier that the
 * answer and every line of the log have, and header fields that tell browsers to be careful.
 */
final class RequestValve extends ValveBase {

    static final String REQUEST_ID = "X-Request-Id";

    /** The identifier's name in the log. */
    static final String LOGGED_ID = "requestId";

    /** One line a request, switched on by the level INFO; nothing of what was sent but the path. */
    private static final Logger LOG = LoggerFactory.getLogger("org.bayledger.requests");

    private static final Pattern SAFE = Pattern.compile("[A-Za-z0-9._-]{1,64}");

    /** Pages and drawings have styles and pictures of their own and nothing from elsewhere. */
    private static final String NOTHING_ELSE =
            "default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:; font-src data:;"
                    + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /** The contract's pages run scripts of this service, which ask this service. */
    private static final String OWN_SCRIPTS =
            "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self'"
                    + " 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; base-uri"
                    + " 'none'; form-action 'none'; frame-ancestors 'none'";

    RequestValve() {
        super(true);
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        long start = System.nanoTime();
        String id = identifier(request.getHeader(REQUEST_ID));
        MDC.put(LOGGED_ID, id);
        try {
            headers(request.getRequestURI(), id, response);
            getNext().invoke(request, response);
        } finally {
            if (LOG.isInfoEnabled()) {
                LOG.info(
                        "{} {} answered {} after {} ms",
                        request.getMethod(),
                        request.getRequestURI(),
                        response.getStatus(),
                        TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start));
            }
            MDC.remove(LOGGED_ID);
        }
    }

    /** The caller's own, where it can't do harm in a log or a header. */
    private static String identifier(@Nullable String given) {
        return given != null && SAFE.matcher(given).matches()
                ? given
                : UUID.randomUUID().toString();
    }

    private static void headers(@Nullable String path, String id, Response response) {
        boolean scripts = path != null && path.startsWith("/swagger-ui/");
        response.setHeader(REQUEST_ID, id);
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("Content-Security-Policy", scripts ? OWN_SCRIPTS : NOTHING_ELSE);
        response.setHeader("Referrer-Policy", "no-referrer");
        response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
        if (!scripts) {
            // reviews and revisions are somebody's; no cache on the way keeps them
            response.setHeader("Cache-Control", "no-store");
        }
    }
}
