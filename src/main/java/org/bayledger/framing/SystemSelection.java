package org.bayledger.framing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.framing.SelectionResult.Choice;
import org.bayledger.framing.SelectionResult.Limit;
import org.bayledger.framing.SelectionResult.Zone;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Chooses sections: every candidate is run through the framing check ({@link FramingCheck}) as
 * every member of every zone, under wind; the lightest that passes comes first. Dead load,
 * connections, anchors and the glass are other checks'.
 */
public final class SystemSelection {

    private static final Comparator<Choice> LIGHTEST =
            Comparator.comparingDouble((Choice each) -> size(each.massPerLength()))
                    .thenComparingDouble(each -> size(each.depth()))
                    .thenComparing(Choice::id);

    private static final Comparator<Choice> LEAST_LOADED =
            Comparator.comparingDouble(
                            (Choice each) ->
                                    each.utilization() == null
                                            ? Double.MAX_VALUE
                                            : each.utilization())
                    .thenComparing(Choice::id);

    private final SelectionRequest request;
    private final Reporting reporting;
    private final List<Finding> findings = new ArrayList<>();

    private SystemSelection(SelectionRequest request, Reporting reporting) {
        this.request = request;
        this.reporting = reporting;
    }

    /** Runs every candidate through every zone. */
    public static SelectionResult run(SelectionRequest request, Reporting reporting) {
        return new SystemSelection(request, reporting).choose();
    }

    private SelectionResult choose() {
        Trace trace = new Trace(reporting.trace());
        List<Zone> zones = new ArrayList<>();
        Verdict verdict = Verdict.SATISFIED;
        double greatest = 0;
        for (int z = 0; z < request.zones().size(); z++) {
            Zone zone = zone(z);
            zones.add(zone);
            Choice first = zone.passing().isEmpty() ? zone.others().get(0) : zone.passing().get(0);
            if (zone.passing().isEmpty()) {
                verdict = verdict.and(none(z, zone));
            }
            double utilization = first.utilization() == null ? 0 : first.utilization();
            greatest = Math.max(greatest, utilization);
            trace.step(
                    "u",
                    "utilization of " + first.id() + " as " + first.member() + " in " + zone.zone(),
                    Dimension.NONE,
                    utilization,
                    "greatest of deflection and stress over their limits, of the members there",
                    "the framing check of that member");
        }
        if (request.candidates().stream().anyMatch(c -> c.section().massPerLength() == null)) {
            findings.add(
                    Finding.note(
                            "MASS_NOT_GIVEN",
                            "/candidates",
                            "Sections without massPerLength come last, and are not compared by"
                                    + " mass."));
        }
        List<String> all = servesAll(zones);
        List<SelectionResult.Reinforced> reinforced = new Corner(zones, all).options();
        conclude(all, reinforced);
        return new SelectionResult(
                new Outcome(
                        verdict,
                        greatest,
                        findings,
                        List.of(),
                        trace.steps(),
                        Cautions.with(
                                "Sections are compared under wind only. Dead load, connections,"
                                        + " splices, anchors, glass and the makers' own limits are"
                                        + " checked elsewhere.")),
                zones,
                all,
                reinforced);
    }

    private Zone zone(int z) {
        List<Choice> passing = new ArrayList<>();
        List<Choice> others = new ArrayList<>();
        for (int c = 0; c < request.candidates().size(); c++) {
            Choice choice = choice(c, request.candidates().get(c).section(), z);
            (choice.passes() ? passing : others).add(choice);
        }
        passing.sort(LIGHTEST);
        others.sort(LEAST_LOADED);
        return new Zone(request.zones().get(z).zone(), passing, others);
    }

    /** A candidate, perhaps with steel, in a zone. */
    private Choice choice(int c, Section section, int z) {
        SectionCandidate candidate = request.candidates().get(c);
        SelectionZone zone = request.zones().get(z);
        Verdict verdict = Verdict.SATISFIED;
        FramingResult worst = null;
        String member = "";
        double inertia = 0;
        double modulus = 0;
        List<Finding> reasons = new ArrayList<>();
        for (int m = 0; m < request.members().size(); m++) {
            SelectionMember each = request.members().get(m);
            if (!each.standsIn(zone.zone())) {
                continue;
            }
            FramingResult result =
                    FramingCheck.withoutRemedies(
                            each.with(section, zone.load(), request.deflectionRule()), reporting);
            verdict = verdict.and(result.outcome().verdict());
            if (worst == null || used(result) > used(worst)) {
                worst = result;
                member = each.id();
            }
            inertia = Math.max(inertia, result.requiredSecondMomentOfArea().si());
            modulus = Math.max(modulus, size(result.requiredSectionModulus(), 0));
            for (Finding finding : result.outcome().findings()) {
                if (finding.severity() == Finding.Severity.ACTION) {
                    Finding here = here(finding, c, z, m);
                    if (reasons.stream().noneMatch(here::equals)) {
                        reasons.add(here);
                    }
                }
            }
        }
        if (worst == null) {
            throw new IllegalStateException("a zone without members");
        }
        Double stress = worst.stressUtilization();
        Double mass = candidate.section().massPerLength();
        Double depth = candidate.depth();
        return new Choice(
                candidate.id(),
                mass == null ? null : Quantity.of(Dimension.LINE_MASS, mass),
                depth == null ? null : Quantity.of(Dimension.LENGTH, depth),
                verdict,
                worst.outcome().utilization(),
                member,
                stress != null && stress > worst.deflectionUtilization()
                        ? Limit.STRESS
                        : Limit.DEFLECTION,
                Quantity.of(Dimension.SECOND_MOMENT_OF_AREA, inertia),
                modulus == 0 ? null : Quantity.of(Dimension.SECTION_MODULUS, modulus),
                reasons);
    }

