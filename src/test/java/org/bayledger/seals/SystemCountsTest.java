package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.count;
import static org.bayledger.seals.Frames.joint;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Counts of unitized and window walls, and the places of the joints of every system. */
@NullMarked
class SystemCountsTest {

    static Map<String, @Nullable Object> units() {
        return Frames.tree(
                """
                {"system":"UNITIZED","drainage":"PRESSURE_EQUALIZED",
                 "columns":["1.5 m","1.5 m","1.5 m","1.5 m","1.5 m","1.5 m"],
                 "rows":["1 m","2.6 m","1 m","2.6 m"],"stackJoints":["3.6 m"],
                 "unitized":{"columnsPerUnit":[1,2,1,2],"starterSillLength":"4 m"},
                 "bead":{"width":"6 mm","depth":"6 mm"},
                 "perimeterBead":{"width":"12 mm","depth":"6 mm"},
                 "fastenersPerHorizontalEnd":3,"anchorPenetrations":14,
                 "continuousEdges":["LEFT"],"endDamHeight":"60 mm",
                 "load":{"positive":"1.5 kPa","negative":"-2 kPa"}}""");
    }

    static Map<String, @Nullable Object> windows() {
        return Frames.tree(
                """
                {"system":"WINDOW_WALL","drainage":"PRESSURE_EQUALIZED",
                 "columns":["1.2 m","1.2 m","1.2 m","1.2 m","1.2 m"],
                 "rows":["0.3 m","0.9 m","1.8 m","0.3 m","0.9 m","1.8 m"],
                 "windowWall":{"slabRows":[1,4],"receptorLength":"4 m","slabCoverLength":"3 m"},
                 "bead":{"width":"6 mm","depth":"6 mm"},
                 "perimeterBead":{"width":"12 mm","depth":"6 mm"},
                 "fastenersPerHorizontalEnd":2,"perimeterFastenerSpacing":"400 mm",
                 "anchorPenetrations":0,"continuousEdges":[],"endDamHeight":"60 mm",
                 "load":{"positive":"1.5 kPa","negative":"-2 kPa"}}""");
    }

    private static void assertCounts(SealsResult result, Map<JointType, Integer> hand) {
        Map<JointType, Integer> counted = new EnumMap<>(JointType.class);
        result.joints().forEach(joint -> counted.put(joint.type(), joint.count()));
        assertThat(counted).isEqualTo(new EnumMap<>(hand));
        assertThat(result.notCounted()).isEmpty();
    }

    /**
     * Counted on a sketch: six columns of 1.5 m in units of 1, 2, 1 and 2 columns, 9 m wide; two
     * tiers of 3.6 m, each of a row of 1 m and one of 2.6 m; on its left the wall goes on.
     *
     * <ul>
     *   <li>4 units x 2 tiers = 8 units, 4 corners each: 32
     *   <li>one inner horizontal in each tier, in each of 6 columns: 12 pieces, 24 ends
     *   <li>one inner vertical in each unit of two columns: 2 in each tier, 4 with 8 ends
     *   <li>3 screws at each of 32 + 24 + 8 = 64 places: 192
     *   <li>the units meet at 3 places, and at the left edge their neighbour's: 4, in two tiers 8,
     *       4 x 7.2 m = 28.8 m
     *   <li>one gutter of 9 m with a sleeve at each of these 4 places and a cap at its right end
     *   <li>starter sill of 9 m in lengths of 4 m: 4 + 4 + 1, 2 butts, and one at the left edge;
     *       one end dam
     * </ul>
     */
    @Test
    void handCountOfUnits() {
        SealsResult result = run(units());
        assertCounts(
                result,
                Map.ofEntries(
                        Map.entry(JointType.FRAME_CORNER, 32),
                        Map.entry(JointType.HORIZONTAL_TO_VERTICAL, 24),
                        Map.entry(JointType.VERTICAL_TO_HORIZONTAL, 8),
                        Map.entry(JointType.FASTENER_HEAD, 192),
                        Map.entry(JointType.UNIT_VERTICAL, 8),
                        Map.entry(JointType.STACK_JOINT, 1),
                        Map.entry(JointType.SPLICE_SLEEVE, 4),
                        Map.entry(JointType.END_CAP, 1),
                        Map.entry(JointType.RECEPTOR_SPLICE, 3),
                        Map.entry(JointType.END_DAM, 1),
                        Map.entry(JointType.PERIMETER_SILL, 1),
                        Map.entry(JointType.PERIMETER_JAMB, 1),
                        Map.entry(JointType.PERIMETER_HEAD, 1),
                        Map.entry(JointType.ANCHOR_PENETRATION, 14)));
        assertThat(joint(result, JointType.FRAME_CORNER).countFormula())
                .isEqualTo("4 corners x 4 units x 2 tiers = 32");
        assertThat(joint(result, JointType.HORIZONTAL_TO_VERTICAL).countFormula())
                .isEqualTo("2 ends x 6 columns x 2 inner horizontals (4 rows - 2 tiers) = 24");
        assertThat(joint(result, JointType.UNIT_VERTICAL).lengthFormula())
                .isEqualTo("4 x 7.2 m = 28.8 m");
        // gaskets take no sealant
        assertThat(joint(result, JointType.UNIT_VERTICAL).sealantVolume().si()).isZero();
        assertThat(joint(result, JointType.STACK_JOINT).sealantVolume().si()).isZero();
        assertThat(codes(result)).contains("UNITS_CLOSED_BY_GASKETS");
        // perimeter: sill and head of 9 m, a jamb of 7.2 m, bead 12 x 6 mm
        double perimeter =
                joint(result, JointType.PERIMETER_SILL).sealantVolume().si()
                        + joint(result, JointType.PERIMETER_JAMB).sealantVolume().si()
                        + joint(result, JointType.PERIMETER_HEAD).sealantVolume().si();
        assertThat(perimeter).isCloseTo(25.2 * 72e-6, within(1e-12));
    }

