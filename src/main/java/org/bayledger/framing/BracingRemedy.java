package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Remedy;
import org.bayledger.check.Remedy.Change;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.framing.FramingResult.LimitState;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * A member that buckles sideways, held more closely; where it bends too far as well, with a stiffer
 * section.
 */
final class BracingRemedy {

    private static final int HALVINGS = 30;
    private static final int DIGITS = 3;

    /** Distance of braces, m, below which none is offered (common practice, no source). */
    private static final double CLOSEST = 0.3;

    /** How often braces are put in the middle between those that are there. */
    private static final int ROUNDS = 3;

    private BracingRemedy() {}

    static @Nullable Remedy of(FramingRequest request, FramingResult failed, Reporting reporting) {
        Section section = request.section();
        LateralBuckling lateral = section.lateralBuckling();
        Double used = failed.stressUtilization();
        boolean sideways =
                used != null
                        && used > 1
                        && failed.allowableStresses().get(0).limitState()
                                == LimitState.LATERAL_TORSIONAL_BUCKLING;
        boolean tooSoft = failed.requiredSecondMomentOfArea().si() > inertia(request);
        if (lateral == null
                || !sideways
                || lateral.elasticBucklingMoment() != null
                || (tooSoft && section.computed())) {
            return null;
        }
        List<Change> changes = new ArrayList<>();
        String words = "";
        Section stiff = section;
        if (tooSoft) {
            Quantity needed =
                    Quantity.roundedUp(
                            Dimension.SECOND_MOMENT_OF_AREA,
                            failed.requiredSecondMomentOfArea().si(),
                            reporting.units(),
                            DIGITS);
            changes.add(new Change("/section/secondMomentOfArea", needed));
            stiff =
                    section.with(
                            needed.si(),
                            section.sectionModulus(),
                            section.deadLoadInertia(),
                            section.deadLoadModulus());
            words =
                    "Use a section with a second moment of area of at least "
                            + needed.text(reporting.units())
                            + ", and hold it";
        }
        FramingRequest stiffened = request.withSection(stiff);
        return lateral.bracePoints() == null
                ? closer(stiffened, lateral, words, changes, reporting)
                : more(stiffened, lateral, words, changes, reporting);
    }

    private static double inertia(FramingRequest request) {
        return SectionProperties.of(request).inertia();
    }

    /** The greatest unbraced length that passes. */
    private static @Nullable Remedy closer(
            FramingRequest request,
            LateralBuckling lateral,
            String words,
            List<Change> changes,
            Reporting reporting) {
        double low = CLOSEST;
        double high = lateral.unbracedLength() == null ? 0 : lateral.unbracedLength();
        if (high <= low || !passes(request, lateral.withUnbracedLength(low))) {
            return null;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (passes(request, lateral.withUnbracedLength(middle))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Quantity length = Quantity.roundedDown(Dimension.DISTANCE, low, reporting.units(), DIGITS);
        changes.add(new Change("/section/lateralBuckling/unbracedLength", length));
        return FramingRemedies.passing(
                (words.isEmpty() ? "Hold the member" : words)
                        + " sideways or against twisting every "
                        + length.text(reporting.units())
                        + " or closer.",
                changes,
                braced(request, lateral.withUnbracedLength(length.si())),
                reporting);
    }

    /** Braces in the middle between those that are there, until it passes. */
    private static @Nullable Remedy more(
            FramingRequest request,
            LateralBuckling lateral,
            String words,
            List<Change> changes,
            Reporting reporting) {
        List<Double> places = lateral.bracePoints() == null ? List.of() : lateral.bracePoints();
        for (int round = 0; round < ROUNDS; round++) {
            places = doubled(places);
            if (passes(request, lateral.withBracePoints(places))) {
                List<Quantity> written =
                        places.stream().map(at -> Quantity.of(Dimension.DISTANCE, at)).toList();
                changes.add(new Change("/section/lateralBuckling/bracePoints", written));
                return FramingRemedies.passing(
                        (words.isEmpty() ? "Hold the member" : words)
                                + " sideways or against twisting at "
                                + String.join(
                                        ", ",
                                        written.stream()
                                                .map(at -> at.text(reporting.units()))
                                                .toList())
                                + " from its start.",
                        changes,
                        braced(request, lateral.withBracePoints(places)),
                        reporting);
            }
        }
        return null;
    }

    private static List<Double> doubled(List<Double> places) {
        List<Double> more = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            if (i > 0) {
                more.add((places.get(i - 1) + places.get(i)) / 2);
            }
            more.add(places.get(i));
        }
        return more;
    }

    private static boolean passes(FramingRequest request, LateralBuckling changed) {
        return FramingCheck.withoutRemedies(
                                braced(request, changed),
                                new Reporting(UnitSystem.SI, TraceLevel.GOVERNING))
                        .outcome()
                        .verdict()
                != Verdict.EXCEEDED;
    }

    private static FramingRequest braced(FramingRequest request, LateralBuckling changed) {
        return request.withSection(request.section().withLateralBuckling(changed));
    }
}
