package org.bayledger.anchorage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bayledger.check.Binder;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

@NullMarked
class AnchorageRemediesTest {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static AnchorageMovementResult run(byte[] json, UnitSystem units) {
        return AnchorageMovementCheck.run(
                Binder.bind(StrictJson.read(json), AnchorageMovementRequest.class),
                new Reporting(units, TraceLevel.GOVERNING));
    }

    /** The request with the changes of a remedy written where their pointers say. */
    private static byte[] applied(String json, Remedy remedy) {
        JsonNode root = JSON.readTree(json);
        for (Remedy.Change change : remedy.changes()) {
            int cut = change.pointer().lastIndexOf('/');
            JsonNode parent = root.at(change.pointer().substring(0, cut));
            String name = change.pointer().substring(cut + 1);
            assertThat(parent).isNotInstanceOf(ArrayNode.class);
            ((ObjectNode) parent).put(name, String.valueOf(change.to()));
        }
        return JSON.writeValueAsBytes(root);
    }

    /**
     * Of two fixed anchors the stronger stays and takes 300 and 150 lbf, for which it is too weak.
     */
    @Test
    void releasedAnchorHandsItsWeightOn() {
        String both =
                AnchorageMovementCheckTest.SOUND
                        .replace(
                                "28 ft\",\"role\"",
                                "28 ft\",\"deadLoadReaction\":\"300 lbf\",\"allowableDeadLoadForce\":\"400 lbf\",\"role\"")
                        .replace(
                                "40 ft\",\"role\":\"WIND",
                                "40 ft\",\"deadLoadReaction\":\"150 lbf\",\"allowableDeadLoadForce\":\"300 lbf\","
                                        + "\"role\":\"DEAD");
        Remedy remedy =
                run(both.getBytes(StandardCharsets.UTF_8), UnitSystem.US)
                        .outcome()
                        .remedies()
                        .get(0);
        assertThat(remedy.changes())
                .contains(
                        new Remedy.Change("/anchors/2/role", "WIND_LOAD"),
                        new Remedy.Change("/anchors/2/deadLoadReaction", "0 N"))
                .anySatisfy(
                        change -> {
                            assertThat(change.pointer()).isEqualTo("/anchors/1/deadLoadReaction");
                            assertThat(String.valueOf(change.to())).startsWith("45");
                        })
                .anySatisfy(
                        change ->
                                assertThat(change.pointer())
                                        .isEqualTo("/anchors/1/allowableDeadLoadForce"));
        assertThat(remedy.text()).contains("Slot L4, so that L3 alone carries the weight");
        // half of the weights: what stays would carry is not known, and nothing is offered
        String half = both.replace("\"deadLoadReaction\":\"300 lbf\",", "");
        assertThat(run(half.getBytes(StandardCharsets.UTF_8), UnitSystem.US).outcome().remedies())
                .isEmpty();
    }

    @Test
    void everyRemedyPassesWhenItIsApplied() {
        String sound = AnchorageMovementCheckTest.SOUND;
        String short4 = "\"40 ft\",\"slotUp\":\"0.5 in\",\"slotDown\":\"0.5 in\"";
        String weak2 =
                "\"14 ft\",\"windReactionPositive\":\"900 lbf\",\"windReactionNegative\":\"-1200 lbf\","
                        + "\"allowableWindForce\":\"1000 lbf\",\"deadLoadReaction\":\"300 lbf\","
                        + "\"allowableDeadLoadForce\":\"200 lbf\",\"role\"";
        String unfixed = sound.replace("28 ft\",\"role\":\"DEAD", "28 ft\",\"role\":\"WIND");
        String twice =
                sound.replace(
                                "28 ft\",\"role\":\"DEAD",
                                "28 ft\",\"deadLoadReaction\":\"300 lbf\",\"allowableDeadLoadForce\":\"400 lbf\","
                                        + "\"role\":\"DEAD")
                        .replace(
                                "40 ft\",\"role\":\"WIND",
                                "40 ft\",\"deadLoadReaction\":\"150 lbf\",\"allowableDeadLoadForce\":\"300 lbf\","
                                        + "\"slotUp\":\"0.5 in\",\"slotDown\":\"0.5 in\",\"role\":\"DEAD");
        String bolts =
                weak2.replace("1000 lbf", "2000 lbf")
                        .replace(
                                "\"role\"",
                                "\"bracket\":{\"mounting\":\"FACE_OF_SLAB\",\"eccentricity\":\"6 in\",\"leverArm\":\"5 in\","
                                        + "\"windLeverArm\":\"5 in\",\"boltCount\":4,\"tensionBoltCount\":2,\"pryingFactor\":1.2,"
                                        + "\"allowableBoltTension\":\"700 lbf\",\"allowableBoltShear\":\"700 lbf\"},\"role\"");
        String narrow =
                "\"expansionJoints\":[{\"id\":\"EJ1\",\"nominalWidth\":\"0.5 in\",\"sealantMovementCapability\":0.25,"
                        + "\"inPlaneMovement\":\"0.2 in\",\"thermalLength\":\"20 ft\"}]";
        for (String json :
                List.of(
                        sound.replace("1.75 in", "0.75 in"),
                        sound.replace("\"40 ft\"", short4),
                        sound.replace("\"14 ft\",\"role\"", weak2),
                        sound.replace("\"0.6 in\"", "\"2.5 in\""),
                        unfixed,
                        twice,
                        sound.replace("\"14 ft\",\"role\"", bolts),
                        sound.replace("\"material\"", narrow + ",\"material\""),
                        unfixed.replace("1.75 in", "0.75 in").replace("\"0.6 in\"", "\"3 in\""))) {
            for (UnitSystem units : UnitSystem.values()) {
                AnchorageMovementResult before = run(json.getBytes(StandardCharsets.UTF_8), units);
                assertThat(before.outcome().verdict()).isNotEqualTo(Verdict.SATISFIED);
                assertThat(before.outcome().remedies()).as(json).hasSize(1);
                Remedy remedy = before.outcome().remedies().get(0);
                AnchorageMovementResult after = run(applied(json, remedy), units);
                assertThat(after.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
                assertThat(after.outcome().utilization()).isEqualTo(remedy.utilization());
            }
        }
    }
}
