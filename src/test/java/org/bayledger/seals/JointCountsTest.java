package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.count;
import static org.bayledger.seals.Frames.joint;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@NullMarked
class JointCountsTest {

    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;

    /**
     * Counted on a sketch of two columns of 5 ft and rows of 3, 8 and 2 ft: three verticals of 13
     * ft, four horizontals (sill, 3 ft, 11 ft, head) of two pieces each.
     *
     * <ul>
     *   <li>8 pieces with 2 ends: 16 ends, as many plugs
     *   <li>fasteners: 2 at each of 16 ends = 32; at 18 in: a piece of 5 ft needs 4 (60/18 = 3.3),
     *       four pieces at head and sill = 16; a jamb of 13 ft needs 9 (156/18 = 8.7), two = 18; 32
     *       + 16 + 18 = 66
     *   <li>plates: 16 butts at crossings; none along 5 ft; each vertical is cut at the splice, 11
     *       ft 6 in above the sill, and its lower run of 11 ft 6 in once more as plates are 10 ft
     *       long: 2 on each of 3 verticals; 22
     *   <li>3 splices; 2 end dams; 2 jambs, 1 head, 1 sill
     * </ul>
     */
    @Test
    void handCountOfTwoColumnsAndThreeRows() {
        SealsResult result = run(two(), Frames.US);
        Map<JointType, Integer> hand = new EnumMap<>(JointType.class);
        hand.put(JointType.HORIZONTAL_TO_VERTICAL, 16);
        hand.put(JointType.JOINT_PLUG, 16);
        hand.put(JointType.FASTENER_HEAD, 66);
        hand.put(JointType.PRESSURE_PLATE_BUTT, 22);
        hand.put(JointType.SPLICE, 3);
        hand.put(JointType.STACK_JOINT, 0);
        hand.put(JointType.JOINT_COVER, 3);
        hand.put(JointType.END_DAM, 2);
        hand.put(JointType.PERIMETER_HEAD, 1);
        hand.put(JointType.PERIMETER_JAMB, 2);
        hand.put(JointType.PERIMETER_SILL, 1);
        hand.put(JointType.ANCHOR_PENETRATION, 6);
        hand.forEach(
                (type, count) -> assertThat(count(result, type)).as("%s", type).isEqualTo(count));
        assertThat(result.joints()).hasSize(hand.size());
        assertThat(result.notCounted()).isEmpty();
        assertThat(joint(result, JointType.HORIZONTAL_TO_VERTICAL).countFormula())
                .isEqualTo("2 ends x 2 columns x 4 horizontals = 16");
        assertThat(joint(result, JointType.PRESSURE_PLATE_BUTT).countFormula())
                .isEqualTo(
                        "at crossings 2 ends x 2 columns x 4 horizontals = 16; plates of 10 ft along 4"
                                + " horizontals x (2 of 5 ft x 0) = 0; along 3 verticals x (1 at"
                                + " splices, stack joints and a continuous sill + 1 of 11.5 ft x 1"
                                + " + 1 of 1.5 ft x 0) = 6; in all 22");
        assertThat(joint(result, JointType.PERIMETER_JAMB).lengthFormula())
                .isEqualTo("2 x 13 ft = 26 ft");
    }

    /**
     * The same frame's sealant by hand. Beads of 1/4 x 1/4 in: ends 16 x 4.5 = 72 in, plugs 16 x 7
     * = 112, heads 66 x 1.6 = 105.6, butts 22 x 2.5 = 55, splices 3 x 4.5 = 13.5, covers 3 x 7 =
     * 21, dams 2 x 4.5 = 9, anchors 6 x 7 = 42; together 430.1 in x 1/16 in2 = 26.88 in3. Perimeter
     * 46 ft = 552 in x 1/8 in2 = 69 in3. In all 95.88 in3 = 1.571 L; with 10 % waste 1.728 L: 6
     * cartridges of 300 mL.
     */
    @Test
    void handSumOfTheSealant() {
        SealsResult result = run(two());
        double cubicInch = INCH * INCH * INCH;
        assertThat(result.sealantVolume().si())
                .isCloseTo((430.1 / 16 + 552.0 / 8) * cubicInch, within(1e-12));
        assertThat(result.cartridges()).isEqualTo(6);
        // 1728 mL in tubes of 100 mL; 1571 mL without waste
        Map<String, @Nullable Object> tubes = with(two(), "cartridgeVolume", "100 mL");
        assertThat(run(tubes).cartridges()).isEqualTo(18);
        assertThat(run(with(tubes, "wasteFactor", 0)).cartridges()).isEqualTo(16);
        assertThat(result.joints().stream().mapToDouble(j -> j.sealantVolume().si()).sum())
                .isCloseTo(result.sealantVolume().si(), within(1e-15));
        assertThat(joint(result, JointType.STACK_JOINT).sealantVolume().si()).isZero();
    }

