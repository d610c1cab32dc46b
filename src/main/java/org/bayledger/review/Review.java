package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceStep;
import org.bayledger.check.Verdict;

/**
 * The whole job: every check on every lite, member and anchor of a review document, loads handed on
 * from wind to glass, framing and anchors, and the weight of the glass to horizontals and blocks.
 */
public final class Review {

    /** Version of the rules and sums: it changes whenever an answer may. */
    public static final String ENGINE_VERSION = "0.1.0";

    /** Fewer bays are done before another core has begun. */
    private static final int WORTH_SHARING = 16;

    private static final List<String> NOT_CHECKED =
            List.of(
                    "safety glazing in hazardous locations",
                    "guards and fall protection",
                    "thermal stress of glass",
                    "anti-walk blocks, which take side clearance",
                    "compatibility of setting blocks and sealants",
                    "perimeter fire containment",
                    "condensation",
                    "seismic force on anchors",
                    "impact of wind-borne debris",
                    "embedment of anchors in concrete",
                    "connections between members, shear blocks and their fasteners",
                    "tornado loads, soffits and roofs");

    private Review() {}

    /**
     * A review whose bays were handed on.
     *
     * @param whole what concerns the whole job, without the bays
     * @param bays what was made of each bay, in the order of the document
     */
    public record HandedOn<T>(ReviewResult whole, List<T> bays) {}

    /** Reviews a document. */
    public static ReviewResult run(ReviewDocument document, Reporting reporting) {
        HandedOn<BayResult> all = run(document, reporting, bay -> bay);
        return all.whole().with(all.bays());
    }

    /**
     * Reviews a document and keeps of each bay only what is made of it: the results of a large job
     * need not be in memory at once.
     *
     * @param make given the results of a bay; called on many cores at once
     */
    public static <T> HandedOn<T> run(
            ReviewDocument document, Reporting reporting, Function<BayResult, T> make) {
        ReviewContext context = new ReviewContext(document, reporting);
        VerticalRuns runs = new VerticalRuns();
        List<Made<T>> made = bays(context, verticals(context, runs), runs, make);
        List<BaySummary> bays = made.stream().map(Made::summary).toList();
        return new HandedOn<>(whole(context, bays), made.stream().map(Made::of).toList());
    }

    /** A bay's summary, and what was made of its results. */
    private record Made<T>(BaySummary summary, T of) {}

    private static ReviewResult whole(ReviewContext context, List<BaySummary> bays) {
        WindSchedule schedule = new WindSchedule(context, bays);
        List<ReviewResult.WindRow> windSchedule = schedule.ofJob();
        List<ReviewResult.ReviewFinding> findings =
                FindingSchedule.of(
                        context, bays, windSchedule, SpecifiedReview.findings(context, schedule));
        Verdict verdict = Verdict.ofAll(bays.stream().map(bay -> bay.brief().verdict()).toList());
        if (findings.stream()
                .anyMatch(
                        finding ->
                                finding.items().isEmpty()
                                        && finding.severity() == Finding.Severity.ACTION)) {
            verdict = verdict.and(Verdict.UNDETERMINED);
        }
        return new ReviewResult(
                ENGINE_VERSION,
                verdict,
                governing(bays),
                windSchedule,
                schedule.ofElevations(),
                windTrace(context),
                NoteSchedule.of(bays),
                List.of(),
                findings,
                NOT_CHECKED,
                Cautions.with(
                        "A review looks at what its document says of the wall; it can't see what"
                                + " was built.",
                        "Every lite is taken to be held along its four edges and, for its own"
                                + " strength, as large as its column and row; a vertical at a corner of the building is"
                                + " checked for the wind on its own elevation only."));
    }

    /** The steps that hold for the whole building. */
    private static List<TraceStep> windTrace(ReviewContext context) {
        Trace trace = new Trace(context.reporting.trace());
        if (context.wind.site() != null) {
            context.wind.site().explain(trace);
        }
        return trace.steps();
    }

