package org.bayledger.seals;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** What the installer does at each kind of joint. Common practice, no source. */
final class SealInstructions {

    private static final String PREPARE =
            "Wipe both metals with the solvent the sealant maker names on one cloth and dry them"
                    + " with a second before it evaporates; prime where the maker asks for it; seal"
                    + " within the time the maker allows after cleaning. ";

    private static final Map<JointType, String> WITH_PREPARATION = new EnumMap<>(JointType.class);

    static {
        for (JointType type : JointType.values()) {
            WITH_PREPARATION.put(type, PREPARE + tooling(type));
        }
    }

    private SealInstructions() {}

    /** The instruction for a kind of joint. */
    static String of(JointType type, WallSystem system) {
        return system.gasketed(type)
                ? gaskets(type)
                : Objects.requireNonNull(WITH_PREPARATION.get(type));
    }

    private static String gaskets(JointType type) {
        return type == JointType.UNIT_VERTICAL
                ? "See that the gaskets of the male and female vertical are whole, clean and seated"
                        + " over their whole length before the neighbour is hung, and that they"
                        + " engage as far as the drawings ask."
                : "See that the gaskets of the stack joint are whole, clean and run through behind"
                        + " every sleeve before the unit above closes it; keep sealant off the"
                        + " surfaces that slide.";
    }

    /** How the bead of a kind of joint is placed and tooled. */
    static String tooling(JointType type) {
        return switch (type) {
            case END_DAM ->
                    "Bed the dam against the end of the sill flashing, seal its foot and both"
                            + " upright edges without a break, tool the corners, and fill the sill"
                            + " with water to see that it holds before the horizontal goes on.";
            case SPLICE ->
                    "Seal across the butt and up both sides of the pocket with the gap that the"
                            + " drawings ask for; keep the sealant off the two surfaces that must"
                            + " slide on one another.";
            case STACK_JOINT ->
                    "Seal the whole line across the frame, through every vertical, with backing"
                            + " that keeps the bead to two faces so that it can move.";
            case JOINT_COVER ->
                    "Bed the cover in sealant over the finished joint beneath, press it until"
                            + " sealant shows on every side, and tool that edge; leave it free to"
                            + " move on one side where the joint moves.";
            case ANCHOR_PENETRATION ->
                    "Seal all round the anchor where it passes the line of the seals and join the"
                            + " bead to the seals on either side.";
            case HORIZONTAL_TO_VERTICAL ->
                    "Seal the seam between the end of the horizontal and the vertical across its"
                            + " face and along both sides of the pocket, into the corners; tool it"
                            + " flush so that a plug can bed on it.";
            case FASTENER_HEAD ->
                    "Cap the head and its washer completely and tool the edge onto the metal all"
                            + " round.";
            case JOINT_PLUG ->
                    "Butter the plug and press it in so that it is bedded on three sides, the back"
                            + " and both flanks; then cap its face and tool the cap with a fall, so"
                            + " that water runs out onto the horizontal and not into the vertical.";
            case PERIMETER_SILL ->
                    "Seal the sill to the building over backing, from end dam to end dam, without"
                            + " closing a weep.";
            case PERIMETER_JAMB ->
                    "Seal the jamb to the building over backing and carry the bead onto that of"
                            + " the sill.";
            case PERIMETER_HEAD ->
                    "Seal the head to the building over backing, join it to the jambs, and leave"
                            + " the movement that the drawings ask for.";
            case FRAME_CORNER ->
                    "Seal the corner across the face and along both sides of the pocket, and the"
                            + " screw holes with it; tool it into the corner before the unit is"
                            + " moved.";
            case VERTICAL_TO_HORIZONTAL ->
                    "Seal the seam between the end of the inner vertical and the head or sill"
                            + " across its face and along both sides of the pocket; tool it into"
                            + " the corners.";
            case UNIT_VERTICAL ->
                    "Seal the line between the units over backing, without closing a weep.";
            case SPLICE_SLEEVE ->
                    "Bed the sleeve in sealant across the gutter from one unit to the next, seal"
                            + " both its ends and upstands without a break and tool them; leave one"
                            + " end free to slide where the drawings ask for it.";
            case END_CAP ->
                    "Bed the cap against the end of the profile and seal it all round; tool the"
                            + " edge inside, where water stands.";
            case RECEPTOR_SPLICE ->
                    "Leave the gap that the drawings ask for, bridge it, and seal across the floor"
                            + " and up both legs without a break; tool it flush so that the frame"
                            + " sits flat.";
            case SLAB_EDGE_JOINT ->
                    "Seal the cover to the frame over backing, to two faces only so that it can"
                            + " move, without closing a weep.";
            case SLAB_COVER_BUTT ->
                    "Seal the butt over backing and join it to the lines above and below.";
            case PRESSURE_PLATE_BUTT ->
                    "Bridge the gap between the plates and seal it flush after the plates are"
                            + " tightened and before the cover is snapped on; keep the weeps open.";
        };
    }
}
