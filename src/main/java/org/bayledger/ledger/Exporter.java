package org.bayledger.ledger;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes a whole chain as lines of JSON, in the format that is published as {@value #FORMAT}, with
 * everything that is needed to verify it elsewhere.
 *
 * <p>It writes what the rows say and judges nothing: content that is missing is left out, and
 * whoever verifies the export finds it so. A page of the chain is in memory at a time, and of
 * content that was written its hash.
 */
@Component
class Exporter {

    static final String FORMAT = "bayledger-export-1";

    /** Contents that are in memory at once. */
    private static final int AT_ONCE = 20;

    private final LedgerStore store;
    private final AuditStore audit;
    private final JsonMapper json;

    Exporter(LedgerStore store, AuditStore audit, JsonMapper json) {
        this.store = store;
        this.audit = audit;
        this.json = json;
    }

    private record ProjectLine(String type, String format, String hash, String text) {}

    private record ContentLine(String type, String hash, String text) {}

    private record RevisionLine(String type, String hash, String verdict, String text) {}

    private record EndLine(String type, int size, String headHash, @Nullable String recordedAt) {}

    /** Writes the chain up to the revision that is its newest when this begins. */
    void write(Project project, OutputStream out) throws IOException {
        Head head = store.head(project);
        line(
                out,
                new ProjectLine(
                        "project", FORMAT, project.genesisHash(), text(project.canonical())));
        Set<String> written = new HashSet<>();
        for (Chain chain = new Chain(audit, project, head.size()); chain.hasNext(); ) {
            Chain.Link link = chain.next();
            writeContents(project, link, written, out);
            line(
                    out,
                    new RevisionLine(
                            "revision",
                            link.revision().hash(),
                            link.revision().verdict(),
                            text(link.manifest(project).canonical())));
        }
        Views.Checkpoint end = Views.Checkpoint.of(head);
        line(out, new EndLine("end", end.size(), end.headHash(), end.recordedAt()));
    }

    /** Writes what a revision names and none before it did. */
    private void writeContents(
            Project project, Chain.Link link, Set<String> written, OutputStream out)
            throws IOException {
        List<String> named = new ArrayList<>();
        named.add(link.revision().documentShell());
        named.add(link.revision().resultShell());
        for (Manifest.Bay bay : link.bays()) {
            named.add(bay.input());
            named.add(bay.result());
        }
        List<String> fresh = named.stream().filter(written::add).toList();
        for (int from = 0; from < fresh.size(); from += AT_ONCE) {
            List<String> some = fresh.subList(from, Math.min(from + AT_ONCE, fresh.size()));
            Map<String, byte[]> contents = store.contents(project.organisation(), some);
            for (String hash : some) {
                byte[] bytes = contents.get(hash);
                if (bytes != null) {
                    line(out, new ContentLine("content", hash, text(bytes)));
                }
            }
        }
    }

    private static String text(byte[] utf8) {
        return new String(utf8, StandardCharsets.UTF_8);
    }

    private void line(OutputStream out, Record line) throws IOException {
        out.write(json.writeValueAsBytes(line));
        out.write('\n');
    }
}
