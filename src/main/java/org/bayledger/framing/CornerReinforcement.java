package org.bayledger.framing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.framing.SelectionResult.Choice;
import org.bayledger.framing.SelectionResult.Reinforced;
import org.bayledger.framing.SelectionResult.Zone;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Lighter sections with steel in the zones where they fail alone, such as corners. */
final class CornerReinforcement {

    private final SystemSelection selection;
    private final SelectionRequest request;
    private final List<Zone> zones;
    private final List<String> all;

    /**
     * What steel may do.
     *
     * @param selection runs a candidate through a zone
     * @param zones each zone with the sections that pass alone
     * @param all sections that pass in every zone alone, the lightest first
     */
    CornerReinforcement(
            SystemSelection selection,
            SelectionRequest request,
            List<Zone> zones,
            List<String> all) {
        this.selection = selection;
        this.request = request;
        this.zones = zones;
        this.all = all;
    }

    /** The sections that serve all zones with steel in some, the lightest first. */
    List<Reinforced> options() {
        SelectionReinforcement given = request.reinforcement();
        List<Reinforced> options = new ArrayList<>();
        for (int c = 0; given != null && c < request.candidates().size(); c++) {
            Reinforced option = option(c, given);
            if (option != null) {
                options.add(option);
            }
        }
        options.sort(
                Comparator.comparingDouble(
                        each -> SystemSelection.size(each.massWithout(), Double.MAX_VALUE)));
        return options;
    }

    private @Nullable Reinforced option(int c, SelectionReinforcement given) {
        SectionCandidate candidate = request.candidates().get(c);
        if (candidate.section().reinforcement() != null) {
            return null;
        }
        Section strong = candidate.section().withReinforcement(given.steel());
        List<String> names = new ArrayList<>();
        double utilization = 0;
        for (int z = 0; z < zones.size(); z++) {
            Choice alone = SystemSelection.find(zones.get(z).passing(), candidate.id());
            Choice choice = alone == null ? selection.choice(c, strong, z) : alone;
            if (!choice.passes()) {
                return null;
            }
            if (alone == null) {
                names.add(zones.get(z).zone());
            }
            utilization = Math.max(utilization, SystemSelection.used(choice));
        }
        return names.isEmpty() || names.size() == zones.size()
                ? null
                : reinforced(candidate, given, names, utilization);
    }

    private Reinforced reinforced(
            SectionCandidate candidate,
            SelectionReinforcement given,
            List<String> names,
            double utilization) {
        Double mass = candidate.section().massPerLength();
        Double whole = all.isEmpty() ? null : massOf(all.get(0));
        boolean compared = mass != null && whole != null;
        double plain = mass == null ? 0 : mass;
        double serving = whole == null ? 0 : whole;
        double with = plain + given.massPerLength();
        double saved = serving - plain;
        double added = with - serving;
        Double total = 0.0;
        for (SelectionZone zone : request.zones()) {
            Double length = zone.memberLength();
            total =
                    !compared || length == null || total == null
                            ? null
                            : (Double)
                                    (total
                                            + length
                                                    * (names.contains(zone.zone())
                                                            ? -added
                                                            : saved));
        }
        return new Reinforced(
                candidate.id(),
                names,
                utilization,
                mass == null ? null : Quantity.of(Dimension.LINE_MASS, mass),
                mass == null ? null : Quantity.of(Dimension.LINE_MASS, with),
                compared ? Quantity.of(Dimension.LINE_MASS, saved) : null,
                compared ? Quantity.of(Dimension.LINE_MASS, added) : null,
                total == null ? null : Quantity.of(Dimension.MASS, total));
    }

    private @Nullable Double massOf(String id) {
        return request.candidates().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .map(each -> each.section().massPerLength())
                .orElse(null);
    }

    /**
     * What an option saves against the lightest section that serves all zones alone, or null where
     * it saves nothing or that is not known.
     */
    static @Nullable Finding saving(Reinforced option, List<String> all, Reporting reporting) {
        Quantity saved = option.savedPerLength();
        Quantity added = option.addedPerLength();
        Quantity total = option.saved();
        if (saved == null
                || added == null
                || saved.si() <= 0
                || (total != null && total.si() <= 0)) {
            return null;
        }
        String steeled =
                (option.zones().size() == 1 ? "zone " : "zones ")
                        + String.join(", ", option.zones());
        String text =
                "%s with steel in %s saves %s in the other zones against %s and %s %s in %s"
                        .formatted(
                                option.id(),
                                steeled,
                                saved.text(reporting.units()),
                                all.get(0),
                                added.si() > 0 ? "adds" : "saves",
                                Quantity.of(Dimension.LINE_MASS, Math.abs(added.si()))
                                        .text(reporting.units()),
                                steeled);
        return Finding.info(
                "REINFORCEMENT_SAVES",
                "/reinforcement",
                total == null
                        ? text + ". Give memberLength of every zone to have the mass totalled."
                        : text + ": " + total.text(reporting.units()) + " less over all members.");
    }
}
