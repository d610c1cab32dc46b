package org.bayledger.platform;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/** What a token can allow, and which of it each operation asks for. */
enum Scope {
    /** Running checks. */
    CHECK("bayledger.check", "run checks and reviews, draw, select and tabulate; stores nothing"),
    /** Reading. */
    READ("bayledger.read", "read the organisation's projects and revisions, and compare them"),
    /** Recording. */
    RECORD("bayledger.record", "create projects and record revisions"),
    /** Auditing. */
    AUDIT("bayledger.audit", "verify chains, take checkpoints and export"),
    /** Measuring. */
    METRICS("bayledger.metrics", "read the service's own figures, where they are switched on");

    /** What the authorities of a token are called that come from its scopes. */
    private static final String AUTHORITY = "SCOPE_";

    /**
     * Requests that need a scope.
     *
     * @param method of the request; null: any
     * @param pattern of its path
     * @param scope that it needs
     */
    record Rule(@Nullable HttpMethod method, String pattern, Scope scope) {

        private boolean matches(HttpMethod asked, PathContainer path) {
            PathPattern parsed = PathPatternParser.defaultInstance.parse(pattern);
            return (method == null || method.equals(asked)) && parsed.matches(path);
        }
    }

    /** The first that matches holds. */
    static final List<Rule> RULES =
            List.of(
                    new Rule(null, "/v1/projects/*/verification", AUDIT),
                    new Rule(null, "/v1/projects/*/checkpoint", AUDIT),
                    new Rule(null, "/v1/projects/*/export", AUDIT),
                    new Rule(HttpMethod.GET, "/v1/projects/**", READ),
                    new Rule(HttpMethod.HEAD, "/v1/projects/**", READ),
                    new Rule(null, "/v1/projects/**", RECORD),
                    new Rule(null, "/v1/**", CHECK),
                    new Rule(null, "/actuator/metrics/**", METRICS),
                    new Rule(null, "/actuator/prometheus/**", METRICS));

    private final String text;
    private final String allows;

    Scope(String text, String allows) {
        this.text = text;
        this.allows = allows;
    }

    /** As it stands in a token. */
    String text() {
        return text;
    }

    /** What it allows, in words. */
    String allows() {
        return allows;
    }

    /** As Spring Security has it. */
    String authority() {
        return AUTHORITY + text;
    }

    /** The scope behind an authority. */
    static String ofAuthority(@Nullable String authority) {
        return authority != null && authority.startsWith(AUTHORITY)
                ? authority.substring(AUTHORITY.length())
                : String.valueOf(authority);
    }

    /**
     * The scope that an operation of the contract needs.
     *
     * @param path its path, with variables in braces
     */
    static Scope of(HttpMethod method, String path) {
        PathContainer parsed = PathContainer.parsePath(path);
        return RULES.stream()
                .filter(rule -> rule.matches(method, parsed))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No scope for " + path))
                .scope();
    }
}
