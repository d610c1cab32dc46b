package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.get;
import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.text;
import static org.bayledger.drawing.ResultTree.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The steps in which internal seals are made, once for all bays that have the same.
 *
 * @param bays those bays
 * @param always what holds for every step that seals, said once
 * @param steps the steps in order
 */
record SheetSeals(String bays, List<SheetOrigin.Row> always, List<Step> steps) {

    /** What a step may say of how it is done. */
    private static final List<String> HOW =
            List.of("preparation", "primer", "weather", "tooling", "cure");

    /**
     * One step.
     *
     * @param how what is done beside that which holds for every step
     * @param before what has to be signed, and what hides the joints afterwards
     */
    record Step(String number, String title, List<String> how, List<String> before) {}

    /** One kind of joint in a bay. */
    record Joint(
            String step, String type, String count, String length, String volume, String hold) {}

    boolean hasAlways() {
        return !always.isEmpty();
    }

    /** The joints of a bay, those that it has none of left out. */
    static List<Joint> joints(List<Object> items) {
        return items.stream()
                .filter(SheetSeals::seals)
                .flatMap(item -> list(item, "result", "joints").stream())
                .filter(SheetSeals::counted)
                .map(SheetSeals::joint)
                .toList();
    }

    private static boolean seals(@Nullable Object item) {
        return "internal-seals".equals(get(item, "check"));
    }

    private static boolean counted(Object joint) {
        return get(joint, "count") instanceof BigDecimal count && count.signum() > 0;
    }

    private static Joint joint(Object joint) {
        return new Joint(
                text(joint, "step"),
                words(text(joint, "type")),
                text(joint, "count"),
                text(joint, "length"),
                text(joint, "sealantVolume"),
                Boolean.TRUE.equals(get(joint, "holdPoint")) ? "inspect and sign" : "\u2013");
    }

    /** The steps of all bays. */
    static List<SheetSeals> of(Map<?, ?> result) {
        Map<List<Object>, List<String>> bays = new LinkedHashMap<>();
        for (Object bay : list(result, "bays")) {
            for (Object item : list(bay, "items")) {
                List<Object> sequence = list(item, "result", "sequence");
                if (seals(item) && !sequence.isEmpty()) {
                    bays.computeIfAbsent(sequence, steps -> new ArrayList<>()).add(text(bay, "id"));
                }
            }
        }
        List<SheetSeals> all = new ArrayList<>();
        bays.forEach((sequence, names) -> all.add(of(names, sequence)));
        return all;
    }

    private static SheetSeals of(List<String> bays, List<Object> sequence) {
        List<String> common = HOW.stream().filter(name -> isSame(sequence, name)).toList();
        List<SheetOrigin.Row> always = new ArrayList<>();
        for (String name : common) {
            sequence.stream()
                    .filter(step -> get(step, name) != null)
                    .findFirst()
                    .ifPresent(
                            step -> always.add(new SheetOrigin.Row(words(name), text(step, name))));
        }
        return new SheetSeals(
                (bays.size() == 1 ? "bay " : "bays ") + String.join(", ", bays),
                always,
                sequence.stream().map(step -> step(step, common)).toList());
    }

    /** Whether all steps that seal say the same. */
    private static boolean isSame(List<Object> sequence, String name) {
        return sequence.stream()
                        .filter(step -> !list(step, "jointTypes").isEmpty())
                        .map(step -> text(step, name))
                        .distinct()
                        .count()
                == 1;
    }

    private static Step step(Object step, List<String> common) {
        List<String> how =
                HOW.stream()
                        .filter(name -> !common.contains(name) && get(step, name) != null)
                        .map(name -> text(step, name))
                        .toList();
        List<String> before = new ArrayList<>();
        if (get(step, "holdPoint") != null) {
            before.add(text(step, "holdPoint"));
        }
        List<Object> hiding = list(step, "hiddenBy");
        if (!hiding.isEmpty()) {
            before.add(
                    "Hidden later by: "
                            + String.join(
                                    ", ",
                                    hiding.stream()
                                            .map(
                                                    by ->
                                                            words(String.valueOf(by))
                                                                    .toLowerCase(Locale.ROOT))
                                            .toList())
                            + ".");
        }
        return new Step(text(step, "step"), text(step, "title"), how, before);
    }
}