    /**
     * Counted on a sketch of a drained frame in millimetres: three columns of 1500, 1500 and 1200
     * and two rows of 2700 and 900; a stack joint at 1800; on its left the wall goes on. Four
     * verticals of 3600, three horizontals of three pieces: 18 ends, no plugs. Plates of 1400: at
     * crossings 18; along each horizontal one butt in either piece of 1500, none in 1200: 3 x 2 =
     * 6; each vertical is cut at 1800 and each half once more: 4 x 3 = 12; 36. One jamb, one end
     * dam. Stack joint 4200 long.
     */
    @Test
    void handCountOfADrainedFrame() {
        SealsResult result =
                run(
                        Frames.tree(
                                """
                                {"drainage":"DRAINED","columns":["1500 mm","1500 mm","1200 mm"],
                                 "rows":["2700 mm","900 mm"],"splices":[],"stackJoints":["1.8 m"],
                                 "bead":{"width":"6 mm","depth":"6 mm"},
                                 "pressurePlateLength":"1400 mm","fastenersPerHorizontalEnd":0,
                                 "perimeterFastenerSpacing":"500 mm","jointCovers":0,
                                 "anchorPenetrations":8,"continuousEdges":["LEFT"],
                                 "endDamHeight":"50 mm",
                                 "load":{"positive":"1.5 kPa","negative":"-2 kPa"}}"""));
        assertThat(count(result, JointType.HORIZONTAL_TO_VERTICAL)).isEqualTo(18);
        assertThat(count(result, JointType.JOINT_PLUG)).isZero();
        assertThat(joint(result, JointType.JOINT_PLUG).countFormula()).startsWith("0: ");
        assertThat(count(result, JointType.PRESSURE_PLATE_BUTT)).isEqualTo(36);
        assertThat(count(result, JointType.SPLICE)).isZero();
        assertThat(count(result, JointType.END_DAM)).isEqualTo(1);
        assertThat(count(result, JointType.PERIMETER_JAMB)).isEqualTo(1);
        // head and sill 2 x (3 + 3 + 3), one jamb 8 (3600/500 = 7.2)
        assertThat(count(result, JointType.FASTENER_HEAD)).isEqualTo(26);
        SealJoint stack = joint(result, JointType.STACK_JOINT);
        assertThat(stack.count()).isEqualTo(1);
        assertThat(stack.length().si()).isCloseTo(4.2, within(1e-12));
        assertThat(stack.sealantVolume().si()).isCloseTo(4.2 * 36e-6, within(1e-15));
        assertThat(joint(result, JointType.HORIZONTAL_TO_VERTICAL).hiddenBy())
                .containsExactly(Obstacle.GLASS);
    }

    /** A length that is a whole number of plates needs no butt more for the rounding of doubles. */
    @Test
    void wholeNumbersOfPlatesAreWhole() {
        Map<String, @Nullable Object> frame = two();
        frame = with(frame, "columns", List.of("0.3 m", "0.6 m", "0.9 m"));
        frame = with(frame, "rows", List.of("1.1 m", "1.1 m", "1.1 m"));
        frame = with(frame, "splices", List.of());
        frame = with(frame, "pressurePlateLength", "0.3 m");
        // crossings 24; horizontals 4 x (0 + 1 + 2) = 12; verticals 4 x 10 (3.3/0.3 = 11)
        assertThat(count(run(frame), JointType.PRESSURE_PLATE_BUTT)).isEqualTo(24 + 12 + 40);
    }

    /** Two frames side by side, or one above the other, are one frame: nothing twice, none lost. */
    @Test
    void framesOfAWallAddUp() {
        Map<String, @Nullable Object> one = two();
        SealsResult left = run(with(one, "continuousEdges", List.of("RIGHT")));
        SealsResult right = run(with(one, "continuousEdges", List.of("LEFT")));
        Map<String, @Nullable Object> wide =
                with(one, "columns", List.of("5 ft", "5 ft", "5 ft", "5 ft"));
        wide = with(with(wide, "jointCovers", 6), "anchorPenetrations", 12);
        addUp(left, right, run(wide), Set.of(JointType.PERIMETER_HEAD, JointType.PERIMETER_SILL));

        Map<String, @Nullable Object> stories = with(one, "rows", List.of("4 ft", "9 ft"));
        stories = with(stories, "splices", List.of());
        stories = with(stories, "perimeterFastenerSpacing", "1 ft");
        stories = with(stories, "pressurePlateLength", "13 ft");
        SealsResult lower = run(with(stories, "continuousEdges", List.of("TOP")));
        SealsResult upper = run(with(stories, "continuousEdges", List.of("BOTTOM")));
        Map<String, @Nullable Object> tall =
                with(stories, "rows", List.of("4 ft", "9 ft", "4 ft", "9 ft"));
        tall = with(with(tall, "jointCovers", 6), "anchorPenetrations", 12);
        addUp(lower, upper, run(tall), Set.of(JointType.PERIMETER_JAMB));
    }

