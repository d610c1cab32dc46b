package org.bayledger.seals;

import static org.bayledger.quantity.Constants.INCH;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Length of the bead of one joint of each kind, from the system's details. What is left out is
 * estimated for a nominal profile with a face of 2.5 in and a pocket 1 in deep (an assumption; it
 * matters for the amount of sealant only, and a finding names the kinds it was made for).
 *
 * @param horizontalToVertical bead at one end of a horizontal, m; nominally the face and both sides
 *     of the pocket, 4.5 in
 * @param jointPlug bed and cap of one plug, m; nominally bedded on the back and both sides and
 *     capped over the face, 7 in
 * @param fastenerHead bead around one fastener head, m; nominally 1.6 in
 * @param pressurePlateButt bead across one butt, m; nominally the face, 2.5 in
 * @param splice bead at one splice of one vertical, m; nominally the face and both sides of the
 *     pocket, 4.5 in
 * @param jointCover bead around one cover, m; nominally 7 in
 * @param endDam bead at one end dam, m; nominally its foot and both upright edges, 4.5 in
 * @param anchorPenetration bead around one penetration, m; nominally 7 in
 * @param frameCorner bead at one corner of a unit, m; nominally the face and both sides of the
 *     pocket, 4.5 in
 * @param verticalToHorizontal bead at one end of a unit's inner vertical, m; nominally 4.5 in
 * @param spliceSleeve bead at one sleeve in a gutter, m; nominally the floor and both upstands at
 *     either end of the sleeve, 9 in
 * @param endCap bead at one end of a gutter or head receptor, m; nominally 4.5 in
 * @param receptorSplice bead at one butt of a receptor or starter sill, m; nominally its floor and
 *     both legs, 4.5 in
 */
public record BeadLengths(
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double horizontalToVertical,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double jointPlug,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double fastenerHead,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double pressurePlateButt,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double splice,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double jointCover,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double endDam,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double anchorPenetration,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double frameCorner,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double verticalToHorizontal,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double spliceSleeve,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double endCap,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 10)
                @Nullable Double receptorSplice) {

    /** Where the system's details were not given. */
    static final BeadLengths NONE =
            new BeadLengths(
                    null, null, null, null, null, null, null, null, null, null, null, null, null);

    /** The length given for a kind of joint, m; null where none was, or it follows the grid. */
    @Nullable Double given(JointType type) {
        return switch (type) {
            case HORIZONTAL_TO_VERTICAL -> horizontalToVertical;
            case JOINT_PLUG -> jointPlug;
            case FASTENER_HEAD -> fastenerHead;
            case PRESSURE_PLATE_BUTT -> pressurePlateButt;
            case SPLICE -> splice;
            case JOINT_COVER -> jointCover;
            case END_DAM -> endDam;
            case ANCHOR_PENETRATION -> anchorPenetration;
            case FRAME_CORNER -> frameCorner;
            case VERTICAL_TO_HORIZONTAL -> verticalToHorizontal;
            case SPLICE_SLEEVE -> spliceSleeve;
            case END_CAP -> endCap;
            case RECEPTOR_SPLICE -> receptorSplice;
            case STACK_JOINT,
                    UNIT_VERTICAL,
                    SLAB_EDGE_JOINT,
                    SLAB_COVER_BUTT,
                    PERIMETER_SILL,
                    PERIMETER_JAMB,
                    PERIMETER_HEAD ->
                    null;
        };
    }

    /** The length for a kind of joint, m: as given, else for the nominal profile. */
    double of(JointType type) {
        Double given = given(type);
        return given == null ? nominal(type) : given;
    }

    private static double nominal(JointType type) {
        return switch (type) {
            case HORIZONTAL_TO_VERTICAL,
                    VERTICAL_TO_HORIZONTAL,
                    FRAME_CORNER,
                    SPLICE,
                    RECEPTOR_SPLICE,
                    END_DAM,
                    END_CAP ->
                    4.5 * INCH;
            case SPLICE_SLEEVE -> 9 * INCH;
            case JOINT_PLUG, JOINT_COVER, ANCHOR_PENETRATION -> 7 * INCH;
            case FASTENER_HEAD -> 1.6 * INCH;
            case PRESSURE_PLATE_BUTT -> 2.5 * INCH;
            case STACK_JOINT,
                    UNIT_VERTICAL,
                    SLAB_EDGE_JOINT,
                    SLAB_COVER_BUTT,
                    PERIMETER_SILL,
                    PERIMETER_JAMB,
                    PERIMETER_HEAD ->
                    throw new IllegalArgumentException(type + " takes its length from the grid");
        };
    }
}
