package org.bayledger.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.bayledger.ledger.ExportVerifier;
import org.bayledger.platform.TestDatabase;
import org.bayledger.story.Curl.Answer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A reviewer's job from the first check to the audit, with the steps that are refused. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ReviewerStoryTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    private static final String WEAK = "N-701/mullion/2";

    /** Checks of a review by the last part of the address that answers them. */
    private static final Map<String, String> ADDRESSES =
            Map.of(
                    "glass", "glass",
                    "framing", "framing",
                    "framing-dead-load", "framing",
                    "setting-blocks", "setting-blocks",
                    "internal-seals", "internal-seals");

    /** Two numbers of the same value are the same. */
    private static final Comparator<JsonNode> SAME =
            (one, other) ->
                    one.isNumber() && other.isNumber()
                            ? one.decimalValue().compareTo(other.decimalValue())
                            : one.equals(other) ? 0 : 1;

    @LocalServerPort private int port;
    private Curl curl = new Curl(0);

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @BeforeEach
    void aShell() {
        curl = new Curl(port);
    }

    @Test
    void aReviewerChecksReviewsRecordsComparesAndVerifies() throws IOException {
        // Single things first.
        checkTheWind();
        checkALite();
        checkAMullion();
        checkTheMovement();
        checkTheSettingBlocks();
        checkTheSeals();

        // The whole job, as it was issued: one mullion of level 7 is too weak.
        String issued = demo(1);
        Answer review = curl.post("/v1/reviews", issued);
        assertThat(review.status()).isEqualTo(200);
        assertThat(review.text("/verdict")).isEqualTo("EXCEEDED");
        JsonNode weak = item(review, WEAK);
        assertThat(weak.path("verdict").asString()).isEqualTo("EXCEEDED");
        assertThat(weak.path("utilization").asDouble()).isGreaterThan(1);
        assertThat(governing(review, "framing").path("item").asString()).isEqualTo(WEAK);
        assertThat(verdicts(review))
                .extractingFromEntries(Map.Entry::getValue)
                .filteredOn(verdict -> verdict.toString().startsWith("EXCEEDED"))
                .hasSize(1);

        // Units are how numbers are written; they decide nothing.
        Answer metric = curl.post("/v1/reviews?units=SI", issued);
        assertThat(verdicts(metric)).hasSizeGreaterThan(100).isEqualTo(verdicts(review));
        assertThat(item(metric, WEAK).at("/result/maxMoment/unit").asString()).isEqualTo("kN*m");

        // A large job may be asked for its verdicts alone.
        Answer brief = curl.post("/v1/reviews?detail=VERDICTS", issued);
        assertThat(verdicts(brief)).isEqualTo(verdicts(review));
        assertThat(item(brief, WEAK).path("utilization").asDouble())
                .isEqualTo(weak.path("utilization").asDouble());
        assertThat(item(brief, WEAK).path("result").isNull()).isTrue();
        assertThat(brief.body().path("findings")).isEqualTo(review.body().path("findings"));
        assertThat(brief.body().path("notes")).isEqualTo(review.body().path("notes"));
        assertThat(brief.body().toString().length())
                .isLessThan(review.body().toString().length() / 5);

        // What is reviewed is recorded.
        String name = "{\"name\":\"Quillmoor Civic Library\"}";
        Answer created = curl.post("/v1/projects", name);
        assertThat(created.status()).isEqualTo(201);
        String project = created.location();
        assertThat(project).isEqualTo("/v1/projects/" + created.text("/projectId"));
        String first = revision("Issued for review", issued);

        assertProblem(curl.post(project + "/revisions", first), 428, "precondition-required");
        Answer one =
                curl.post(
                        project + "/revisions",
                        first,
                        "If-None-Match: *",
                        "Idempotency-Key: first-issue");
        assertThat(one.status()).as(one.body().toString()).isEqualTo(201);
        assertThat(one.location()).isEqualTo(project + "/revisions/1");
        assertThat(one.text("/number")).isEqualTo("1");
        assertThat(one.text("/verdict")).isEqualTo("EXCEEDED");

        // Sent again it is the same revision; something else under its key is refused.
        Answer again =
                curl.post(
                        project + "/revisions",
                        first,
                        "If-None-Match: *",
                        "Idempotency-Key: first-issue");
        assertThat(again).isEqualTo(one);
        Answer reused =
                curl.post(
                        project + "/revisions",
                        revision("Issued for review, again", issued),
                        "If-Match: " + one.etag(),
                        "Idempotency-Key: first-issue");
        assertThat(reused.status()).isEqualTo(422);
        assertThat(reused.text("/detail")).contains("Idempotency-Key");

        // Nothing that is recorded is changed or taken away.
        for (String method : new String[] {"PUT", "PATCH", "DELETE"}) {
            assertProblem(curl.send(method, one.location(), first), 405, "method-not-allowed");
            assertProblem(curl.send(method, project, name), 405, "method-not-allowed");
        }

        // The review said itself what would do.
        applyTheRemedies(weak);

        // The second issue does it, and says what holds the glass of N-203.
        String second =
                revision(
                        "Corner mullions of level 7 strengthened; retention of N-203 called out",
                        demo(2));
        assertProblem(
                curl.post(project + "/revisions", second, "If-None-Match: *"),
                412,
                "precondition-failed");
        Answer two = curl.post(project + "/revisions", second, "If-Match: " + one.etag());
        assertThat(two.status()).as(two.body().toString()).isEqualTo(201);
        assertThat(two.text("/previousHash")).isEqualTo(one.text("/hash"));
        assertProblem(
                curl.post(project + "/revisions", second, "If-Match: " + one.etag()),
                412,
                "precondition-failed");

        // What is recorded is the document as posted, and what the review answered.
        Answer read = curl.get(two.location());
        assertThat(read.etag()).isEqualTo(two.etag());
        assertThat(read.at("/document").equals(SAME, Curl.JSON.readTree(demo(2))))
                .as("the document as posted, but for 1.0 that is written 1")
                .isTrue();
        assertThat(read.text("/author")).isEqualTo("project engineer");
        assertThat(verdicts(curl.get(one.location()).at("/result"))).isEqualTo(verdicts(review));

        compareThem(project);

        // The chain is whole, and so it is for whoever kept its end.
        Answer checkpoint = curl.get(project + "/checkpoint");
        assertThat(checkpoint.text("/size")).isEqualTo("2");
        assertThat(checkpoint.text("/headHash")).isEqualTo(two.text("/hash"));
        assertIntact(curl.get(project + "/verification"));
        assertIntact(curl.get(held(project, 2, two.text("/hash"))));
        assertIntact(curl.get(held(project, 1, one.text("/hash"))));
        assertThat(curl.get(held(project, 2, one.text("/hash"))).at("/intact").asBoolean())
                .as("another chain's end")
                .isFalse();

        // Whoever downloads it needs no service to see the same.
        Path export = Files.createTempFile("export", ".ndjson");
        Files.writeString(export, curl.download(project + "/export"));
        ExportVerifier.Finding found = ExportVerifier.launch(export, "2", two.text("/hash"));
        assertThat(found.code()).as(found.output()).isZero();
        assertThat(found.output()).startsWith("intact: 2 revisions, head " + two.text("/hash"));
        Files.delete(export);

        followTheWeakMullion(project);
    }

    /** When did it fail, who recorded it and why, what ended it. */
    private void followTheWeakMullion(String project) {
        Answer history = curl.get(project + "/history?bay=N-701&item=" + WEAK + "&check=framing");
        assertThat(history.at("/items").size()).isEqualTo(2);
        assertThat(history.text("/firstExceeded/number")).isEqualTo("1");
        assertThat(history.text("/firstExceeded/reason")).isEqualTo("Issued for review");
        assertThat(history.text("/firstExceeded/author")).isEqualTo("project engineer");
        assertThat(history.at("/exceeded").size()).isEqualTo(1);
        assertThat(history.at("/exceeded/0/to").asInt()).isEqualTo(1);
        assertThat(history.text("/items/1/verdict")).isEqualTo("SATISFIED");
        assertThat(history.at("/items/1/inputsChanged"))
                .extracting(change -> change.path("pointer").asString())
                .contains("/section/secondMomentOfArea", "/section/sectionModulus");
    }

    @Test
    void everyItemOfAReviewIsItsCheckOnTheInputsThatItShows() throws IOException {
        int replayed = 0;
        for (int issue = 1; issue <= 2; issue++) {
            Answer review = curl.post("/v1/reviews", demo(issue));
            for (JsonNode bay : review.at("/bays")) {
                for (JsonNode item : bay.path("items")) {
                    String check = item.path("check").asString();
                    String address = ADDRESSES.get(check);
                    if (item.path("id").asString().endsWith("/anchorage")) {
                        address = "anchorage-movement";
                    }
                    if (address != null && item.path("inputs").isObject()) {
                        replay(item, address);
                        replayed++;
                    }
                }
            }
        }
        // of each issue: 31 lites with their blocks, 28 members in the wind, 9 under dead load,
        // and the movement and the seals of 5 bays
        assertThat(replayed).isEqualTo(2 * (31 + 31 + 28 + 9 + 5 + 5));
    }

    private void replay(JsonNode item, String address) {
        Answer alone = curl.post("/v1/checks/" + address, item.path("inputs").toString());
        String id = item.path("id").asString() + " " + address;
        assertThat(alone.status()).as("%s: %s", id, alone.body()).isEqualTo(200);
        assertThat(alone.text("/verdict")).as(id).isEqualTo(item.path("verdict").asString());
        JsonNode utilization = item.path("utilization");
        if (utilization.isNull()) {
            assertThat(alone.at("/utilization").isNull()).as(id).isTrue();
        } else {
            // reported quantities have six digits
            assertThat(alone.at("/utilization").asDouble())
                    .as(id)
                    .isCloseTo(utilization.asDouble(), within(1e-4));
        }
    }

    /** ASCE/SEI 7-16, 26.10: q = 0.00256 Kz Kzt Kd Ke V2, from memory. */
    private void checkTheWind() {
        Answer wind =
                curl.post(
                        "/v1/checks/wind-pressure?units=US",
                        """
                        {"standard":"ASCE_7_16","basicWindSpeed":"120 mph","exposureCategory":"B",
                         "meanRoofHeight":"160 ft","leastHorizontalDimension":"100 ft",
                         "roofSlope":"0 deg","enclosureClassification":"ENCLOSED",
                         "groundElevation":"0 ft","topographicFactor":1.0,"designBasis":"STRENGTH",
                         "components":[{"id":"N-03 mullion","span":"13 ft","tributaryWidth":"5 ft",
                                        "height":"155 ft"}]}""");
        assertThat(wind.status()).isEqualTo(200);
        double kz = 2.01 * Math.pow(160 / 1200.0, 2 / 7.0);
        assertThat(wind.at("/velocityPressureAtRoof/value").asDouble())
                .isCloseTo(0.00256 * kz * 0.85 * 120 * 120, within(0.05));
        assertThat(wind.at("/zoneWidth/value").asDouble()).isCloseTo(10, within(1e-6));
        assertThat(wind.text("/components/0/zones/1/zone")).isEqualTo("5");
    }

    /** 1200 x 1500 mm, 6 mm annealed, 3 s: about 2.5 kPa (ASTM E1300's chart, from memory). */
    private void checkALite() {
        Answer glass =
                curl.post(
                        "/v1/checks/glass",
                        """
                        {"practice":"ASTM_E1300","width":"1200 mm","height":"1500 mm",
                         "supportedEdges":"FOUR",
                         "glass":{"panes":[{"nominalThickness":"6 mm","heatTreatment":"ANNEALED"}],
                                  "cavities":[]},
                         "load":{"positive":"1.8 kPa","negative":"-1.8 kPa","duration":"3 s",
                                 "basis":"ALLOWABLE_STRESS"},
                         "breakageProbability":0.008}""");
        assertThat(glass.text("/verdict")).as(glass.body().toString()).isEqualTo("SATISFIED");
        assertThat(glass.at("/loadResistance/value").asDouble()).isCloseTo(2.5, within(0.15));
    }

    /** Five w L4 over 384 EI against L/175: a mullion that is too soft, by hand. */
    private void checkAMullion() {
        Answer framing =
                curl.post(
                        "/v1/checks/framing?units=US",
                        """
                        {"axis":"WIND","supports":["0 ft","13 ft"],"hinges":[],"length":"13 ft",
                         "tributaryWidth":"5 ft",
                         "section":{"secondMomentOfArea":"6.5 in4","sectionModulus":"2.6 in3",
                                    "elasticModulus":"10100 ksi","allowableBendingStress":"15.2 ksi"},
                         "load":{"positive":"30 psf","negative":"-35 psf",
                                 "basis":"ALLOWABLE_STRESS"}}""");
        double inches = 13 * 12;
        double deflection = 5 * (35 * 5 / 12.0) * Math.pow(inches, 4) / (384 * 10_100_000.0 * 6.5);
        assertThat(framing.text("/verdict")).isEqualTo("EXCEEDED");
        assertThat(Math.abs(framing.at("/maxDeflection/value").asDouble()))
                .isCloseTo(deflection, within(1e-4));
        assertThat(framing.at("/utilization").asDouble())
                .isCloseTo(deflection / (inches / 175), within(1e-4));
    }

    /** Alpha L dT of the 14 ft between two dead-load anchors. */
    private void checkTheMovement() {
        Answer movement =
                curl.post(
                        "/v1/checks/anchorage-movement?units=US",
                        """
                        {"anchors":[
                           {"id":"L2","elevation":"14 ft","role":"DEAD_LOAD","slabLiveLoadDeflection":"0.25 in"},
                           {"id":"L3","elevation":"28 ft","role":"DEAD_LOAD","slabLiveLoadDeflection":"0.25 in"}],
                         "stackJoints":[{"elevation":"27.75 ft","nominalWidth":"1.5 in",
                                         "sealantMovementCapability":0.5}],
                         "material":"ALUMINUM",
                         "temperature":{"installed":"60 degF","minimum":"0 degF","maximum":"180 degF"},
                         "erectionTolerance":"0.125 in","columnShortening":"0 in",
                         "interstoryDrift":"0 in"}""");
        assertThat(movement.status()).as(movement.body().toString()).isEqualTo(200);
        assertThat(movement.at("/thermalMovement/value").asDouble())
                .isCloseTo(13.1e-6 * 14 * 12 * 180, within(1e-4));
    }

    /** A large lite on a soft horizontal: quarter points bend it too much, eighth points do. */
    private void checkTheSettingBlocks() {
        Answer blocks =
                curl.post(
                        "/v1/checks/setting-blocks?units=US",
                        """
                        {"width":"10 ft","height":"8 ft","glassWeight":"520 lb",
                         "support":{"kind":"MEMBER","span":"10 ft","secondMomentOfArea":"6.2 in4",
                                    "elasticModulus":"10100 ksi"},
                         "below":{"kind":"FIXED_LITE","edgeClearance":"0.375 in","bite":"0.5 in"}}""");
        assertThat(blocks.status()).as(blocks.body().toString()).isEqualTo(200);
        assertThat(blocks.text("/recommended/point")).isEqualTo("EIGHTH");
        double span = 120;
        double from = 15;
        assertThat(blocks.at("/recommended/memberDeflection/value").asDouble())
                .isCloseTo(
                        260 * from * (3 * span * span - 4 * from * from) / (24 * 10_100_000 * 6.2),
                        within(1e-4));
        assertThat(blocks.at("/shopDrawingNote/required").asBoolean()).isTrue();
    }

    /** A fifth of 40 psf; and every joint has its place in the order. */
    private void checkTheSeals() {
        Answer seals =
                curl.post(
                        "/v1/checks/internal-seals?units=US",
                        """
                        {"drainage":"PRESSURE_EQUALIZED","columns":["5 ft","5 ft"],
                         "rows":["3 ft","8 ft","2 ft"],"splices":[],
                         "bead":{"width":"0.25 in","depth":"0.25 in"},"pressurePlateLength":"10 ft",
                         "load":{"positive":"40 psf","negative":"-45 psf"}}""");
        assertThat(seals.status()).as(seals.body().toString()).isEqualTo(200);
        assertThat(seals.at("/waterTestPressure/value").asDouble()).isCloseTo(8, within(1e-4));
        int step = 0;
        for (JsonNode joint : seals.at("/joints")) {
            assertThat(joint.path("step").asInt()).isGreaterThanOrEqualTo(step);
            step = joint.path("step").asInt();
        }
        assertThat(step).isPositive();
    }

    private void applyTheRemedies(JsonNode weak) {
        JsonNode remedies = weak.at("/result/remedies");
        assertThat(remedies.size()).isPositive();
        for (JsonNode remedy : remedies) {
            ObjectNode inputs = (ObjectNode) weak.path("inputs").deepCopy();
            for (JsonNode change : remedy.path("changes")) {
                JsonPointer pointer = JsonPointer.compile(change.path("pointer").asString());
                ((ObjectNode) inputs.at(pointer.head()))
                        .set(pointer.last().getMatchingProperty(), change.path("to"));
            }
            Answer changed = curl.post("/v1/checks/framing", inputs.toString());
            assertThat(changed.text("/verdict"))
                    .as(remedy.path("text").asString())
                    .isEqualTo("SATISFIED");
            assertThat(changed.at("/utilization").asDouble())
                    .isCloseTo(remedy.path("utilization").asDouble(), within(1e-4));
        }
    }

    private void compareThem(String project) {
        Answer comparison = curl.get(project + "/comparisons?base=1&head=2");
        Map<String, JsonNode> inputs = new LinkedHashMap<>();
        comparison.at("/inputs").forEach(c -> inputs.put(c.path("pointer").asString(), c));
        assertThat(inputs).containsOnlyKeys("/bays/2/retention", "/bays/3/mullion/section");
        assertThat(inputs.get("/bays/3/mullion/section"))
                .isEqualTo(
                        Curl.JSON.readTree(
                                """
                                {"item":"N-701/mullion","pointer":"/bays/3/mullion/section",
                                 "from":"V1","to":"V2"}"""));
        assertThat(inputs.get("/bays/2/retention"))
                .isEqualTo(
                        Curl.JSON.readTree(
                                """
                                {"item":"N-203/retention","pointer":"/bays/2/retention","from":null,
                                 "to":{"kind":"PRESSURE_PLATE","fastenerSpacing":"9 in",
                                       "allowableFastenerTension":"320 lbf"}}"""));
        Map<String, String> verdicts = new TreeMap<>();
        for (JsonNode moved : comparison.at("/verdicts")) {
            String from = moved.path("from").asString();
            String to = moved.path("to").asString();
            if (!from.equals(to)) {
                verdicts.put(moved.path("item").asString(), from + " to " + to);
            }
        }
        assertThat(verdicts)
                .isEqualTo(
                        Map.of(
                                WEAK,
                                "EXCEEDED to SATISFIED",
                                "N-203/retention",
                                "UNDETERMINED to SATISFIED"));
        assertThat(comparison.at("/engineChanged").asBoolean()).isFalse();
    }

    private static String held(String project, int size, String hash) {
        return project + "/verification?size=" + size + "&headHash=" + hash;
    }

    private static void assertIntact(Answer verification) {
        assertThat(verification.status()).isEqualTo(200);
        assertThat(verification.at("/intact").asBoolean())
                .as(verification.body().toString())
                .isTrue();
    }

    private static void assertProblem(Answer answer, int status, String type) {
        assertThat(answer.status()).as(answer.body().toString()).isEqualTo(status);
        assertThat(answer.text("/type")).isEqualTo("/problems/" + type);
        assertThat(answer.text("/detail")).isNotBlank();
    }

    private static JsonNode item(Answer review, String id) {
        for (JsonNode bay : review.at("/bays")) {
            for (JsonNode item : bay.path("items")) {
                if (item.path("id").asString().equals(id)) {
                    return item;
                }
            }
        }
        throw new AssertionError("no item " + id);
    }

    private static JsonNode governing(Answer review, String check) {
        for (JsonNode governing : review.at("/governing")) {
            if (governing.path("check").asString().equals(check)) {
                return governing;
            }
        }
        throw new AssertionError("no governing item of " + check);
    }

    private static Map<String, String> verdicts(Answer review) {
        return verdicts(review.body());
    }

    private static Map<String, String> verdicts(JsonNode review) {
        Map<String, String> verdicts = new TreeMap<>();
        for (JsonNode bay : review.path("bays")) {
            for (JsonNode item : bay.path("items")) {
                verdicts.put(
                        item.path("id").asString() + " " + item.path("check").asString(),
                        item.path("verdict").asString()
                                + " "
                                + item.path("utilization").toString());
            }
        }
        return verdicts;
    }

    private static String revision(String reason, String document) {
        return """
        {"author":"project engineer","reason":"%s","document":%s}"""
                .formatted(reason, document);
    }

    private static String demo(int issue) throws IOException {
        return Files.readString(Path.of("demo-seed", "quillmoor-library-" + issue + ".json"));
    }
}