    /** A finding of a member's check, at the place in this request that it is about. */
    private static Finding here(Finding finding, int c, int z, int m) {
        if (finding.pointer().startsWith("/section")) {
            return finding.below("/candidates/" + c);
        }
        return finding.below(
                finding.pointer().startsWith("/load") ? "/zones/" + z : "/members/" + m);
    }

    private Verdict none(int z, Zone zone) {
        boolean open =
                zone.others().stream().anyMatch(each -> each.verdict() == Verdict.UNDETERMINED);
        findings.add(
                Finding.action(
                        open ? "NO_SECTION_PROVEN" : "NO_SECTION_PASSES",
                        "/zones/" + z,
                        open
                                ? "No section passes in zone %s; of some it can't be said for want"
                                                .formatted(zone.zone())
                                        + " of data. See their reasons."
                                : "No section passes in zone %s. The least loaded, %s, reaches %s."
                                        .formatted(
                                                zone.zone(),
                                                zone.others().get(0).id(),
                                                reporting.text(
                                                        Dimension.NONE,
                                                        used(zone.others().get(0))))));
        return open ? Verdict.UNDETERMINED : Verdict.EXCEEDED;
    }

    private static List<String> servesAll(List<Zone> zones) {
        return zones.get(0).passing().stream()
                .map(Choice::id)
                .filter(id -> zones.stream().allMatch(zone -> find(zone.passing(), id) != null))
                .toList();
    }

    private void conclude(List<String> all, List<SelectionResult.Reinforced> reinforced) {
        findings.add(
                all.isEmpty()
                        ? Finding.note(
                                "NO_SECTION_SERVES_ALL_ZONES",
                                "/candidates",
                                "No single section passes in every zone.")
                        : Finding.info(
                                "ONE_SECTION_SERVES_ALL_ZONES",
                                "/candidates",
                                "One section can serve every zone: %s.".formatted(all.get(0))));
        for (SelectionResult.Reinforced each : reinforced) {
            Quantity saved = each.savedPerLength();
            if (saved != null && saved.si() > 0) {
                findings.add(
                        Finding.info(
                                "REINFORCEMENT_SAVES",
                                "/reinforcement",
                                "%s with steel in %s saves %s in the other zones against %s."
                                        .formatted(
                                                each.id(),
                                                String.join(", ", each.zones()),
                                                saved.text(reporting.units()),
                                                all.get(0))));
            }
        }
        if (request.reinforcement() == null && request.zones().size() > 1) {
            findings.add(
                    Finding.info(
                            "REINFORCEMENT_NOT_LOOKED_AT",
                            "/reinforcement",
                            "What steel in the corner zones would save was not looked at: describe"
                                    + " it in reinforcement."));
        }
    }

    private static @Nullable Choice find(List<Choice> choices, String id) {
        return choices.stream().filter(each -> each.id().equals(id)).findFirst().orElse(null);
    }

    private static double used(FramingResult result) {
        Double utilization = result.outcome().utilization();
        return utilization == null ? 0 : utilization;
    }

    private static double used(Choice choice) {
        Double utilization = choice.utilization();
        return utilization == null ? 0 : utilization;
    }

    private static double size(@Nullable Quantity quantity) {
        return size(quantity, Double.MAX_VALUE);
    }

    private static double size(@Nullable Quantity quantity, double without) {
        return quantity == null ? without : quantity.si();
    }

    /** Lighter sections with steel in the zones where they fail alone, such as corners. */
    private final class Corner {

        private final List<Zone> zones;
        private final List<String> all;

        Corner(List<Zone> zones, List<String> all) {
            this.zones = zones;
            this.all = all;
        }

        List<SelectionResult.Reinforced> options() {
            SelectionReinforcement given = request.reinforcement();
            List<SelectionResult.Reinforced> options = new ArrayList<>();
            for (int c = 0; given != null && c < request.candidates().size(); c++) {
                SelectionResult.Reinforced option = option(c, given);
                if (option != null) {
                    options.add(option);
                }
            }
            options.sort(
                    Comparator.comparingDouble(each -> size(each.massWithout(), Double.MAX_VALUE)));
            return options;
        }

        private SelectionResult.@Nullable Reinforced option(int c, SelectionReinforcement given) {
            SectionCandidate candidate = request.candidates().get(c);
            if (candidate.section().reinforcement() != null) {
                return null;
            }
            Section strong = candidate.section().withReinforcement(given.steel());
            List<String> names = new ArrayList<>();
            double utilization = 0;
            for (int z = 0; z < zones.size(); z++) {
                Choice alone = find(zones.get(z).passing(), candidate.id());
                Choice choice = alone == null ? choice(c, strong, z) : alone;
                if (!choice.passes()) {
                    return null;
                }
                if (alone == null) {
                    names.add(zones.get(z).zone());
                }
                utilization = Math.max(utilization, used(choice));
            }
            return names.isEmpty() || names.size() == zones.size()
                    ? null
                    : reinforced(candidate, given, names, utilization);
        }

        private SelectionResult.Reinforced reinforced(
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
            return new SelectionResult.Reinforced(
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
    }
}