    /**
     * Counted on a sketch: five columns of 1.2 m, 6 m wide; slab edges of 0.3 m below each of two
     * storeys of 0.9 + 1.8 m.
     *
     * <ul>
     *   <li>three horizontals in each storey, of 5 pieces: 30 pieces, 60 ends, 60 plugs
     *   <li>fasteners: 2 at each of 60 ends = 120; at 400 mm 15 along each of 4 receptors = 60, and
     *       7 (2700/400 = 6.75) along each of 4 jambs = 28; 208
     *   <li>4 receptors of 6 m in lengths of 4 m: one butt each; 4 dams at sill receptors, 4 caps
     *       at head receptors
     *   <li>2 slab-edge covers: 4 lines of 6 m; in lengths of 3 m one butt of 0.3 m each
     * </ul>
     */
    @Test
    void handCountOfAWindowWall() {
        SealsResult result = run(windows());
        assertCounts(
                result,
                Map.ofEntries(
                        Map.entry(JointType.HORIZONTAL_TO_VERTICAL, 60),
                        Map.entry(JointType.JOINT_PLUG, 60),
                        Map.entry(JointType.FASTENER_HEAD, 208),
                        Map.entry(JointType.RECEPTOR_SPLICE, 4),
                        Map.entry(JointType.END_DAM, 4),
                        Map.entry(JointType.END_CAP, 4),
                        Map.entry(JointType.PERIMETER_SILL, 2),
                        Map.entry(JointType.PERIMETER_HEAD, 2),
                        Map.entry(JointType.PERIMETER_JAMB, 4),
                        Map.entry(JointType.SLAB_EDGE_JOINT, 4),
                        Map.entry(JointType.SLAB_COVER_BUTT, 2),
                        Map.entry(JointType.ANCHOR_PENETRATION, 0)));
        assertThat(joint(result, JointType.PERIMETER_JAMB).length().si())
                .isCloseTo(4 * 2.7, within(1e-12));
        assertThat(joint(result, JointType.SLAB_EDGE_JOINT).length().si())
                .isCloseTo(24, within(1e-12));
        assertThat(joint(result, JointType.SLAB_COVER_BUTT).length().si())
                .isCloseTo(0.6, within(1e-12));
        assertThat(joint(result, JointType.HORIZONTAL_TO_VERTICAL).countFormula())
                .isEqualTo("2 ends x 5 columns x 6 horizontals (4 rows + 2 storeys) = 60");
        SealsResult drained = run(with(windows(), "drainage", "DRAINED"));
        assertThat(count(drained, JointType.JOINT_PLUG)).isZero();
        // no slab in the frame: one storey of six rows
        SealsResult one =
                run(
                        with(
                                windows(),
                                "windowWall",
                                Map.of("slabRows", List.of(), "receptorLength", "6 m")));
        assertThat(one.notCounted()).isEmpty();
        assertThat(count(one, JointType.HORIZONTAL_TO_VERTICAL)).isEqualTo(2 * 5 * 7);
        assertThat(count(one, JointType.SLAB_COVER_BUTT)).isZero();
        assertThat(count(one, JointType.RECEPTOR_SPLICE)).isZero();
    }

