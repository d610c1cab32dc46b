package org.bayledger.framing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Remedy;
import org.bayledger.check.Remedy.Change;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Changes to a member that fails, each run through the check again before it is offered. */
final class FramingRemedies {

    private static final int DIGITS = 3;

    /** How often a section modulus is raised, and by how much each time. */
    private static final int TRIES = 40;

    private static final double RAISE = 1.03;

    private FramingRemedies() {}

    static List<Remedy> of(
            FramingRequest request,
            FramingResult failed,
            List<SectionCandidate> others,
            Reporting reporting) {
        List<Remedy> remedies = new ArrayList<>();
        addIfItPasses(remedies, nextSection(request, others, reporting));
        addIfItPasses(remedies, strongerSection(request, failed, reporting));
        addIfItPasses(remedies, BracingRemedy.of(request, failed, reporting));
        addIfItPasses(remedies, narrowerSpacing(request, failed, reporting));
        addIfItPasses(remedies, anotherSupport(request, reporting));
        addIfItPasses(remedies, SteelRemedy.of(request, reporting));
        addIfItPasses(remedies, SpliceRemedy.of(request, reporting));
        return List.copyOf(remedies);
    }

    private static void addIfItPasses(List<Remedy> remedies, @Nullable Remedy remedy) {
        if (remedy != null) {
            remedies.add(remedy);
        }
    }

    /** The lightest of the other sections that passes; those whose mass is not known come last. */
    private static @Nullable Remedy nextSection(
            FramingRequest request, List<SectionCandidate> others, Reporting reporting) {
        return others.stream()
                .filter(other -> !other.section().equals(request.section()))
                .sorted(
                        Comparator.comparing(
                                other -> other.section().massPerLength(),
                                Comparator.nullsLast(Comparator.naturalOrder())))
                .map(other -> section(request, other, reporting))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Remedy section(
            FramingRequest request, SectionCandidate other, Reporting reporting) {
        try {
            return passing(
                    "Use section " + other.id() + ".",
                    List.of(new Change("/section", other.section())),
                    request.withSection(other.section()),
                    reporting);
        } catch (FaultsException doesNotFit) {
            return null;
        }
    }

    /**
     * The least second moment of area and section modulus that pass, written up to three digits.
     * Where a greater modulus lowers the stress at which the member buckles, or a stiffer section
     * draws moment from the steel inside, the modulus is raised again.
     */
    private static @Nullable Remedy strongerSection(
            FramingRequest request, FramingResult failed, Reporting reporting) {
        Section old = request.section();
        boolean wind = request.axis() == Axis.WIND;
        SectionProperties now = SectionProperties.of(request);
        Double dead = old.deadLoadInertia();
        double oldInertia = wind || dead == null ? now.inertia() : dead;
        Double oldModulus = wind ? now.modulus() : old.deadLoadModulus();
        Quantity inertia =
                up(
                        Dimension.SECOND_MOMENT_OF_AREA,
                        failed.requiredSecondMomentOfArea().si(),
                        reporting);
        boolean stiffer = inertia.si() > oldInertia;
        double newInertia = stiffer ? inertia.si() : oldInertia;
        Quantity required = failed.requiredSectionModulus();
        double least = required == null ? 0 : required.si();
        for (int i = 0; i < TRIES; i++) {
            Quantity modulus =
                    required == null ? null : up(Dimension.SECTION_MODULUS, least, reporting);
            boolean stronger = modulus != null && oldModulus != null && modulus.si() > oldModulus;
            Double newModulus =
                    stronger && modulus != null ? Double.valueOf(modulus.si()) : oldModulus;
            Section changed =
                    wind
                            ? old.with(newInertia, newModulus, dead, old.deadLoadModulus())
                            : old.with(
                                    now.inertia(),
                                    now.modulus(),
                                    stiffer || dead != null ? Double.valueOf(newInertia) : null,
                                    newModulus);
            List<Change> changes = new ArrayList<>();
            List<String> words = new ArrayList<>();
            if (stiffer) {
                String name = wind ? "secondMomentOfArea" : "deadLoadSecondMomentOfArea";
                changes.add(new Change("/section/" + name, inertia));
                words.add("a second moment of area of at least " + inertia.text(reporting.units()));
            }
            if (stronger && modulus != null) {
                String name = wind ? "sectionModulus" : "deadLoadSectionModulus";
                changes.add(new Change("/section/" + name, modulus));
                words.add("a section modulus of at least " + modulus.text(reporting.units()));
            }
            if (changes.isEmpty()) {
                return null;
            }
            Remedy remedy =
                    passing(
                            "Use a section with " + String.join(" and ", words) + ".",
                            old.computed() ? List.of(new Change("/section", changed)) : changes,
                            request.withSection(changed),
                            reporting);
            if (remedy != null || !stronger) {
                return remedy;
            }
            least *= RAISE;
        }
        return null;
    }

    /** Load is proportional to the tributary width, and so is every demand of this axis. */
    private static @Nullable Remedy narrowerSpacing(
            FramingRequest request, FramingResult failed, Reporting reporting) {
        Double width = request.tributaryWidth();
        Double utilization = failed.outcome().utilization();
        if (width == null
                || utilization == null
                || request.concurrentBendingStress() != null
                || request.deadLoad() != null
                || request.tributaryAreas() != null) {
            return null;
        }
        Quantity narrower =
                Quantity.roundedDown(
                        Dimension.DISTANCE, width / utilization, reporting.units(), DIGITS);
        return passing(
                "Space the members so that each carries no more than "
                        + narrower.text(reporting.units())
                        + " of wall.",
                List.of(new Change("/tributaryWidth", narrower)),
                request.withTributaryWidth(narrower.si()),
                reporting);
    }

    /** One more support in the middle of the longest span. */
    private static @Nullable Remedy anotherSupport(FramingRequest request, Reporting reporting) {
        List<Double> supports = request.supports();
        int longest = 0;
        for (int i = 0; i + 1 < supports.size(); i++) {
            if (supports.get(i + 1) - supports.get(i)
                    > supports.get(longest + 1) - supports.get(longest)) {
                longest = i;
            }
        }
        if (supports.size() < 2 || request.axis() == Axis.DEAD) {
            return null;
        }
        Quantity middle =
                Quantity.of(
                        Dimension.DISTANCE,
                        (supports.get(longest) + supports.get(longest + 1)) / 2);
        List<Double> more = new ArrayList<>(supports);
        more.add(longest + 1, middle.si());
        List<Quantity> written =
                more.stream().map(at -> Quantity.of(Dimension.DISTANCE, at)).toList();
        List<Change> changes = List.of(new Change("/supports", written));
        return passing(
                "Hold the member at "
                        + middle.text(reporting.units())
                        + " from its start as well, with a wind-load anchor.",
                changes,
                request.withSupports(more),
                reporting);
    }

    static @Nullable Remedy passing(
            String text, List<Change> changes, FramingRequest changed, Reporting reporting) {
        FramingResult result = FramingCheck.withoutRemedies(changed, reporting);
        Double utilization = result.outcome().utilization();
        return !changes.isEmpty()
                        && result.outcome().verdict() != Verdict.EXCEEDED
                        && utilization != null
                ? new Remedy(text, changes, utilization)
                : null;
    }

    private static Quantity up(Dimension dimension, double si, Reporting reporting) {
        return Quantity.roundedUp(dimension, si, reporting.units(), DIGITS);
    }
}
