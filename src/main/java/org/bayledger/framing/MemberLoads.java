package org.bayledger.framing;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamModel;
import org.bayledger.mechanics.BeamRigidityStep;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** What loads a member, and how stiff it is along its length. */
final class MemberLoads {

    private MemberLoads() {}

    /**
     * Wind on the member: a pressure on the areas of wall that it carries.
     *
     * @param pressure Pa
     */
    static List<BeamLoad> wind(
            double length,
            @Nullable Double width,
            @Nullable List<TributaryStrip> strips,
            @Nullable List<TributaryLite> lites,
            @Nullable List<TributaryArea> areas,
            double pressure) {
        List<BeamLoad> loads = new ArrayList<>();
        if (width != null) {
            loads.add(BeamLoad.uniform(0, length, pressure * width));
        }
        List<TributaryStrip> all = new ArrayList<>(strips == null ? List.of() : strips);
        if (lites != null) {
            lites.forEach(lite -> all.addAll(lite.strips()));
        }
        for (TributaryStrip strip : all) {
            loads.add(
                    new BeamLoad.Distributed(
                            strip.from(),
                            Math.min(strip.to(), length),
                            pressure * strip.widthAtFrom(),
                            pressure * strip.widthAtTo()));
        }
        if (areas != null) {
            areas.forEach(
                    area ->
                            loads.add(
                                    new BeamLoad.Force(
                                            Math.min(area.at(), length), pressure * area.area())));
        }
        return loads;
    }

    /** Wind on the member of a request, with its steps. */
    static List<BeamLoad> wind(FramingRequest request, double pressure, Trace trace) {
        Double width = request.tributaryWidth();
        List<BeamLoad> loads =
                wind(
                        request.length(),
                        width,
                        request.tributaryStrips(),
                        request.tributaryLites(),
                        request.tributaryAreas(),
                        pressure);
        if (width != null) {
            trace.step("b", "tributary width", Dimension.DISTANCE, width, "input", "input");
            trace.step(
                    "w",
                    "load per length",
                    Dimension.LINE_LOAD,
                    pressure * width,
                    "max(p+, -p-) b",
                    "statics");
        }
        for (BeamLoad load : loads) {
            if (load instanceof BeamLoad.Force force) {
                trace.detail(
                        "P",
                        "wind that comes on at one place",
                        Dimension.FORCE,
                        force.force(),
                        "max(p+, -p-) A",
                        "statics");
            } else if (width == null && load instanceof BeamLoad.Distributed spread) {
                trace.detail(
                        "w,max",
                        "greatest load per length of a strip",
                        Dimension.LINE_LOAD,
                        Math.max(spread.atFrom(), spread.atTo()),
                        "max(p+, -p-) times the width of wall there",
                        request.tributaryLites() == null
                                ? "statics"
                                : "lines at 45 degrees from the corners of a lite (common practice,"
                                        + " no source)");
            }
        }
        return loads;
    }

    /**
     * Weight on the member of a request, its own included.
     *
     * @param lineLoad weight per length besides its own, N/m
     * @param trace receives the steps
     * @param unknown receives what was left out
     */
    static List<BeamLoad> dead(
            FramingRequest request,
            @Nullable Double lineLoad,
            @Nullable List<PointLoad> pointLoads,
            Trace trace,
            List<Finding> unknown) {
        List<BeamLoad> loads = new ArrayList<>();
        Double mass = request.section().massPerLength();
        double line = lineLoad == null ? 0 : lineLoad;
        double own = mass == null ? 0 : mass * STANDARD_GRAVITY;
        if (mass == null) {
            unknown.add(
                    Finding.action(
                            "OWN_WEIGHT_LEFT_OUT",
                            "/section/massPerLength",
                            "The member's own weight is not included: its mass per length was not"
                                    + " given. Give 0 where "
                                    + (request.axis() == Axis.DEAD ? "lineLoad" : "weightPerLength")
                                    + " holds it."));
        }
        boolean dead = request.axis() == Axis.DEAD;
        trace.step(
                dead ? "w" : "w2",
                "weight per length",
                Dimension.LINE_LOAD,
                line + own,
                (dead ? "lineLoad" : "weightPerLength") + " + mass per length x g",
                "statics, g = 9.80665 m/s2");
        loads.add(BeamLoad.uniform(0, request.length(), line + own));
        if (pointLoads != null) {
            for (PointLoad point : pointLoads) {
                loads.add(
                        new BeamLoad.Force(Math.min(point.at(), request.length()), point.force()));
                trace.detail(
                        "P",
                        "weight that rests on the member",
                        Dimension.FORCE,
                        point.force(),
                        "input",
                        "input");
            }
        }
        return loads;
    }

    /**
     * The beam of a member.
     *
     * @param aluminum E I of the section without steel, N m2
     * @param steel steel that bends with it, or null
     */
    static BeamModel model(
            double length,
            List<Double> supports,
            List<Double> hinges,
            double aluminum,
            @Nullable Reinforcement steel,
            List<BeamLoad> loads) {
        if (steel == null) {
            return BeamModel.uniform(length, supports, hinges, aluminum, loads);
        }
        double both = aluminum + steel.rigidity();
        double from = steel.start();
        double to = steel.end(length);
        List<BeamRigidityStep> steps = new ArrayList<>();
        steps.add(new BeamRigidityStep(0, from > 0 ? aluminum : both));
        if (from > 0) {
            steps.add(new BeamRigidityStep(from, both));
        }
        if (to < length) {
            steps.add(new BeamRigidityStep(to, aluminum));
        }
        return new BeamModel(length, supports, hinges, steps, loads);
    }

    /** The beam of the member of a request about its axis. */
    static BeamModel model(FramingRequest request, double inertia, List<BeamLoad> loads) {
        return model(
                request.length(),
                request.supports(),
                request.splices(),
                request.section().modulusOfElasticity() * inertia,
                request.axis() == Axis.WIND ? request.section().reinforcement() : null,
                loads);
    }
}