    private static void addUp(
            SealsResult one, SealsResult other, SealsResult whole, Set<JointType> runs) {
        for (JointType type : WallSystem.STICK_BUILT.jointTypes()) {
            if (!runs.contains(type)) {
                assertThat(count(one, type) + count(other, type))
                        .as("%s", type)
                        .isEqualTo(count(whole, type));
            }
            assertThat(joint(one, type).length().si() + joint(other, type).length().si())
                    .as("length of %s", type)
                    .isCloseTo(joint(whole, type).length().si(), within(1e-9));
        }
    }

    /** Splitting every column in two doubles what sits at the ends and nothing at the perimeter. */
    @Test
    void aGridTwiceAsFineHasTwiceTheEnds() {
        SealsResult coarse = run(two());
        SealsResult fine =
                run(with(two(), "columns", List.of("2.5 ft", "2.5 ft", "2.5 ft", "2.5 ft")));
        for (JointType type : List.of(JointType.HORIZONTAL_TO_VERTICAL, JointType.JOINT_PLUG)) {
            assertThat(count(fine, type)).isEqualTo(2 * count(coarse, type));
            assertThat(joint(fine, type).sealantVolume().si())
                    .isCloseTo(2 * joint(coarse, type).sealantVolume().si(), within(1e-15));
        }
        for (JointType type :
                List.of(
                        JointType.PERIMETER_HEAD,
                        JointType.PERIMETER_JAMB,
                        JointType.PERIMETER_SILL,
                        JointType.END_DAM)) {
            assertThat(joint(fine, type).length()).isEqualTo(joint(coarse, type).length());
        }
        // three verticals become five
        assertThat(count(fine, JointType.SPLICE)).isEqualTo(5);
    }

    /** What cannot be counted is named, each with its own finding, and is never a silent zero. */
    @Test
    void whatCannotBeCountedIsNamed() {
        SealsResult result =
                run(
                        Frames.tree(
                                """
                                {"drainage":"PRESSURE_EQUALIZED","columns":["5 ft","5 ft"],
                                 "rows":["3 ft","8 ft","2 ft"],"endDamHeight":"2 in",
                                 "bead":{"width":"0.25 in","depth":"0.25 in"},
                                 "load":{"positive":"30 psf","negative":"-35 psf"}}"""));
        assertThat(result.notCounted())
                .containsExactlyInAnyOrder(
                        JointType.SPLICE,
                        JointType.STACK_JOINT,
                        JointType.JOINT_COVER,
                        JointType.ANCHOR_PENETRATION,
                        JointType.FASTENER_HEAD,
                        JointType.PRESSURE_PLATE_BUTT);
        assertThat(codes(result).stream().filter("JOINTS_NOT_COUNTED"::equals)).hasSize(6);
        Set<JointType> listed = EnumSet.copyOf(result.notCounted());
        result.joints().forEach(joint -> assertThat(listed.add(joint.type())).isTrue());
        assertThat(listed).isEqualTo(EnumSet.copyOf(WallSystem.STICK_BUILT.jointTypes()));
        assertThat(result.outcome().verdict()).isEqualTo(org.bayledger.check.Verdict.UNDETERMINED);
    }

    @Test
    void halfOfTheFastenersIsSaidToBeHalf() {
        SealsResult ends = run(with(two(), "perimeterFastenerSpacing", null));
        assertThat(count(ends, JointType.FASTENER_HEAD)).isEqualTo(32);
        assertThat(codes(ends)).contains("JOINTS_PARTLY_COUNTED");
        SealsResult edges = run(with(two(), "fastenersPerHorizontalEnd", null));
        assertThat(count(edges, JointType.FASTENER_HEAD)).isEqualTo(34);
        assertThat(codes(edges)).contains("JOINTS_PARTLY_COUNTED");
        // no edge meets a building: no fasteners into one, and nothing to ask for
        Map<String, @Nullable Object> inside =
                with(two(), "continuousEdges", List.of("LEFT", "RIGHT", "TOP", "BOTTOM"));
        inside = with(inside, "perimeterFastenerSpacing", null);
        assertThat(run(inside).outcome().verdict())
                .isEqualTo(org.bayledger.check.Verdict.SATISFIED);
    }

    @Test
    void lengthsFromTheDetailsReplaceTheNominalProfile() {
        assertThat(codes(run(two()))).contains("BEAD_LENGTHS_ASSUMED");
        Map<String, @Nullable Object> given =
                with(
                        two(),
                        "beadLengths",
                        Map.of(
                                "horizontalToVertical", "6 in",
                                "jointPlug", "8 in",
                                "fastenerHead", "2 in",
                                "pressurePlateButt", "3 in",
                                "splice", "6 in",
                                "jointCover", "9 in",
                                "endDam", "10 in",
                                "anchorPenetration", "11 in"));
        SealsResult result = run(given);
        assertThat(codes(result)).doesNotContain("BEAD_LENGTHS_ASSUMED");
        assertThat(joint(result, JointType.END_DAM).length().si())
                .isCloseTo(20 * INCH, within(1e-12));
        assertThat(result.sealantVolume().si()).isGreaterThan(run(two()).sealantVolume().si());
        assertThat(joint(result, JointType.PERIMETER_HEAD).length().si())
                .isCloseTo(10 * FOOT, within(1e-12));
    }
}
