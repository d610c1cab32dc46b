package org.bayledger.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.regex.Pattern;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses requests to an open service under another name than this machine's own: a page in the
 * user's browser could have that name resolve to 127.0.0.1 and read what the service answers.
 */
final class LoopbackHostFilter extends OncePerRequestFilter {

    private static final Pattern LOOPBACK =
            Pattern.compile(
                    "(localhost|127\\.\\d{1,3}\\.\\d{1,3}\\.\\d{1,3}|\\[?(::1|0:0:0:0:0:0:0:1)]?)(:\\d*)?",
                    Pattern.CASE_INSENSITIVE);

    private final SecurityProblems problems;

    LoopbackHostFilter(SecurityProblems problems) {
        this.problems = problems;
    }

    @Override
    protected void doFilterInternal(
            HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String header = request.getHeader(HttpHeaders.HOST);
        // the name may come from elsewhere: an absolute request line, or a forwarding header
        if (isLoopback(request.getServerName()) && (header == null || isLoopback(header))) {
            chain.doFilter(request, response);
        } else {
            problems.answer(
                    request,
                    response,
                    ProblemKind.MISDIRECTED_REQUEST,
                    "The service is open to this machine alone; the Host header must be localhost,"
                            + " 127.0.0.1 or [::1], with any port.");
        }
    }

    private static boolean isLoopback(String host) {
        return LOOPBACK.matcher(host).matches();
    }
}
