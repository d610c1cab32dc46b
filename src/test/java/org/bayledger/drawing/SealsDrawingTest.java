package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealJoint;
import org.bayledger.seals.SealsResult;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SealsDrawingTest {

    private static Drawn drawn(Map<String, Object> document) {
        return Bays.drawn(document, DrawingKind.INTERNAL_SEALS, UnitSystem.US);
    }

    private static SealsResult checked(Map<String, Object> document) {
        return (SealsResult)
                Objects.requireNonNull(
                        Bays.reviewed(document, "internal-seals").get("seals").result());
    }

    private static List<Map<String, Object>> frames() {
        List<Map<String, Object>> frames = new ArrayList<>();
        frames.add(Bays.tall());
        frames.add(Bays.uneven());
        frames.add(Bays.bay(List.of(5.0), List.of(8.0)));
        for (String edges :
                List.of(
                        "['LEFT','RIGHT','TOP','BOTTOM']",
                        "['RIGHT','TOP']",
                        "['LEFT','BOTTOM']")) {
            frames.add(
                    Bays.bay(
                            List.of(5.0, 11.0, 7.0),
                            List.of(3.0, 9.0, 4.0),
                            bay ->
                                    Bays.seals(bay)
                                            .putAll(
                                                    Walls.tree(
                                                            ("{'continuousEdges':%s,'splices':['6"
                                                                            + " ft'],'stackJoints':"
                                                                            + "['14 ft'],"
                                                                            + "'pressurePlateLength'"
                                                                            + ":'4 ft'}")
                                                                    .formatted(edges)))));
        }
        frames.add(
                Bays.bay(
                        List.of(5.0, 5.0),
                        List.of(3.0, 8.0),
                        bay -> Bays.seals(bay).put("drainage", "DRAINED")));
        frames.add(
                Bays.bay(
                        List.of(5.0, 5.0),
                        List.of(3.0, 8.0),
                        bay ->
                                Bays.seals(bay)
                                        .putAll(Walls.tree("{'fastenersPerHorizontalEnd':7}"))));
        frames.add(Bays.bay(Collections.nCopies(30, 5.0), List.of(1.0, 9.0, 1.0)));
        frames.add(Bays.bay(Collections.nCopies(25, 1.0), Collections.nCopies(20, 1.0)));
        return frames;
    }

    /** As many marks as the check counts joints, or none and a sentence why not. */
    @Test
    void drawsAsManyMarksAsTheCheckCountsOrSaysWhyNot() {
        for (Map<String, Object> document : frames()) {
            Drawn drawn = drawn(document);
            String said = drawn.said();
            for (SealJoint joint : checked(document).joints()) {
                String type = joint.type().name();
                int marks = drawn.marks(type).size();
                if (marks != joint.count()) {
                    assertThat(marks).as(type).isZero();
                    assertThat(said)
                            .containsPattern(
                                    "Not drawn one by one: [^.]*"
                                            + joint.count()
                                            + " "
                                            + type.toLowerCase(Locale.ROOT).replace('_', ' '));
                }
            }
        }
        Drawn tall = drawn(Bays.tall());
        for (SealJoint joint : checked(Bays.tall()).joints()) {
            if (joint.type() != JointType.JOINT_COVER
                    && joint.type() != JointType.ANCHOR_PENETRATION) {
                assertThat(tall.marks(joint.type().name())).hasSize(joint.count());
            }
        }
        assertThat(tall.marks("HORIZONTAL_TO_VERTICAL")).hasSize(156);
        assertThat(tall.marks("FASTENER_HEAD")).hasSizeGreaterThan(312);
        assertThat(tall.said())
                .contains(
                        "Not drawn one by one: 3 joint cover, 14 anchor penetration: the document")
                .doesNotContain("too many");
    }

    /** Walls that come in units or storeys: every joint whose place is known, none on another. */
    @Test
    void unitsAndStoreysAreDrawnJointForJoint() {
        for (String system :
                List.of(
                        "{'system':'UNITIZED','drainage':'PRESSURE_EQUALIZED','stackJoints':"
                                + "['12 ft'],'unitized':{'columnsPerUnit':[2,1],"
                                + "'starterSillLength':'6 ft'}}",
                        "{'system':'WINDOW_WALL','drainage':'PRESSURE_EQUALIZED','windowWall':"
                                + "{'slabRows':[1,3],'receptorLength':'6 ft','slabCoverLength':"
                                + "'6 ft'}}")) {
            Map<String, Object> document =
                    Bays.bay(
                            List.of(5.0, 5.0, 5.0),
                            List.of(2.0, 10.0, 2.0, 10.0),
                            bay -> {
                                Map<String, Object> seals = Bays.seals(bay);
                                seals.keySet().retainAll(List.of("bead", "endDamHeight"));
                                seals.putAll(Walls.tree(system));
                            });
            Drawn drawn = drawn(document);
            int joints = 0;
            for (SealJoint joint : checked(document).joints()) {
                joints += joint.count();
                assertThat(drawn.marks(joint.type().name()))
                        .as("%s in %s", joint.type(), system)
                        .hasSize(joint.count());
            }
            assertThat(joints).isGreaterThan(30);
            assertThat(drawn.said()).doesNotContain("Not drawn one by one");
        }
    }

    /** No mark on another, whatever stands beside it. */
    @Test
    void keepsMarksClearOfMarks() {
        for (Map<String, Object> document : frames()) {
            Drawn drawn = drawn(document);
            List<double[]> places = new ArrayList<>();
            for (JointType type : JointType.values()) {
                for (Element mark : drawn.marks(type.name())) {
                    if (mark.getTagName().equals("path")) {
                        places.add(Drawn.place(mark));
                    }
                }
            }
            places.sort((one, other) -> Double.compare(one[0], other[0]));
            for (int i = 0; i < places.size(); i++) {
                for (int k = i + 1; k < places.size(); k++) {
                    double across = places.get(k)[0] - places.get(i)[0];
                    if (across > 2.5) {
                        break;
                    }
                    double up = Math.abs(places.get(k)[1] - places.get(i)[1]);
                    assertThat(Math.max(across, up)).isGreaterThan(2.5);
                }
            }
        }
    }

    /** Beside their crossings: columns of 4, 10 and 6 ft, rows of 3, 8 and 2.5 ft. */
    @Test
    void putsJointsOfHorizontalsBesideTheirVerticals() {
        Drawn drawn = drawn(Bays.uneven());
        Element frame = drawn.frame();
        double scale = Drawn.number(frame, "width") / 20;
        double foot = Drawn.number(frame, "y") + Drawn.number(frame, "height");
        Set<String> found = new HashSet<>();
        for (Element mark : drawn.marks("HORIZONTAL_TO_VERTICAL")) {
            double[] place = Drawn.place(mark);
            found.add(
                    nearest(
                                    (place[0] - Drawn.number(frame, "x")) / scale,
                                    6.6 / scale,
                                    0,
                                    4,
                                    14,
                                    20)
                            + " at "
                            + nearest((foot - place[1]) / scale, 0.01, 0, 3, 11, 13.5));
        }
        assertThat(found)
                .hasSize(24)
                .contains("0.0+ at 0.0", "4.0- at 3.0", "4.0+ at 11.0", "14.0- at 13.5")
                .contains("20.0- at 3.0");
    }

    /** The line that a place lies at, and on which side. */
    private static String nearest(double at, double within, double... lines) {
        for (double line : lines) {
            if (Math.abs(at - line) <= within) {
                return line + (at - line > 0.02 ? "+" : at - line < -0.02 ? "-" : "");
            }
        }
        return "nowhere: " + at;
    }

    /** Splices at 13 and 27 ft, a stack joint at 41 ft of 48 ft. */
    @Test
    void putsSplicesAndStackJointsAtTheirHeights() {
        Drawn drawn = drawn(Bays.tall());
        Element frame = drawn.frame();
        double scale = Drawn.number(frame, "height") / 48;
        double foot = Drawn.number(frame, "y") + Drawn.number(frame, "height");
        assertThat(drawn.marks("SPLICE")).hasSize(14);
        assertThat((foot - Drawn.place(drawn.marks("SPLICE").get(0))[1]) / scale)
                .isCloseTo(13, Offset.offset(0.01));
        Element stack = drawn.marks("STACK_JOINT").get(0);
        assertThat((foot - Drawn.number(stack, "y1")) / scale).isCloseTo(41, Offset.offset(0.01));
        assertThat(Drawn.number(stack, "x2") - Drawn.number(stack, "x1"))
                .isCloseTo(Drawn.number(frame, "width"), Offset.offset(0.02));
        assertThat(drawn.marks("END_DAM")).hasSize(2);
        assertThat(drawn.marks("PERIMETER_JAMB")).hasSize(2);
    }

    /** Every type can be told by its form alone. */
    @Test
    void givesEveryTypeAFormOfItsOwn() {
        Set<String> forms = new HashSet<>();
        for (JointType type : JointType.values()) {
            JointMark mark = JointMark.of(type);
            forms.add(
                    mark.form() + (mark.filled() ? " filled" : "") + (mark.line() ? " line" : ""));
        }
        assertThat(forms).hasSize(JointType.values().length);
    }

    @Test
    void numbersTheStepsAndShowsHoldPointsAndTheGlass() {
        Drawn drawn = drawn(Bays.tall());
        SealsResult checked = checked(Bays.tall());
        assertThat(drawn.texts())
                .contains("THE GLASS IS SET", "HOLD", "hidden", "reachable", "Detail")
                .contains("joint plug", "pressure plate butt", "end dam");
        assertThat(drawn.texts())
                .containsSubsequence("perimeter head", "THE GLASS IS SET", "pressure plate butt");
        String said = drawn.elements("desc").get(0).getTextContent();
        for (SealJoint joint : checked.joints()) {
            assertThat(drawn.texts()).contains("" + joint.step());
            assertThat(said).contains("Step " + joint.step() + ": " + joint.count() + " of type");
        }
        assertThat(said).contains("The glass is set at step " + checked.glazingStep() + ".");
        long holds = checked.joints().stream().filter(SealJoint::holdPoint).count();
        assertThat(drawn.texts().stream().filter("HOLD"::equals).count()).isEqualTo(holds);
        assertThat(drawn.said()).contains("pressure equalized");
    }

    @Test
    void drawsASignAtEachEndWhereThereIsNoRoomForMore() {
        Map<String, Object> document =
                Bays.bay(Collections.nCopies(30, 5.0), List.of(1.0, 9.0, 1.0));
        Drawn drawn = drawn(document);
        assertThat(drawn.marks(JointPicture.END_NAME)).hasSize(2 * 30 * 4);
        assertThat(drawn.said())
                .contains("too many for this sheet, one sign stands at each end of a horizontal")
                .contains("All joints at one end of a horizontal");
        Drawn crowded = drawn(Bays.bay(Collections.nCopies(60, 1.0), Collections.nCopies(90, 1.0)));
        assertThat(crowded.marks(JointPicture.END_NAME)).isEmpty();
        assertThat(crowded.said()).contains("they lie at the ends of the horizontals");
    }

    @Test
    void saysWhatIsNotKnown() {
        assertThat(drawn(Bays.bare()).said())
                .contains("UNDETERMINED", "Nothing was said of this bay's internal seals.");
        Drawn partly =
                drawn(
                        Bays.bay(
                                List.of(5.0),
                                List.of(8.0),
                                bay -> {
                                    Bays.seals(bay).remove("pressurePlateLength");
                                    Bays.seals(bay).remove("fastenersPerHorizontalEnd");
                                }));
        assertThat(partly.said())
                .contains("not counted and not drawn: pressure plate butt")
                .contains("Not counted: fastener heads at the ends of the horizontals");
        assertThat(partly.marks("PRESSURE_PLATE_BUTT")).isEmpty();
    }
}
