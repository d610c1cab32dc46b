package org.bayledger.review;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What an IFC file says of the layers of its plates, in words: it names no heat treatment and no
 * interlayer in a way that a check could rest on, so that it stays for the reader to state them.
 */
final class IfcLayers {

    /** Different build-ups of one wall that are named. */
    private static final int MOST_NAMED = 5;

    private final IfcModel model;

    /** What is said of an instance, by its number. */
    private final Map<Integer, StepEntity> material = new HashMap<>();

    private final Map<Integer, StepEntity> type = new HashMap<>();

    IfcLayers(IfcModel model) {
        this.model = model;
        relate("IFCRELASSOCIATESMATERIAL", material);
        relate("IFCRELDEFINESBYTYPE", type);
    }

    private void relate(String relation, Map<Integer, StepEntity> to) {
        for (StepEntity one : model.all(relation)) {
            for (StepEntity relating : model.found(Arrays.asList(one.argument(5)))) {
                model.found(one.list(4)).forEach(related -> to.put(related.id(), relating));
            }
        }
    }

    /** The build-ups of some plates; empty where the file says nothing of them. */
    String of(List<StepEntity> plates) {
        Set<String> words = new LinkedHashSet<>();
        for (StepEntity plate : plates) {
            StepEntity of = type.get(plate.id());
            StepEntity own = material.get(plate.id());
            StepEntity found = own != null || of == null ? own : material.get(of.id());
            String said = found == null ? "" : words(found);
            if (!said.isEmpty() && words.size() < MOST_NAMED) {
                words.add(said);
            }
        }
        return String.join("; ", words);
    }

    private String words(StepEntity material) {
        try {
            return switch (material.type()) {
                case "IFCMATERIALLAYERSETUSAGE" ->
                        words(model.required(material.argument(0), "IFCMATERIALLAYERSET"));
                case "IFCMATERIALLAYERSET" -> layers(model.required(material.list(0)));
                case "IFCMATERIAL" -> material.text(0);
                default -> "";
            };
        } catch (IllegalArgumentException notReadable) {
            return "";
        }
    }

    private String layers(List<StepEntity> layers) {
        List<String> words = new ArrayList<>();
        for (StepEntity layer : layers) {
            StepEntity of = model.optional(layer.argument(0), "IFCMATERIAL");
            words.add((of == null ? "" : of.text(0) + " ") + thickness(layer.argument(1)));
        }
        return String.join(" + ", words);
    }

    private String thickness(@Nullable Object measure) {
        return BigDecimal.valueOf(1000 * model.length(measure))
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " mm";
    }
}
