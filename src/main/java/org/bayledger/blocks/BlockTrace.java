package org.bayledger.blocks;

import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** The sums of the setting-block check, to be redone by hand. */
final class BlockTrace {

    private static final String HANDBOOK = "glazing industry handbook rule (from memory)";
    private static final String GUIDE = "curtain-wall design guide rule (from memory)";

    private BlockTrace() {}

    static void blocks(Trace trace, double area, double length) {
        trace.detail("A", "area of the lite", Dimension.AREA, area, "W H", "geometry")
                .step(
                        "l",
                        "least length of each block",
                        Dimension.LENGTH,
                        length,
                        "max(4 in, 0.1 in x A / ft2)",
                        HANDBOOK);
    }

    static void weight(Trace trace, SettingBlocksRequest request, double mass, double load) {
        trace.detail(
                        "m",
                        "mass of the lite",
                        Dimension.MASS,
                        mass,
                        request.glass() == null ? "input" : "area mass of the build-up x A",
                        request.glass() == null ? "input" : "glass 2500 kg/m3 (from memory)")
                .step(
                        "P",
                        "weight on each block",
                        Dimension.FORCE,
                        load,
                        "m g / 2, g = 9.80665 m/s2",
                        "standard gravity, 3rd CGPM 1901");
    }

    static void limits(Trace trace, DeadLoadLimits limits) {
        trace.step(
                "d own",
                "limit on the member's own account",
                Dimension.LENGTH,
                limits.ownLimit(),
                "min(L/360, 1/8 in)",
                "common practice, no source");
        Double bite = limits.biteLimit();
        if (bite != null) {
            trace.step(
                    "d bite",
                    "deflection that leaves 75 % of the bite",
                    Dimension.LENGTH,
                    bite,
                    "0.25 b",
                    GUIDE);
        }
        Double clearance = limits.clearanceLimit();
        GlazingBelow below = limits.below();
        if (clearance != null && below != null) {
            trace.detail(
                    "r",
                    "edge clearance to be left below",
                    Dimension.LENGTH,
                    below.kind().clearanceToKeep(),
                    "1/8 in over anything fixed, 1/16 in over an operating sash",
                    GUIDE);
            boolean taken = below.taken() > 0;
            if (taken) {
                trace.detail(
                        "g",
                        "what tolerances and thermal growth take of the clearance",
                        Dimension.LENGTH,
                        below.taken(),
                        "sum of both",
                        "input");
            }
            trace.step(
                    "d clr",
                    "deflection that uses up the clearance below",
                    Dimension.LENGTH,
                    clearance,
                    (taken ? "c - g - r + s" : "c - r + s") + ", s sinking of the glazing below",
                    GUIDE);
        }
    }

    /** The limit of the rotation, where rotation is looked at. */
    static void rotationLimit(Trace trace, BlockSupport support) {
        if (support.torsionalRigidity() != null && support.eccentricity() != null) {
            boolean own = support.rotationLimit() != null;
            trace.step(
                    "phi lim",
                    "greatest rotation accepted",
                    Dimension.ANGLE,
                    support.rotationAllowed(),
                    own ? "input" : "1 deg",
                    own ? "input" : "curtain-wall specification practice (from memory)");
        }
    }

    static void candidate(Trace trace, SettingBlocksRequest request, BlockCandidate candidate) {
        Double span = request.support().span();
        Quantity deflection = candidate.memberDeflection();
        if (deflection == null || span == null) {
            return;
        }
        BlockPoint point = candidate.point();
        boolean simple = request.support().glassOffset() == null && !request.support().propped();
        trace.detail(
                        "a " + point,
                        "block from the member's support",
                        Dimension.LENGTH,
                        BlockLayout.of(request, span, candidate.fraction()).own().get(0),
                        (simple ? "f W - (W - L)/2, f = " : "offset + f W, f = ")
                                + candidate.fraction(),
                        "geometry")
                .step(
                        "d " + point,
                        simple ? "deflection at mid-span" : "greatest deflection",
                        Dimension.LENGTH,
                        deflection.si(),
                        simple
                                ? "P a (3 L^2 - 4 a^2) / (24 E I) + 5 w L^4 / (384 E I)"
                                : "theorem of three moments, loads where the blocks stand",
                        simple ? "closed form, simply supported beam" : "exact within beam theory");
        step(
                trace,
                "phi " + point,
                "rotation of the horizontal",
                candidate.rotation(),
                request.support().warpingRigidity() > 0
                        ? "P e in G J phi'' - E Cw phi'''' = -t, ends held against twist, free to"
                                + " warp"
                        : "P e a / (G J), ends held against twist",
                "St. Venant and Vlasov, textbook closed forms");
        step(
                trace,
                "u " + point,
                "how far rotation brings down the metal below",
                candidate.rotationDrop(),
                "phi (|e| + t/2), t thickness of the glass where it was given",
                "geometry");
        detail(
                trace,
                "R " + point,
                "greater end reaction",
                candidate.endReaction(),
                "P + w L / 2 for one lite, centered, unpropped",
                "statics");
        detail(trace, "T " + point, "greater end torque", candidate.endTorque(), "P e", "statics");
        glass(trace, candidate);
    }

    /** What a place asks of blocks and glass. */
    static void glass(Trace trace, BlockCandidate candidate) {
        detail(
                trace,
                "p " + candidate.point(),
                "bearing pressure on each block",
                candidate.blockPressure(),
                "P / (l b), b width of the panes or of a narrower block",
                "statics");
        detail(
                trace,
                "s " + candidate.point(),
                "tension in an edge of the glass",
                candidate.glassEdgeStress(),
                "6 rho g W^2 / H max((1 - 4 f) / 8, f^2 / 2) + 2 rho g H",
                "plain beam in the plane of the glass; the second part covers deep lites");
    }

    private static void step(
            Trace trace,
            String symbol,
            String meaning,
            @Nullable Quantity value,
            String formula,
            String source) {
        if (value != null) {
            trace.step(symbol, meaning, value.dimension(), value.si(), formula, source);
        }
    }

    private static void detail(
            Trace trace,
            String symbol,
            String meaning,
            @Nullable Quantity value,
            String formula,
            String source) {
        if (value != null) {
            trace.detail(symbol, meaning, value.dimension(), value.si(), formula, source);
        }
    }
}
