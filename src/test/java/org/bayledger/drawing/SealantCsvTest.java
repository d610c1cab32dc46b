package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.StrictJson;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealsRequest;
import org.junit.jupiter.api.Test;

/** The take-off of sealant as CSV. */
class SealantCsvTest {

    private static SealsRequest request(String without) throws IOException {
        byte[] json =
                Files.readAllBytes(
                        Path.of("src/main/resources/contract/takeOffSealant.request.json"));
        Map<?, ?> tree = (Map<?, ?>) StrictJson.read(json);
        tree.remove(without);
        return Binder.bind(tree, SealsRequest.class);
    }

    private static List<String> lines(SealsRequest request, UnitSystem units) {
        byte[] csv = new SealantTakeOffEndpoint().asCsv(request, units);
        return new String(csv, StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void aLineEachKindOfJointAndEachSealant() throws IOException {
        SealsRequest request = request("nothing");
        List<String> lines = lines(request, UnitSystem.SI);
        assertThat(lines.get(0))
                .isEqualTo(
                        "step,joint,count,length (m),bead width (mm),bead depth (mm),sealant,name,"
                                + "in place (L),with waste (L),cartridges,or sausages");
        // 24 corners of 4.5 in: 2.7432 m at 36 mm2 = 0.0987552 L, with 10 % 0.108631 L
        assertThat(lines.get(1))
                .isEqualTo("1,FRAME_CORNER,24,2.7432,6,6,INSIDE,,0.0987552,0.108631,,");
        assertThat(lines).anyMatch(line -> line.startsWith("9,UNIT_VERTICAL,6,21.6,12,6,GASKETS,"));
        assertThat(lines.get(lines.size() - 2))
                .startsWith(",TOTAL,,,,,INSIDE,small-joint sealant,");
        // sill and head of 6 m at 72 mm2 = 0.864 L, with 10 % 0.9504 L
        assertThat(lines.get(lines.size() - 1))
                .isEqualTo(",TOTAL,,,,,PERIMETER,weather sealant,0.864,0.9504,4,2");
        assertThat(lines(request, UnitSystem.US).get(0)).contains("length (ft)", "in place (in3)");
        assertThat(lines).allMatch(line -> line.chars().filter(c -> c == ',').count() == 11);
    }

    /** A table that leaves a kind of joint out in silence would be taken for the whole. */
    @Test
    void whatIsNotCountedStandsInTheTable() throws IOException {
        SealsRequest request = request("fastenersPerHorizontalEnd");
        assertThat(lines(request, UnitSystem.SI)).contains(",FASTENER_HEAD,not counted,,,,,,,,,");
        SealantTakeOffResult result =
                new SealantTakeOffEndpoint().takeOff(request, UnitSystem.SI).body();
        assertThat(result.notCounted()).containsExactly(JointType.FASTENER_HEAD);
        assertThat(result.findings()).extracting("code").contains("JOINTS_NOT_COUNTED");
        assertThat(result.cautions()).isNotEmpty();
    }

    /** What callers name must not run where the table is opened; numbers stay numbers. */
    @Test
    void aNameIsNoFormula() throws IOException {
        byte[] json =
                Files.readAllBytes(
                        Path.of("src/main/resources/contract/takeOffSealant.request.json"));
        String named =
                new String(json, StandardCharsets.UTF_8)
                        .replace("small-joint sealant", "=HYPERLINK(A1)");
        Object tree = StrictJson.read(named.getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> Binder.bind(tree, SealsRequest.class))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("/sealant/name: must have 1 to 80 letters");
        // whichever name gets through all the same
        List<String> cells =
                List.of("=1+1", "@A1", "+A1", "-A1", "\t=1", "-0.35", "+3.2 psf", "1E-7", "a=b");
        byte[] csv = CsvText.write(List.of("cell"), cells.stream().map(List::of).toList());
        assertThat(new String(csv, StandardCharsets.UTF_8).lines().skip(1))
                .containsExactly(
                        "'=1+1",
                        "'@A1",
                        "'+A1",
                        "'-A1",
                        "'\t=1",
                        "-0.35",
                        "+3.2 psf",
                        "1E-7",
                        "a=b");
    }
}
