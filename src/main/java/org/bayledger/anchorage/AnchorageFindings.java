package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;

/** What a request leaves out and how its pieces are held, said in sentences. */
final class AnchorageFindings {

    private AnchorageFindings() {}

    /** Everything that is not known and leaves a sum short. */
    static List<Finding> missing(AnchorageMovementRequest request) {
        List<Finding> findings = new ArrayList<>();
        Movement movement = request.movement();
        if (request.anchors().isEmpty()) {
            findings.add(Finding.action("ANCHORS_NOT_GIVEN", "/anchors", "No anchors were given."));
        }
        if (request.stackJoints() == null) {
            findings.add(
                    Finding.action(
                            "STACK_JOINTS_NOT_GIVEN",
                            "/stackJoints",
                            "It was not said where the mullions are jointed; give an empty list"
                                    + " where they are one piece."));
        }
        missing(findings, movement.material() == null, "MATERIAL", "/material", "metal");
        missing(
                findings,
                movement.temperature() == null,
                "TEMPERATURE",
                "/temperature",
                "range of temperature");
        missing(
                findings,
                movement.erectionTolerance() == null,
                "ERECTION_TOLERANCE",
                "/erectionTolerance",
                "erection tolerance");
        missing(
                findings,
                movement.columnShortening() == null,
                "COLUMN_SHORTENING",
                "/columnShortening",
                "shortening of the columns");
        for (int i = 0; i < request.anchors().size(); i++) {
            Anchor anchor = request.anchors().get(i);
            String at = "/anchors/" + i;
            missing(
                    findings,
                    anchor.slabLiveLoadDeflection() == null,
                    "SLAB_DEFLECTION",
                    at + "/slabLiveLoadDeflection",
                    "live-load deflection of the slab at anchor " + anchor.id());
            if (!anchor.isFixed() && (anchor.slotUp() == null) != (anchor.slotDown() == null)) {
                findings.add(
                        Finding.action(
                                "SLOT_HALF_GIVEN",
                                at + (anchor.slotUp() == null ? "/slotUp" : "/slotDown"),
                                "The slot of anchor "
                                        + anchor.id()
                                        + " was given in one direction only."));
            }
        }
        for (int j = 0; j < request.joints().size(); j++) {
            StackJoint joint = request.joints().get(j);
            String at = "/stackJoints/" + j;
            missing(
                    findings,
                    joint.nominalWidth() == null,
                    "JOINT_WIDTH",
                    at + "/nominalWidth",
                    "width of the joint");
            missing(
                    findings,
                    joint.sealantMovementCapability() == null,
                    "SEALANT_CAPABILITY",
                    at + "/sealantMovementCapability",
                    "movement capability of the sealant");
        }
        return findings;
    }

    private static void missing(
            List<Finding> findings, boolean missing, String code, String pointer, String name) {
        if (missing) {
            findings.add(
                    Finding.action(
                            code + "_NOT_GIVEN",
                            pointer,
                            "The "
                                    + name
                                    + " was not given; it is not in the numbers, which are least"
                                    + " values."));
        }
    }

    /** How one piece is held, where that is not by exactly one dead-load anchor. */
    static List<Finding> held(Piece piece, PieceResult result, Reporting reporting) {
        int fixed = piece.fixed().size();
        if (fixed == 1) {
            return List.of();
        }
        String where = where(piece, reporting);
        if (fixed > 1) {
            Quantity force = result.lockedInForce();
            return List.of(
                    Finding.action(
                            "SEVERAL_DEAD_LOAD_ANCHORS",
                            "/anchors",
                            where
                                    + " is fixed by "
                                    + String.join(" and ", result.deadLoadAnchors())
                                    + ": it can move neither with temperature nor with the slabs"
                                    + " between them. "
                                    + (force == null
                                            ? "Give the section's area for the force that locks in."
                                            : lockedIn(piece, result, force, reporting))
                                    + " Slot all but one of them."));
        }
        if (piece.anchors().isEmpty() && piece.isOpenEnded()) {
            return List.of(
                    Finding.action(
                            "BEYOND_JOINT_NOT_GIVEN",
                            "/anchors",
                            where
                                    + " has no anchors here: what it moves is not in the numbers."
                                    + " Give its anchors; where the wall ends there against the"
                                    + " structure, give the structure as a DEAD_LOAD anchor just"
                                    + " beyond the joint."));
        }
        return List.of(
                Finding.action(
                        "NO_DEAD_LOAD_ANCHOR",
                        "/anchors",
                        where
                                + " has no dead-load anchor: nothing carries its weight or keeps it"
                                + " in its place. The movements given for it are those from the"
                                + " nearest dead-load anchor of another piece, and over its whole"
                                + " length."));
    }

