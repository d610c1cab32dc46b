package org.bayledger.seals;

import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;

/**
 * The joints with their sealant, and what it adds up to. A bead is a prism: width times depth times
 * length.
 *
 * @param joints joints by kind in the order of their steps
 * @param volume sealant in place, m3
 * @param cartridges whole cartridges, waste included
 */
record SealantTakeOff(List<SealJoint> joints, double volume, long cartridges) {

    /** What a number of cartridges may exceed a whole number by and still be it. */
    private static final double ROUNDING = 1e-9;

    static SealantTakeOff of(List<JointCount> counts, SealDetails details, Trace trace) {
        List<SealJoint> joints = counts.stream().map(count -> joint(count, details)).toList();
        double volume = joints.stream().mapToDouble(joint -> joint.sealantVolume().si()).sum();
        double waste = details.wasteFactorOrDefault();
        double content = details.cartridgeVolumeOrDefault();
        double needed = volume * (1 + waste) / content;
        long cartridges = (long) Math.ceil(needed * (1 - ROUNDING));
        trace.detail(
                        "A",
                        "bead inside the system",
                        Dimension.SECTION_AREA,
                        details.bead().area(),
                        "width x depth",
                        "input")
                .detail(
                        "Ap",
                        "bead at the perimeter and at stack joints",
                        Dimension.SECTION_AREA,
                        details.perimeterBeadOrDefault().area(),
                        "width x depth",
                        details.perimeterBead() == null ? "as the bead inside" : "input")
                .step(
                        "V",
                        "sealant in place",
                        Dimension.VOLUME,
                        volume,
                        "sum over all kinds of joint of bead area x length",
                        "geometry")
                .detail(
                        "w",
                        "share of sealant wasted",
                        Dimension.NONE,
                        waste,
                        details.wasteFactor() == null ? "default" : "input",
                        "common practice, no source")
                .detail(
                        "Vc",
                        "content of a cartridge",
                        Dimension.VOLUME,
                        content,
                        details.cartridgeVolume() == null ? "default" : "input",
                        "nominal")
                .step(
                        "n",
                        "cartridges",
                        Dimension.NONE,
                        (double) cartridges,
                        "V (1 + w) / Vc, rounded up",
                        "geometry");
        return new SealantTakeOff(joints, volume, cartridges);
    }

    private static SealJoint joint(JointCount count, SealDetails details) {
        JointType type = count.type();
        WallSystem system = details.systemOrDefault();
        boolean reachable = system.reachableAfterGlazing(type);
        Bead bead = type.weatherSeal() ? details.perimeterBeadOrDefault() : details.bead();
        double sealed = system.gasketed(type) ? 0 : count.length();
        return new SealJoint(
                type,
                count.count(),
                count.countFormula(),
                Quantity.of(Dimension.DISTANCE, count.length()),
                count.lengthFormula(),
                Quantity.of(Dimension.VOLUME, bead.area() * sealed),
                system.step(type),
                count.count() > 0 && !reachable,
                reachable,
                hiddenBy(type, details),
                SealInstructions.of(type, system));
    }

    private static List<Obstacle> hiddenBy(JointType type, SealDetails details) {
        Integer covers = details.jointCovers();
        return details.systemOrDefault().hiddenBy(type).stream()
                .filter(
                        obstacle ->
                                obstacle != Obstacle.JOINT_PLUG
                                        || details.drainage() == Drainage.PRESSURE_EQUALIZED)
                .filter(
                        obstacle ->
                                obstacle != Obstacle.JOINT_COVER || covers == null || covers > 0)
                .toList();
    }
}