    /** Frames side by side, and units one above the other, are one frame. */
    @Test
    void framesOfAWallAddUp() {
        Set<JointType> lines =
                Set.of(
                        JointType.PERIMETER_HEAD,
                        JointType.PERIMETER_SILL,
                        JointType.STACK_JOINT,
                        JointType.SLAB_EDGE_JOINT);
        Map<String, @Nullable Object> unit = with(units(), "columns", List.of("2 m", "2 m", "4 m"));
        unit =
                with(
                        unit,
                        "unitized",
                        Frames.tree("{\"columnsPerUnit\":[2,1],\"starterSillLength\":\"4 m\"}"));
        Map<String, @Nullable Object> wide =
                with(unit, "columns", List.of("2 m", "2 m", "4 m", "2 m", "2 m", "4 m"));
        wide =
                with(
                        wide,
                        "unitized",
                        Frames.tree(
                                "{\"columnsPerUnit\":[2,1,2,1],\"starterSillLength\":\"4 m\"}"));
        wide = with(with(wide, "anchorPenetrations", 28), "continuousEdges", List.of());
        addUp(sides(unit, "RIGHT"), sides(unit, "LEFT"), run(wide), lines);

        Map<String, @Nullable Object> window = with(windows(), "columns", List.of("4 m", "8 m"));
        addUp(
                sides(window, "RIGHT"),
                sides(window, "LEFT"),
                run(with(window, "columns", List.of("4 m", "8 m", "4 m", "8 m"))),
                lines);

        Map<String, @Nullable Object> tier = with(units(), "rows", List.of("1 m", "2.6 m"));
        tier = with(tier, "stackJoints", List.of());
        Map<String, @Nullable Object> tall = with(units(), "anchorPenetrations", 28);
        addUp(
                run(with(tier, "continuousEdges", List.of("LEFT", "TOP"))),
                run(with(tier, "continuousEdges", List.of("LEFT", "BOTTOM"))),
                run(tall),
                Set.of(JointType.PERIMETER_JAMB));
        // the line at the sill is the same whether it is listed or not
        Map<String, @Nullable Object> upper =
                with(tier, "continuousEdges", List.of("LEFT", "BOTTOM"));
        assertThat(run(with(upper, "stackJoints", List.of("0 m"))).joints())
                .isEqualTo(run(upper).joints());
    }

    private static SealsResult sides(Map<String, @Nullable Object> tree, String edge) {
        return run(with(tree, "continuousEdges", List.of(edge)));
    }

    private static void addUp(
            SealsResult one, SealsResult other, SealsResult whole, Set<JointType> lines) {
        for (SealJoint joint : whole.joints()) {
            JointType type = joint.type();
            if (!lines.contains(type)) {
                assertThat(count(one, type) + count(other, type))
                        .as("%s", type)
                        .isEqualTo(joint.count());
            }
            assertThat(joint(one, type).length().si() + joint(other, type).length().si())
                    .as("length of %s", type)
                    .isCloseTo(joint.length().si(), within(1e-9));
        }
        assertThat(one.sealantVolume().si() + other.sealantVolume().si())
                .isCloseTo(whole.sealantVolume().si(), within(1e-12));
    }

    /** A stack joint along the lower edge of a stick-built frame is its own and cuts no plate. */
    @Test
    void aStackJointOnTheSillCountsOnce() {
        Map<String, @Nullable Object> upper = with(two(), "continuousEdges", List.of("BOTTOM"));
        SealsResult without = run(upper);
        SealsResult with = run(with(upper, "stackJoints", List.of("0 ft")));
        assertThat(count(with, JointType.STACK_JOINT)).isEqualTo(1);
        assertThat(joint(with, JointType.STACK_JOINT).length().si())
                .isCloseTo(10 * 0.3048, within(1e-12));
        assertThat(count(with, JointType.PRESSURE_PLATE_BUTT))
                .isEqualTo(count(without, JointType.PRESSURE_PLATE_BUTT));
    }

