package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class SystemSelectionTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final double LB_PER_FT = 0.45359237 / 0.3048;

    private static String example() throws IOException {
        return Files.readString(Path.of("src/main/resources/contract/selectSystem.request.json"));
    }

    private static SelectionResult run(String json) {
        return SystemSelection.run(
                Binder.bind(
                        StrictJson.read(json.getBytes(StandardCharsets.UTF_8)),
                        SelectionRequest.class),
                US);
    }

    /** 100 sections in 50 zones for members of 101 supports in all: 505 000. */
    @Test
    void askingForTooMuchAtOnceIsRefusedBeforeItBegins() throws IOException {
        Map<?, ?> tree = (Map<?, ?>) StrictJson.read(example().getBytes(StandardCharsets.UTF_8));
        Map<?, ?> section = (Map<?, ?>) ((List<?>) tree.get("candidates")).get(0);
        Map<?, ?> zone = (Map<?, ?>) ((List<?>) tree.get("zones")).get(0);
        Map<?, ?> member = (Map<?, ?>) ((List<?>) tree.get("members")).get(0);
        Map<Object, Object> request = new LinkedHashMap<>(tree);
        request.put("candidates", copies(section, "id", 100));
        request.put("zones", copies(zone, "zone", 50));
        List<Map<Object, Object>> members = copies(member, "id", 10);
        request.put("members", members);
        List<String> ten = IntStream.range(0, 10).mapToObj(i -> 12.5 * i + " ft").toList();
        members.forEach(each -> each.put("supports", ten));
        members.forEach(each -> each.put("length", "112.5 ft"));
        assertThat(Binder.bind(request, SelectionRequest.class).members()).hasSize(10);
        List<String> eleven = IntStream.range(0, 11).mapToObj(i -> 12.5 * i + " ft").toList();
        members.get(0).put("supports", eleven);
        members.get(0).put("length", "125 ft");
        assertThatThrownBy(() -> Binder.bind(request, SelectionRequest.class))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused ->
                                assertThat(refused.faults())
                                        .singleElement()
                                        .satisfies(
                                                fault ->
                                                        assertThat(fault.detail())
                                                                .contains("at most 500000")));
    }

    private static List<Map<Object, Object>> copies(Map<?, ?> one, String name, int count) {
        List<Map<Object, Object>> copies = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<Object, Object> copy = new LinkedHashMap<>(one);
            copy.put(name, "x" + i);
            copies.add(copy);
        }
        return copies;
    }

    /**
     * By hand (AISC table of beams, 5 w L^4/(384 E I); L = 150 in, limit 150/175 = 0.857 in). Zone
     * 4, 27 psf x 5 ft = 11.25 lb/in: I needed = 5 x 11.25 x 150^4/(384 x 10.1e6 x 0.857) = 8.57
     * in4: V6 (11.2) passes, V5 (6.5) reaches 1.32. Zone 5, 45 psf: 18.75 lb/in, I needed 14.28
     * in4: only V7 (19.6) passes; V6 with steel has 11.2 + 4.2 x 29 000/10 100 = 23.3 in4 and
     * passes.
     */
    @Test
    void exampleByHand() throws IOException {
        SelectionResult result = run(example());
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        SelectionResult.Zone four = result.zones().get(0);
        assertThat(four.passing())
                .extracting(SelectionResult.Choice::id)
                .containsExactly("V6", "V7");
        SelectionResult.Choice failing = four.others().get(0);
        assertThat(failing.id()).isEqualTo("V5");
        assertThat(failing.verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(failing.utilization()).isCloseTo(8.57 / 6.5, within(0.003));
        assertThat(failing.governs()).isEqualTo(SelectionResult.Limit.DEFLECTION);
        assertThat(failing.requiredSecondMomentOfArea().si() / Math.pow(0.0254, 4))
                .isCloseTo(8.57, within(0.02));
        assertThat(failing.reasons())
                .extracting(Finding::code, Finding::pointer)
                .contains(
                        org.assertj.core.groups.Tuple.tuple(
                                "DEFLECTION_EXCEEDED", "/candidates/2/section"));
        assertThat(result.zones().get(1).passing())
                .extracting(SelectionResult.Choice::id)
                .containsExactly("V7");
        assertThat(result.servesAllZones()).containsExactly("V7");
        assertThat(result.outcome().utilization()).isCloseTo(8.57 / 11.2, within(0.003));
    }

    /** V6 instead of V7 saves 1.1 lb/ft over 2400 ft; with steel it adds 3.4 lb/ft over 400 ft. */
    @Test
    void reinforcementInTheCornersIsWeighed() throws IOException {
        SelectionResult result = run(example());
        assertThat(result.reinforced()).hasSize(1);
        SelectionResult.Reinforced option = result.reinforced().get(0);
        assertThat(option.id()).isEqualTo("V6");
        assertThat(option.zones()).containsExactly("5");
        assertThat(option.savedPerLength().si() / LB_PER_FT).isCloseTo(1.1, within(1e-9));
        assertThat(option.addedPerLength().si() / LB_PER_FT).isCloseTo(3.4, within(1e-9));
        assertThat(option.saved().si() / 0.45359237)
                .isCloseTo(1.1 * 2400 - 3.4 * 400, within(1e-6));
        // V6 alone in zone 4 governs over V6 with steel in zone 5
        assertThat(option.utilization()).isCloseTo(8.57 / 11.2, within(0.003));
        assertThat(result.outcome().findings())
                .filteredOn(finding -> finding.code().equals("REINFORCEMENT_SAVES"))
                .extracting(Finding::text)
                .containsExactly(
                        "V6 with steel in zone 5 saves 1.1 lb/ft in the other zones against V7 and"
                                + " adds 3.4 lb/ft in zone 5: 1280 lb less over all members.");
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .contains("REINFORCEMENT_SAVES", "ONE_SECTION_SERVES_ALL_ZONES");
    }

    /** Where the corner is long, steel costs more than it saves: 1.1 x 2400 < 3.4 x 1200. */
    @Test
    void steelThatCostsMoreThanItSavesIsNotSaidToSave() throws IOException {
        SelectionResult result = run(example().replace("\"400 ft\"", "\"1200 ft\""));
        assertThat(result.reinforced().get(0).saved().si()).isNegative();
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .doesNotContain("REINFORCEMENT_SAVES");
        SelectionResult untold = run(example().replace(", \"memberLength\": \"400 ft\"", ""));
        assertThat(untold.reinforced().get(0).saved()).isNull();
        assertThat(untold.outcome().findings())
                .filteredOn(finding -> finding.code().equals("REINFORCEMENT_SAVES"))
                .extracting(Finding::text)
                .allSatisfy(text -> assertThat(text).contains("memberLength"));
    }

    /**
     * The stiffest is the lightest here, and depth and name break ties; those that fail come with
     * the least loaded first. In zone 5 V5 and V6 fail by 14.28/6.5 and 14.28/11.2.
     */
    @Test
    void lightestComesFirstAndLeastLoadedOfThoseThatFail() throws IOException {
        SelectionResult result = run(example().replace("4.2 lb/ft", "2.9 lb/ft"));
        assertThat(result.zones().get(0).passing())
                .extracting(SelectionResult.Choice::id)
                .containsExactly("V7", "V6");
        assertThat(result.zones().get(1).others())
                .extracting(SelectionResult.Choice::id)
                .containsExactly("V6", "V5");
        assertThat(result.zones().get(1).others().get(0).utilization())
                .isCloseTo(14.28 / 11.2, within(0.003));
        assertThat(result.zones().get(1).others().get(1).utilization())
                .isCloseTo(14.28 / 6.5, within(0.005));
        assertThat(
                        result.zones().get(1).others().get(1).requiredSectionModulus().si()
                                / Math.pow(0.0254, 3))
                .isCloseTo(45 * 5 * 12.5 * 12.5 / 8 * 12 / 15_200, within(1e-6));
        SelectionResult tied = run(example().replace("4.2 lb/ft", "3.1 lb/ft"));
        assertThat(tied.zones().get(0).passing())
                .extracting(SelectionResult.Choice::id)
                .containsExactly("V6", "V7");
        SelectionResult deeper =
                run(example().replace("4.2 lb/ft", "3.1 lb/ft").replace("\"6 in\"", "\"8 in\""));
        assertThat(deeper.zones().get(0).passing())
                .extracting(SelectionResult.Choice::id)
                .containsExactly("V7", "V6");
    }

    @Test
    void whatIsNotKnownOfASectionIsNotAPass() throws IOException {
        SelectionResult result = run(example().replace("\"bucklingCovered\": true, ", ""));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(result.zones()).allSatisfy(zone -> assertThat(zone.passing()).isEmpty());
        assertThat(result.servesAllZones()).isEmpty();
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .contains("NO_SECTION_PROVEN", "NO_SECTION_SERVES_ALL_ZONES");
    }

    @Test
    void aZoneThatNothingServesIsExceeded() throws IOException {
        SelectionResult result = run(example().replace("-45 psf", "-200 psf"));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().utilization()).isGreaterThan(1);
        assertThat(result.outcome().findings())
                .extracting(Finding::code, Finding::pointer)
                .contains(org.assertj.core.groups.Tuple.tuple("NO_SECTION_PASSES", "/zones/1"));
    }

    @Test
    void aMissingSignIsNotAPass() throws IOException {
        SelectionResult result = run(example().replace("\"positive\": \"25 psf\", ", ""));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(result.zones().get(0).others().get(0).reasons())
                .extracting(Finding::pointer)
                .contains("/zones/0/load/positive");
    }

    @Test
    void refusesAllFaultsAtOnce() throws IOException {
        String json =
                example()
                        .replace("\"id\": \"V7\"", "\"id\": \"V6\"")
                        .replace(
                                "\"length\": \"12'-6\\\"\"",
                                "\"length\": \"9 ft\", \"zones\": [\"4\", \"7\"]");
        assertThatThrownBy(() -> run(json))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused ->
                                assertThat(refused.faults())
                                        .extracting(fault -> fault.pointer())
                                        .contains(
                                                "/candidates/1/id",
                                                "/members/0/zones/1",
                                                "/zones/1",
                                                "/members/0/supports"));
    }
}
