package org.bayledger.review;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;

/** Review documents for the tests: the demo scenario, and edits of it. */
final class Documents {

    static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.GOVERNING);

    private Documents() {}

    /** The tree of a revision of the demo scenario, to be edited. */
    static Map<String, Object> demo(int revision) {
        try {
            return tree(
                    Files.readString(Path.of("demo-seed/quillmoor-library-" + revision + ".json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> tree(String json) {
        return (Map<String, Object>) StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> object(Map<String, Object> tree, String name) {
        return (Map<String, Object>) tree.get(name);
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> element(Map<String, Object> tree, String name, int index) {
        return ((List<Map<String, Object>>) tree.get(name)).get(index);
    }

    static ReviewDocument document(Map<String, Object> tree) {
        return Binder.bind(tree, ReviewDocument.class);
    }

    static ReviewResult review(Map<String, Object> tree) {
        return Review.run(document(tree), US);
    }

    /** The item of an id and a check. */
    static ReviewItem item(ReviewResult result, String id, String check) {
        return result.bays().stream()
                .flatMap(bay -> bay.items().stream())
                .filter(item -> item.id().equals(id) && item.check().equals(check))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + check + " of " + id));
    }

    /** Codes of the review's findings that name an item; all where the item is empty. */
    static List<String> codes(ReviewResult result, String item) {
        return result.findings().stream()
                .filter(finding -> item.isEmpty() || finding.items().contains(item))
                .map(ReviewResult.ReviewFinding::code)
                .toList();
    }
}
