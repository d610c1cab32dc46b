package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bayledger.check.Faults;
import org.bayledger.check.LoadBasis;
import org.bayledger.framing.Axis;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.Reinforcement;
import org.bayledger.framing.Section;
import org.bayledger.framing.SpanTableRequest;
import org.bayledger.quantity.Quantity;
import org.bayledger.review.Bay;
import org.bayledger.review.BayResult;
import org.bayledger.review.ReviewItem;
import org.bayledger.review.ReviewResult.WindRow;

/**
 * What a chart of spans of a document's section is made from: the pressures of the wind schedule
 * and the widths of wall that members with that section carry, unless the caller gave others.
 */
final class SectionSpans {

    /** Widths that differ by less than this share are the same. */
    private static final double SAME_WIDTH = 1e-4;

    /** Pressures that differ by less than this share are drawn as one line, that of the greater. */
    private static final double SAME_PRESSURE = 5e-3;

    /** Lines, and widths of members, that a chart can tell apart. */
    private static final int MOST = 20;

    /**
     * By how much one spacing exceeds the one before at most: spans fall with a root of the
     * spacing, so that a straight line from mark to mark lies above them, here by less than 0.2 %.
     */
    private static final double STEP = 1.12;

    /** Steps at most from the least to the greatest; where they differ more, steps are larger. */
    private static final int MOST_BETWEEN = 25;

    private SectionSpans() {}

    /** The table that the chart shows. */
    static SpanTableRequest of(Job job) {
        DrawingRequest request = job.request();
        Section section = request.ofSection().section();
        Faults faults = new Faults();
        Reinforcement steel = section.reinforcement();
        faults.require(
                steel == null || (steel.from() == null && steel.to() == null),
                "/section",
                "'"
                        + request.section()
                        + "' has steel on a part of its length only, for which there is no table of"
                        + " spans; choose a section whose steel runs through");
        LoadBasis basis = request.basis();
        List<Double> pressures = request.pressures();
        if (pressures == null) {
            Set<LoadBasis> bases = new LinkedHashSet<>();
            pressures = distinct(scheduled(job, bases), SAME_PRESSURE);
            basis = bases.stream().findFirst().orElse(null);
            faults.require(
                    !pressures.isEmpty(),
                    "/pressures",
                    "are needed here, and taken by POST /v1/drawings: the document's wind schedule has none for verticals or horizontals"
                            + " of elevation "
                            + request.elevation());
            faults.require(
                    bases.size() < 2,
                    "/pressures",
                    "are needed here, and taken by POST /v1/drawings: those of the document's wind schedule for elevation "
                            + request.elevation()
                            + " are of more than one basis");
            faults.require(
                    pressures.size() <= MOST,
                    "/pressures",
                    "are needed here, and taken by POST /v1/drawings: the document's wind schedule has more than "
                            + MOST
                            + " for elevation "
                            + request.elevation());
        }
        List<Double> spacings = request.spacings();
        if (spacings == null) {
            spacings = filled(distinct(carried(job, section), SAME_WIDTH));
            faults.require(
                    !spacings.isEmpty(),
                    "/spacings",
                    "are needed here, and taken by POST /v1/drawings: no member of "
                            + (request.bay() == null
                                    ? "elevation " + request.elevation()
                                    : "bay " + request.bay())
                            + " was found to have section "
                            + request.section()
                            + " and to carry wind");
        }
        faults.throwIfAny();
        return new SpanTableRequest(section, pressures, basis, spacings, null, null, null);
    }

    /** Greatest of both signs in each zone for members. */
    private static Stream<Double> scheduled(Job job, Set<LoadBasis> bases) {
        List<Double> pressures = new ArrayList<>();
        for (WindRow row : job.result().windSchedule()) {
            if (row.elevation().equals(job.request().elevation())
                    && switch (row.component()) {
                        case MULLION, HORIZONTAL -> true;
                        case LITE, ANCHOR -> false;
                    }) {
                for (Quantity sign : new Quantity[] {row.positive(), row.negative()}) {
                    if (sign != null && sign.si() != 0) {
                        pressures.add(Math.abs(sign.si()));
                        bases.add(row.basis());
                    }
                }
            }
        }
        return pressures.stream();
    }

    /** Widths of wall that members with a section carry under wind. */
    private static Stream<Double> carried(Job job, Section section) {
        List<Double> widths = new ArrayList<>();
        List<Bay> bays = job.request().document().bays();
        for (int i = 0; i < bays.size(); i++) {
            Bay bay = bays.get(i);
            boolean asked =
                    bay.elevation().equals(job.request().elevation())
                            && (job.request().bay() == null
                                    || bay.id().equals(job.request().bay()));
            if (asked) {
                BayResult reviewed = job.result().bays().get(i);
                for (ReviewItem item : reviewed.items()) {
                    if (item.inputs() instanceof FramingRequest member
                            && member.axis() == Axis.WIND
                            && member.section().equals(section)
                            && member.tributaryWidth() != null) {
                        widths.add(member.tributaryWidth());
                    }
                }
            }
        }
        return widths.stream();
    }

    /** Widths with others between those that are far apart; of very many only the ends. */
    private static List<Double> filled(List<Double> widths) {
        if (widths.size() < 2) {
            return widths;
        }
        double least = widths.get(0);
        double most = widths.get(widths.size() - 1);
        double step = Math.max(STEP, Math.pow(most / least, 1.0 / MOST_BETWEEN));
        List<Double> filled = new ArrayList<>(List.of(least));
        for (double width : widths.size() > MOST ? List.of(most) : widths.subList(1, widths.size())) {
            double from = filled.get(filled.size() - 1);
            int parts = (int) Math.ceil(Math.log(width / from) / Math.log(step) - SAME_WIDTH);
            for (int i = 1; i < parts; i++) {
                filled.add(from * Math.pow(width / from, (double) i / parts));
            }
            filled.add(width);
        }
        return filled;
    }

    /** Values in rising order; of those that differ by less than a share, the greatest. */
    private static List<Double> distinct(Stream<Double> values, double share) {
        List<Double> distinct = new ArrayList<>();
        for (double value : new TreeSet<>(values.toList()).descendingSet()) {
            if (distinct.isEmpty() || value < distinct.get(0) / (1 + share)) {
                distinct.add(0, value);
            }
        }
        return distinct;
    }
}
