package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;

/** What a writer says about the project's head (RFC 9110, 13.1), and whether it holds. */
final class Precondition {

    /** One entity tag, weak or strong, and the comma after it. */
    private static final Pattern TAG =
            Pattern.compile("\\s*((?:W/)?\"[\\x21\\x23-\\x7E\\x80-\\xFF]*\")\\s*(,|$)");

    /** Tags of which one must be the head's; null where only the first revision is meant. */
    private final @Nullable List<String> tags;

    private Precondition(@Nullable List<String> tags) {
        this.tags = tags;
    }

    /**
     * Reads the two headers.
     *
     * @throws FaultsException where one can't be read or they contradict each other
     */
    static Precondition of(@Nullable String ifMatch, @Nullable String ifNoneMatch) {
        if (ifMatch != null && ifNoneMatch != null) {
            throw malformed("Send If-Match or If-None-Match, not both.");
        }
        if (ifMatch != null) {
            return new Precondition(tags(ifMatch));
        }
        if (ifNoneMatch == null) {
            throw LedgerProblem.preconditionRequired();
        }
        if (!"*".equals(ifNoneMatch.strip())) {
            throw malformed("If-None-Match must be * here: it says that this is the first one.");
        }
        return new Precondition(null);
    }

    private static List<String> tags(String header) {
        List<String> tags = new ArrayList<>();
        Matcher matcher = TAG.matcher(header);
        int end = 0;
        while (end < header.length() && matcher.find(end) && matcher.start() == end) {
            tags.add(matcher.group(1));
            end = matcher.end();
        }
        if (tags.isEmpty() || end != header.length() || header.stripTrailing().endsWith(",")) {
            throw malformed(
                    "If-Match must be the entity tag of the project's newest revision, in quotes.");
        }
        return tags;
    }

    private static FaultsException malformed(String detail) {
        return new FaultsException(List.of(new Fault("", detail, Fault.Kind.MALFORMED)));
    }

    /** Refuses a writer who has not seen the head; weak tags never match (strong comparison). */
    void require(Head head) {
        boolean holds = tags == null ? head.size() == 0 : tags.contains(head.entityTag());
        if (!holds) {
            throw LedgerProblem.preconditionFailed();
        }
    }
}
