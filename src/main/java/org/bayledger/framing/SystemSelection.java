package org.bayledger.framing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
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
        List<SelectionResult.Reinforced> reinforced =
                new CornerReinforcement(this, request, zones, all).options();
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
    Choice choice(int c, Section section, int z) {
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
        reinforced.stream()
                .map(each -> CornerReinforcement.saving(each, all, reporting))
                .filter(Objects::nonNull)
                .forEach(findings::add);
        if (request.reinforcement() == null && request.zones().size() > 1) {
            findings.add(
                    Finding.info(
                            "REINFORCEMENT_NOT_LOOKED_AT",
                            "/reinforcement",
                            "What steel in the corner zones would save was not looked at: describe"
                                    + " it in reinforcement."));
        }
    }

    static @Nullable Choice find(List<Choice> choices, String id) {
        return choices.stream().filter(each -> each.id().equals(id)).findFirst().orElse(null);
    }

    private static double used(FramingResult result) {
        Double utilization = result.outcome().utilization();
        return utilization == null ? 0 : utilization;
    }

    static double used(Choice choice) {
        Double utilization = choice.utilization();
        return utilization == null ? 0 : utilization;
    }

    private static double size(@Nullable Quantity quantity) {
        return size(quantity, Double.MAX_VALUE);
    }

    static double size(@Nullable Quantity quantity, double without) {
        return quantity == null ? without : quantity.si();
    }
}