    /** Every system, many frames: the places of a kind add up to its count and length. */
    @Test
    void placesAddUpToTheCounts() {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            Map<String, @Nullable Object> tree = frame(random);
            SealsRequest request = Binder.bind(tree, SealsRequest.class);
            SealsResult result = SealsCheck.run(request, Frames.SI);
            Map<JointType, Integer> joints = new EnumMap<>(JointType.class);
            Map<JointType, Double> lengths = new EnumMap<>(JointType.class);
            for (JointPlace place : JointPlaces.of(request)) {
                joints.merge(place.type(), place.joints(), Integer::sum);
                lengths.merge(
                        place.type(),
                        Math.hypot(place.toX() - place.x(), place.toY() - place.y()),
                        Double::sum);
                assertThat(place.x()).isBetween(0.0, request.width() + 1e-9);
                assertThat(place.y()).isBetween(0.0, request.height() + 1e-9);
                assertThat(place.toY()).isBetween(place.y(), request.height() + 1e-9);
            }
            for (SealJoint joint : result.joints()) {
                if (joint.type() != JointType.JOINT_COVER
                        && joint.type() != JointType.ANCHOR_PENETRATION) {
                    assertThat(joints.getOrDefault(joint.type(), 0))
                            .as("%s of %s", joint.type(), tree)
                            .isEqualTo(joint.count());
                    if (joint.type().weatherSeal()) {
                        assertThat(lengths.getOrDefault(joint.type(), 0.0))
                                .as("%s of %s", joint.type(), tree)
                                .isCloseTo(joint.length().si(), within(1e-9));
                    }
                }
            }
            assertThat(result.notCounted()).isEmpty();
        }
    }

    private static Map<String, @Nullable Object> frame(Random random) {
        List<String> columns = new ArrayList<>();
        List<java.math.BigDecimal> perUnit = new ArrayList<>();
        for (int left = 1 + random.nextInt(6); left > 0; ) {
            int unit = 1 + random.nextInt(Math.min(3, left));
            perUnit.add(new java.math.BigDecimal(unit));
            left -= unit;
            for (int i = 0; i < unit; i++) {
                columns.add(600 + random.nextInt(2000) + " mm");
            }
        }
        List<String> rows = new ArrayList<>();
        List<String> stacks = new ArrayList<>();
        int height = 0;
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            int row = 300 + random.nextInt(2000);
            rows.add(row + " mm");
            height += row;
            if (i < count - 1 && random.nextBoolean()) {
                stacks.add(height + " mm");
            }
        }
        List<String> edges = new ArrayList<>();
        for (Edge edge : Edge.values()) {
            if (random.nextInt(3) == 0) {
                edges.add(edge.name());
            }
        }
        if (edges.contains("BOTTOM") && random.nextBoolean()) {
            stacks.add("0 mm");
        }
        WallSystem system = List.of(WallSystem.values()).get(random.nextInt(3));
        Map<String, @Nullable Object> tree = with(two(), "system", system.name());
        tree = with(with(with(tree, "columns", columns), "rows", rows), "continuousEdges", edges);
        tree = with(tree, "drainage", random.nextBoolean() ? "DRAINED" : "PRESSURE_EQUALIZED");
        tree = with(tree, "perimeterFastenerSpacing", 200 + random.nextInt(900) + " mm");
        String stock = 1000 + random.nextInt(4000) + " mm";
        switch (system) {
            case STICK_BUILT -> {
                tree = with(tree, "splices", List.of("123 mm"));
                tree = with(with(tree, "stackJoints", stacks), "pressurePlateLength", stock);
            }
            case UNITIZED -> {
                tree = with(with(tree, "stackJoints", stacks), "splices", null);
                tree = with(with(tree, "pressurePlateLength", null), "jointCovers", null);
                tree = with(tree, "perimeterFastenerSpacing", null);
                tree =
                        with(
                                tree,
                                "unitized",
                                Map.of("columnsPerUnit", perUnit, "starterSillLength", stock));
            }
            case WINDOW_WALL -> {
                tree = with(with(tree, "stackJoints", null), "splices", null);
                tree = with(with(tree, "pressurePlateLength", null), "jointCovers", null);
                List<java.math.BigDecimal> slabs = new ArrayList<>();
                for (int i = 1; i < count; i++) {
                    if (random.nextInt(3) == 0) {
                        slabs.add(new java.math.BigDecimal(i));
                    }
                }
                tree =
                        with(
                                tree,
                                "windowWall",
                                Map.of(
                                        "slabRows",
                                        slabs,
                                        "receptorLength",
                                        stock,
                                        "slabCoverLength",
                                        stock));
            }
        }
        return tree;
    }

    @Test
    void whatCannotBeCountedIsNamed() {
        for (Map<String, @Nullable Object> tree : List.of(units(), windows())) {
            Map<String, @Nullable Object> bare = new java.util.LinkedHashMap<>(tree);
            for (String property :
                    List.of(
                            "unitized",
                            "windowWall",
                            "stackJoints",
                            "fastenersPerHorizontalEnd",
                            "perimeterFastenerSpacing",
                            "anchorPenetrations")) {
                bare.remove(property);
            }
            SealsResult result = run(bare);
            assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
            List<JointType> all = new ArrayList<>(result.notCounted());
            result.joints().forEach(joint -> all.add(joint.type()));
            WallSystem system = WallSystem.valueOf((String) tree.get("system"));
            assertThat(all).containsExactlyInAnyOrderElementsOf(system.jointTypes());
            assertThat(result.outcome().findings())
                    .filteredOn(finding -> finding.code().equals("JOINTS_NOT_COUNTED"))
                    .extracting("text", String.class)
                    .anySatisfy(text -> assertThat(text).contains("FASTENER_HEAD"));
            // what is not counted may be there, and has its step
            assertThat(result.sequence().stream().flatMap(s -> s.jointTypes().stream()))
                    .containsAll(result.notCounted());
        }
        SealsResult noStock =
                run(
                        with(
                                windows(),
                                "windowWall",
                                Map.of("slabRows", List.of(new java.math.BigDecimal(1)))));
        assertThat(noStock.notCounted())
                .containsExactly(JointType.RECEPTOR_SPLICE, JointType.SLAB_COVER_BUTT);
        SealsResult noHeads = run(with(units(), "fastenersPerHorizontalEnd", null));
        assertThat(noHeads.notCounted()).containsExactly(JointType.FASTENER_HEAD);
        SealsResult some = run(with(windows(), "perimeterFastenerSpacing", null));
        assertThat(codes(some)).contains("JOINTS_PARTLY_COUNTED");
        assertThat(count(some, JointType.FASTENER_HEAD)).isEqualTo(120);
        assertThat(
                        count(
                                run(with(windows(), "fastenersPerHorizontalEnd", null)),
                                JointType.FASTENER_HEAD))
                .isEqualTo(88);
    }

    @Test
    void refusesWhatDoesNotBelong() {
        assertFaults(with(units(), "windowWall", Map.of("slabRows", List.of())), "/windowWall");
        assertFaults(with(two(), "unitized", units().get("unitized")), "/unitized");
        Map<String, @Nullable Object> sticks = with(two(), "system", "UNITIZED");
        assertFaults(
                sticks,
                "/pressurePlateLength",
                "/splices",
                "/jointCovers",
                "/perimeterFastenerSpacing");
        assertFaults(with(units(), "columns", List.of("1 m")), "/unitized/columnsPerUnit");
        assertFaults(with(units(), "stackJoints", List.of("2 m")), "/stackJoints/0");
        assertFaults(with(units(), "stackJoints", List.of("0 m")), "/stackJoints/0");
        assertFaults(with(windows(), "stackJoints", List.of("0.3 m")), "/stackJoints");
        assertFaults(
                with(windows(), "windowWall", Frames.tree("{\"slabRows\":[1,1,7]}")),
                "/windowWall/slabRows/1",
                "/windowWall/slabRows/2");
        assertFaults(
                with(windows(), "windowWall", Frames.tree("{\"slabRows\":[1,2,3,4,5,6]}")),
                "/windowWall/slabRows");
        assertFaults(
                with(units(), "unitized", Frames.tree("{\"columnsPerUnit\":[0,6]}")),
                "/unitized/columnsPerUnit/0");
        assertFaults(
                with(two(), "sealant", Frames.tree("{\"dryTime\":\"2 h\",\"sealWithin\":\"1 h\"}")),
                "/sealant/sealWithin");
        assertFaults(
                with(
                        two(),
                        "sealant",
                        Frames.tree(
                                "{\"minimumSurfaceTemperature\":\"30 degC\",\"maximumSurfaceTemperature\":\"20 degC\"}")),
                "/sealant/maximumSurfaceTemperature");
        assertFaults(with(two(), "sealant", Map.of("name", "=1+1")), "/sealant/name");
    }

    static void assertFaults(Map<String, @Nullable Object> tree, String... pointers) {
        assertThatThrownBy(() -> Binder.bind(tree, SealsRequest.class))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(pointers));
    }
}
