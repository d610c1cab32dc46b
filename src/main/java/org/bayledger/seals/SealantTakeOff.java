package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The joints with their sealant, and what it adds up to. A bead is a prism: width times depth times
 * length.
 *
 * @param joints joints by kind in the order of their steps
 * @param volume sealant in place, m3
 * @param cartridges whole cartridges, waste included
 * @param takeOff the same as rows of tables
 */
record SealantTakeOff(List<SealJoint> joints, double volume, long cartridges, TakeOff takeOff) {

    /** What a number of cartridges may exceed a whole number by and still be it. */
    private static final double ROUNDING = 1e-9;

    static SealantTakeOff of(List<JointCount> counts, SealDetails details, Trace trace) {
        List<SealJoint> joints = counts.stream().map(count -> joint(count, details)).toList();
        double volume = joints.stream().mapToDouble(joint -> joint.sealantVolume().si()).sum();
        TakeOff takeOff = tables(joints, details);
        long cartridges = takeOff.sealants().stream().mapToLong(SealantQuantity::cartridges).sum();
        explain(trace, details, volume, cartridges);
        return new SealantTakeOff(joints, volume, cartridges, takeOff);
    }

    private static void explain(Trace trace, SealDetails details, double volume, long cartridges) {
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
                        details.wasteFactorOrDefault(),
                        details.wasteFactor() == null ? "default" : "input",
                        "common practice, no source")
                .detail(
                        "Vc",
                        "content of a cartridge",
                        Dimension.VOLUME,
                        details.cartridgeVolumeOrDefault(),
                        details.cartridgeVolume() == null ? "default" : "input",
                        "nominal")
                .step(
                        "n",
                        "cartridges",
                        Dimension.NONE,
                        (double) cartridges,
                        details.perimeterSealant() == null
                                ? "V (1 + w) / Vc, rounded up"
                                : "V (1 + w) / Vc, rounded up for each sealant",
                        "geometry");
    }

    private static SealJoint joint(JointCount count, SealDetails details) {
        JointType type = count.type();
        WallSystem system = details.systemOrDefault();
        boolean reachable = system.reachableAfterGlazing(type);
        double sealed = system.gasketed(type) ? 0 : count.length();
        return new SealJoint(
                type,
                count.count(),
                count.countFormula(),
                Quantity.of(Dimension.DISTANCE, count.length()),
                count.lengthFormula(),
                Quantity.of(Dimension.VOLUME, bead(type, details).area() * sealed),
                system.step(type),
                count.count() > 0 && !reachable,
                reachable,
                SealSequence.hiddenBy(type, details),
                SealInstructions.of(type, system));
    }

    private static Bead bead(JointType type, SealDetails details) {
        return type.weatherSeal() ? details.perimeterBeadOrDefault() : details.bead();
    }

    private static @Nullable SealantUse use(JointType type, SealDetails details) {
        if (details.systemOrDefault().gasketed(type)) {
            return null;
        }
        if (details.perimeterSealant() == null) {
            return SealantUse.EVERYWHERE;
        }
        return type.weatherSeal() ? SealantUse.PERIMETER : SealantUse.INSIDE;
    }

    private static TakeOff tables(List<SealJoint> joints, SealDetails details) {
        List<TakeOffRow> rows = new ArrayList<>();
        List<StepLabour> labour = new ArrayList<>();
        for (SealJoint joint : joints) {
            if (joint.count() > 0) {
                Bead bead = bead(joint.type(), details);
                rows.add(
                        new TakeOffRow(
                                joint.step(),
                                joint.type(),
                                joint.count(),
                                Quantity.of(Dimension.LENGTH, bead.width()),
                                Quantity.of(Dimension.LENGTH, bead.depth()),
                                joint.length(),
                                use(joint.type(), details),
                                joint.sealantVolume(),
                                withWaste(joint.sealantVolume().si(), details)));
            }
        }
        for (WallSystem.Stage stage : details.systemOrDefault().stages()) {
            List<TakeOffRow> same =
                    rows.stream().filter(row -> row.step() == stage.step()).toList();
            if (!same.isEmpty()) {
                labour.add(
                        new StepLabour(
                                stage.step(),
                                stage.title(),
                                same.stream().mapToInt(TakeOffRow::count).sum(),
                                Quantity.of(
                                        Dimension.DISTANCE,
                                        same.stream()
                                                .mapToDouble(row -> row.length().si())
                                                .sum())));
            }
        }
        List<SealantQuantity> sealants = new ArrayList<>();
        for (SealantUse use : SealantUse.values()) {
            List<TakeOffRow> with = rows.stream().filter(row -> row.sealant() == use).toList();
            if (!with.isEmpty()) {
                double volume = with.stream().mapToDouble(row -> row.volume().si()).sum();
                Quantity needed = withWaste(volume, details);
                sealants.add(
                        new SealantQuantity(
                                use,
                                details.sealantOf(with.get(0).type()).name(),
                                Quantity.of(Dimension.VOLUME, volume),
                                needed,
                                whole(needed.si() / details.cartridgeVolumeOrDefault()),
                                whole(needed.si() / details.sausageVolumeOrDefault())));
            }
        }
        return new TakeOff(rows, sealants, labour);
    }

    private static Quantity withWaste(double volume, SealDetails details) {
        return Quantity.of(Dimension.VOLUME, volume * (1 + details.wasteFactorOrDefault()));
    }

    private static long whole(double containers) {
        return (long) Math.ceil(containers * (1 - ROUNDING));
    }
}
