package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.get;
import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.words;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A finding on a sheet.
 *
 * @param severity in words
 * @param items what it is on
 * @param more how many more there are than those, in words
 */
record SheetFinding(String severity, String code, List<Name> items, String more, String text) {

    private static final List<String> SEVERITIES = List.of("ACTION", "NOTE", "INFO");

    /** Items that are named of those that share an assumption. */
    private static final int NAMED = 6;

    /** Findings of the whole job, those first on which somebody has to act. */
    static List<SheetFinding> ofJob(Map<?, ?> result) {
        return list(result, "findings").stream()
                .sorted(Comparator.comparingInt(SheetFinding::rank))
                .map(
                        finding -> {
                            List<String> items = ReviewSheet.strings(finding, "items");
                            return of(
                                    finding,
                                    Name.all(items.isEmpty() ? List.of("the job") : items),
                                    "",
                                    "");
                        })
                .toList();
    }

    /** What the checks took for granted, each said once with the items that share it. */
    static List<SheetFinding> assumptions(Map<?, ?> result) {
        Map<String, Shared> shared = new LinkedHashMap<>();
        for (Object bay : list(result, "bays")) {
            for (Object item : list(bay, "items")) {
                Stream.concat(
                                list(item, "findings").stream(),
                                list(item, "result", "findings").stream())
                        .filter(finding -> "NOTE".equals(get(finding, "severity")))
                        .forEach(
                                finding ->
                                        shared.computeIfAbsent(
                                                        ResultTree.text(finding, "code"),
                                                        code -> new Shared(finding))
                                                .add(ResultTree.text(item, "id"), finding));
            }
        }
        return shared.values().stream().map(Shared::finding).toList();
    }

    /** Findings of one code on several items. */
    private static final class Shared {

        private final Object first;
        private final Set<String> items = new LinkedHashSet<>();
        private final Set<String> texts = new LinkedHashSet<>();

        Shared(Object first) {
            this.first = first;
        }

        void add(String item, Object finding) {
            items.add(item);
            texts.add(ResultTree.text(finding, "text"));
        }

        SheetFinding finding() {
            return of(
                    first,
                    Name.all(items.stream().limit(NAMED).toList()),
                    items.size() <= NAMED ? "" : " and " + (items.size() - NAMED) + " more",
                    texts.size() == 1
                            ? ""
                            : " The numbers are those of the first item; the answer as JSON has those"
                                    + " of every one.");
        }
    }

    private static int rank(Object finding) {
        int rank = SEVERITIES.indexOf(ResultTree.text(finding, "severity"));
        return rank < 0 ? SEVERITIES.size() : rank;
    }

    private static SheetFinding of(Object finding, List<Name> items, String more, String after) {
        return new SheetFinding(
                words(ResultTree.text(finding, "severity")),
                ResultTree.text(finding, "code"),
                items,
                more,
                ResultTree.text(finding, "text") + after);
    }
}