    /**
     * The verticals of each bay, level by level from the highest sill down: what stands on a bay is
     * known before it.
     */
    private static VerticalReview[] verticals(ReviewContext context, VerticalRuns runs) {
        List<Bay> bays = context.document.bays();
        Map<Double, List<Integer>> levels = new TreeMap<>(Comparator.reverseOrder());
        for (int i = 0; i < bays.size(); i++) {
            levels.computeIfAbsent(bays.get(i).sill(), sill -> new ArrayList<>()).add(i);
        }
        VerticalReview[] found = new VerticalReview[bays.size()];
        for (List<Integer> level : levels.values()) {
            each(level.size())
                    .map(level::get)
                    .forEach(
                            i ->
                                    found[i] =
                                            new VerticalReview(
                                                    context, bays.get(i), "/bays/" + i, runs));
            level.forEach(i -> found[i].enter());
        }
        return found;
    }

    /**
     * Every bay through its checks, in the order of the document. A bay only reads what is shared
     * and already worked out, so that many bays are looked at on all cores; what comes out is the
     * same.
     */
    private static <T> List<Made<T>> bays(
            ReviewContext context,
            VerticalReview[] verticals,
            VerticalRuns runs,
            Function<BayResult, T> make) {
        List<Bay> bays = context.document.bays();
        return each(bays.size())
                .mapToObj(
                        i -> {
                            VerticalReview own = verticals[i];
                            verticals[i] = null; // nobody asks for it again
                            List<Checked> checked =
                                    bay(context, bays.get(i), "/bays/" + i, own, runs);
                            BayResult result = result(bays.get(i), checked);
                            return new Made<>(
                                    BaySummary.of(result, checked, "/bays/" + i),
                                    make.apply(result));
                        })
                .toList();
    }

    private static BayResult result(Bay bay, List<Checked> checked) {
        List<ReviewItem> items = checked.stream().map(Checked::item).toList();
        Verdict verdict = Verdict.ofAll(items.stream().map(ReviewItem::verdict).toList());
        return new BayResult(bay.id(), verdict, items);
    }

    /** The places of so many things, on all cores where that pays. */
    static IntStream each(int size) {
        IntStream each = IntStream.range(0, size);
        return size < WORTH_SHARING ? each : each.parallel();
    }

    private static List<Checked> bay(
            ReviewContext context,
            Bay bay,
            String pointer,
            VerticalReview verticals,
            VerticalRuns runs) {
        LiteReview lites = new LiteReview(context, bay, pointer);
        HorizontalReview horizontals = new HorizontalReview(context, bay, pointer, lites);
        AnchorageReview anchorage = new AnchorageReview(context, bay, pointer, verticals, runs);
        List<Checked> items = new ArrayList<>(lites.items());
        items.addAll(verticals.items());
        items.addAll(horizontals.items());
        items.addAll(anchorage.items());
        items.add(new SealReview(context, bay, pointer).item());
        items.add(new RetentionReview(context, bay, pointer).item());
        return items;
    }

    private static List<ReviewResult.Governing> governing(List<BaySummary> bays) {
        Map<String, List<ReviewItem>> byCheck = new LinkedHashMap<>();
        for (BaySummary bay : bays) {
            for (ReviewItem item : bay.brief().items()) {
                byCheck.computeIfAbsent(item.check(), name -> new ArrayList<>()).add(item);
            }
        }
        List<ReviewResult.Governing> governing = new ArrayList<>();
        byCheck.forEach(
                (check, items) -> {
                    ReviewItem worst = items.get(0);
                    Map<Verdict, Integer> count = new EnumMap<>(Verdict.class);
                    for (ReviewItem item : items) {
                        worst = item.governsOver(worst) ? item : worst;
                        count.merge(item.verdict(), 1, Integer::sum);
                    }
                    governing.add(
                            new ReviewResult.Governing(
                                    check,
                                    worst.id(),
                                    worst.verdict(),
                                    worst.utilization(),
                                    count.getOrDefault(Verdict.SATISFIED, 0),
                                    count.getOrDefault(Verdict.UNDETERMINED, 0),
                                    count.getOrDefault(Verdict.EXCEEDED, 0)));
                });
        return governing;
    }
}