    private static String lockedIn(
            Piece piece, PieceResult result, Quantity thermal, Reporting reporting) {
        StringBuilder text = new StringBuilder("Temperature alone locks in ");
        text.append(thermal.text(reporting.units()));
        boolean rigid = piece.fixed().stream().allMatch(anchor -> anchor.stiffness() == null);
        text.append(rigid ? " where the anchors do not give." : ", the anchors giving as stated.");
        for (LockedInResult pair : result.lockedIn()) {
            if (pair.compression() != null && pair.tension() != null) {
                text.append(" With the slabs and columns moving as given, it is up to ")
                        .append(pair.compression().text(reporting.units()))
                        .append(" of compression and ")
                        .append(pair.tension().text(reporting.units()))
                        .append(" of tension between ")
                        .append(pair.lower())
                        .append(" and ")
                        .append(pair.upper())
                        .append('.');
            }
        }
        return text.toString();
    }

    private static String where(Piece piece, Reporting reporting) {
        String above =
                piece.bottom() == null
                        ? ""
                        : " above the joint at "
                                + reporting.text(Dimension.DISTANCE, piece.bottom());
        String below =
                piece.top() == null
                        ? ""
                        : (piece.bottom() == null ? " below" : " and below")
                                + " the joint at "
                                + reporting.text(Dimension.DISTANCE, piece.top());
        return "The piece" + above + below;
    }

    /** Creep that is in no sum, where there is a joint or a slot that it would move. */
    static List<Finding> creep(AnchorageMovementRequest request) {
        boolean slabs = request.anchors().stream().anyMatch(a -> a.slabCreepDeflection() == null);
        boolean columns = request.movement().columnCreep() == null;
        boolean moves =
                !request.joints().isEmpty()
                        || request.anchors().stream().anyMatch(anchor -> !anchor.isFixed());
        if (!moves || !(slabs || columns)) {
            return List.of();
        }
        return List.of(
                Finding.note(
                        "CREEP_NOT_GIVEN",
                        slabs ? "/anchors" : "/columnCreep",
                        (slabs && columns
                                        ? "Creep of slabs (slabCreepDeflection of each anchor) and"
                                                + " of columns (columnCreep)"
                                        : slabs
                                                ? "Creep of slabs (slabCreepDeflection of each"
                                                        + " anchor)"
                                                : "Creep of columns (columnCreep)")
                                + " was not given throughout: what was not given is not in the"
                                + " numbers, unless the other movements hold it. Give 0 where there"
                                + " is none."));
    }

    /** A joint narrower than it must be. */
    static Finding tooNarrow(int index, StackJoint joint, Quantity required, Reporting reporting) {
        return Finding.action(
                "JOINT_TOO_NARROW",
                "/stackJoints/" + index + "/nominalWidth",
                "The joint at "
                        + reporting.text(Dimension.DISTANCE, joint.elevation())
                        + " must be at least "
                        + required.text(reporting.units())
                        + " wide"
                        + (joint.nominalWidth() == null
                                ? "."
                                : ", and is "
                                        + reporting.text(Dimension.LENGTH, joint.nominalWidth())
                                        + "."));
    }

    /** A slot shorter than it must be. */
    static Finding slotTooShort(int index, SlotResult slot, Reporting reporting) {
        return Finding.action(
                "SLOT_TOO_SHORT",
                "/anchors/" + index,
                "The slot of anchor "
                        + slot.anchor()
                        + " is too short for the movement there"
                        + (slot.up() == null || slot.down() == null
                                ? "."
                                : ": the mullion has to move "
                                        + slot.up().text(reporting.units())
                                        + " up and "
                                        + slot.down().text(reporting.units())
                                        + " down from where it is installed."));
    }

    /** Slots whose room was not given: the drawings must call it out. */
    static Finding slotsToCallOut(List<String> anchors) {
        return Finding.note(
                "SLOTS_TO_CALL_OUT",
                "/anchors",
                "Call out on the shop drawings the room that the mullion needs up and down at "
                        + String.join(", ", anchors)
                        + ", and where in its slot the bolt is set when the wall is installed.");
    }

    /** Nothing was said of what the anchors carry. */
    static Finding strengthNotChecked() {
        return Finding.note(
                "ANCHOR_STRENGTH_NOT_CHECKED",
                "/anchors",
                "For some anchors neither reactions nor allowable forces were given: whether they"
                        + " carry the wind and the weight was not looked at.");
    }

    /** Wind and weight at one anchor. */
    static Finding interaction(List<String> anchors) {
        return Finding.note(
                "ANCHOR_INTERACTION_NOT_CHECKED",
                "/anchors",
                "Wind and weight act together at "
                        + String.join(", ", anchors)
                        + "; each was held against its own allowable force only.");
    }
}
