package org.bayledger.framing;

import static org.bayledger.quantity.Constants.INCH;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.mechanics.BeamExtreme;
import org.bayledger.mechanics.BeamOverhang;
import org.bayledger.mechanics.BeamReaction;
import org.bayledger.mechanics.BeamSolution;
import org.bayledger.mechanics.BeamSpan;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Deflections of a member's spans, overhangs and glass edges against their limits; reactions. */
final class MemberResponse {

    private MemberResponse() {}

    private static double limit(FramingRequest request, double span) {
        if (request.deflectionLimit() != null) {
            return request.deflectionLimit();
        }
        return request.axis() == Axis.WIND
                ? request.rule().underWind(span)
                : request.rule().underDeadLoad(span);
    }

    /**
     * Each span on the chord between its supports, each overhang with twice its length, under the
     * load for deflections.
     */
    static List<FramingResult.Span> spans(FramingRequest request, BeamSolution beam) {
        List<FramingResult.Span> spans = new ArrayList<>();
        double factor = request.onDeflection();
        for (BeamSpan span : beam.spans()) {
            spans.add(
                    span(
                            beam,
                            span.from(),
                            span.to(),
                            false,
                            span.deflection(),
                            factor,
                            limit(request, span.length())));
        }
        for (BeamOverhang overhang : beam.overhangs()) {
            double from = Math.min(overhang.support(), overhang.tip());
            double to = Math.max(overhang.support(), overhang.tip());
            spans.add(
                    span(
                            beam,
                            from,
                            to,
                            true,
                            overhang.deflection(),
                            factor,
                            limit(request, 2 * overhang.length())));
        }
        return List.copyOf(spans);
    }

    private static FramingResult.Span span(
            BeamSolution beam,
            double from,
            double to,
            boolean overhang,
            BeamExtreme deflection,
            double factor,
            double limit) {
        double size = factor * Math.abs(deflection.value());
        BeamExtreme moment = beam.greatestMoment(from, to);
        BeamExtreme shear = beam.greatestShear(from, to);
        return new FramingResult.Span(
                Quantity.of(Dimension.DISTANCE, from),
                Quantity.of(Dimension.DISTANCE, to),
                overhang,
                Quantity.of(Dimension.LENGTH, size),
                Quantity.of(Dimension.LENGTH, limit),
                size / limit,
                Quantity.of(Dimension.DISTANCE, deflection.at()),
                Quantity.of(Dimension.MOMENT, Math.abs(moment.value())),
                Quantity.of(Dimension.DISTANCE, moment.at()),
                Quantity.of(Dimension.FORCE, Math.abs(shear.value())),
                Quantity.of(Dimension.DISTANCE, shear.at()));
    }

    /** Shear, moment and deflection at equally spaced places. */
    static List<FramingResult.Station> along(FramingRequest request, BeamSolution beam) {
        List<FramingResult.Station> stations = new ArrayList<>();
        int count = request.stations() == null ? 0 : request.stations();
        for (int i = 0; i < count; i++) {
            double at = request.length() * i / (count - 1);
            stations.add(
                    new FramingResult.Station(
                            Quantity.of(Dimension.DISTANCE, at),
                            Quantity.of(Dimension.FORCE, beam.shear(at)),
                            Quantity.of(Dimension.MOMENT, beam.moment(at)),
                            Quantity.of(Dimension.LENGTH, beam.deflection(at))));
        }
        return List.copyOf(stations);
    }

    /** The greatest ratio of a deflection of span, overhang or glass edge to its limit. */
    static double greatestRatio(FramingRequest request, BeamSolution beam) {
        double spans =
                spans(request, beam).stream()
                        .mapToDouble(FramingResult.Span::utilization)
                        .max()
                        .orElse(0);
        return edges(request, beam, new Trace(TraceLevel.GOVERNING)).stream()
                .mapToDouble(FramingResult.Edge::utilization)
                .reduce(spans, Math::max);
    }

    /** IBC 2021, 2403.3: the edge of a lite is firmly supported within L/175 and 3/4 in. */
    static List<FramingResult.Edge> edges(FramingRequest request, BeamSolution beam, Trace trace) {
        List<FramingResult.Edge> edges = new ArrayList<>();
        if (request.glassEdges() == null) {
            return edges;
        }
        for (GlassEdge edge : request.glassEdges()) {
            double to = Math.min(edge.to(), request.length());
            double limit = Math.min((to - edge.from()) / 175, 0.75 * INCH);
            double size = Math.abs(beam.greatestDeflectionFromChord(edge.from(), to).value());
            trace.detail(
                    "d,edge",
                    "deflection of an edge of glass from its own chord",
                    Dimension.LENGTH,
                    size,
                    "limit min(L/175, 3/4 in) of the edge",
                    "IBC 2021, 2403.3 (from memory)");
            edges.add(
                    new FramingResult.Edge(
                            Quantity.of(Dimension.DISTANCE, edge.from()),
                            Quantity.of(Dimension.DISTANCE, to),
                            Quantity.of(Dimension.LENGTH, size),
                            Quantity.of(Dimension.LENGTH, limit),
                            size / limit));
        }
        return List.copyOf(edges);
    }

    /** Adds the steps of the span that governs. */
    static void explain(FramingRequest request, FramingResult.Span governing, Trace trace) {
        double length = governing.to().si() - governing.from().si();
        trace.step(
                "L",
                governing.overhang()
                        ? "twice the length of the governing overhang"
                        : "governing span",
                Dimension.DISTANCE,
                governing.overhang() ? 2 * length : length,
                "that with the greatest ratio of deflection to limit",
                "geometry");
        trace.step(
                "d",
                "its greatest deflection from the chord between its supports",
                Dimension.LENGTH,
                governing.deflection().si(),
                "exact beam elements; 5 w L^4 / (384 E I) for one span"
                        + (request.deflectionLoadFactor() == null ? "" : ", times f,d / 0.6"),
                "Euler-Bernoulli beam");
        boolean wind = request.axis() == Axis.WIND;
        DeflectionRule rule = request.rule();
        boolean own = request.deflectionLimit() != null;
        trace.step(
                "d,lim",
                "its limit",
                Dimension.LENGTH,
                governing.limit().si(),
                own ? "input" : wind ? rule.windFormula() : rule.deadFormula(),
                own ? "input" : wind ? rule.windSource() : rule.deadSource());
    }

    /** What each support carries, under both signs of wind. */
    static List<FramingResult.Reaction> reactions(BeamSolution beam, AllowableLoad wind) {
        List<FramingResult.Reaction> reactions = new ArrayList<>();
        double greatest = wind.greatest();
        for (BeamReaction reaction : beam.reactions()) {
            reactions.add(
                    new FramingResult.Reaction(
                            Quantity.of(Dimension.DISTANCE, reaction.at()),
                            Quantity.of(Dimension.FORCE, reaction.force()),
                            part(reaction.force(), wind.positive(), greatest),
                            part(
                                    reaction.force(),
                                    wind.negative() == null ? null : -wind.negative(),
                                    greatest)));
        }
        return List.copyOf(reactions);
    }

    /** Reactions are proportional to the pressure. */
    private static @Nullable Quantity part(
            double force, @Nullable Double pressure, double greatest) {
        if (pressure == null) {
            return null;
        }
        return Quantity.of(Dimension.FORCE, greatest == 0 ? 0 : force * pressure / greatest);
    }
}
