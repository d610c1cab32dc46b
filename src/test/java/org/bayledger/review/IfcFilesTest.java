package org.bayledger.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bayledger.check.FaultsException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Two invented walls, written the ways in which exporters write them (ISO 16739-1:2018), with their
 * dimensions known by hand. What the import can't understand it has to refuse or to skip: a wrong
 * dimension would become a wrong load.
 */
class IfcFilesTest {

    private static final Path FOLDER = Path.of("src", "test", "resources", "ifc");

    /**
     * Millimetres; units in an assembly each, types, mapped and stretched shapes, a turned site.
     */
    private static final String UNITIZED = text("unitized-millimetres.ifc");

    /** Metres; one list of points for all plates, other representations beside the body. */
    private static final String TESSELLATED = text("tessellated-metres.ifc");

    @Test
    void unitsInMillimetres() {
        IfcImportResult read = read(UNITIZED);
        Map<?, ?> document = (Map<?, ?>) read.document();
        assertThat(document.get("name")).isEqualTo("B\u00fcrohaus Ahornstra\u00dfe");
        Map<?, ?> bay = bay(read);
        assertThat(bay.get("id")).isEqualTo("Fassade S\u00fcd:Ebene-2");
        // 1400, 1400, 1100 between the units' joints; the outer lines are those of half verticals
        // of 30 mm, whose middle stands 15 mm inside the units' edges. The site is turned by 30
        // degrees and the wall by 90, so that it runs against x, and toward x its last unit is
        // first
        assertThat(bay.get("columns")).isEqualTo(List.of("1085 mm", "1400 mm", "1385 mm"));
        assertThat(bay.get("rows")).isEqualTo(List.of("985 mm", "2385 mm"));
        // site 12 m + storey 4 m + 15 mm to the middle of the lowest horizontal
        assertThat(bay.get("sill")).isEqualTo("16015 mm");
        assertThat(text(read, "/bays/0/glassType"))
                .contains(
                        "32 mm thick",
                        "Floatglas 8 mm + Argon 16 mm + Floatglas 8 mm as the file says");
        assertThat(text(read, "/bays/0/columns")).isEmpty();
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void tessellatedInMetres() {
        IfcImportResult read = read(TESSELLATED);
        Map<?, ?> bay = bay(read);
        assertThat(bay.get("columns"))
                .isEqualTo(List.of("1350 mm", "1500 mm", "1500 mm", "1350 mm"));
        assertThat(bay.get("rows")).isEqualTo(List.of("600 mm", "2100 mm", "900 mm"));
        assertThat(bay.get("sill")).isEqualTo("450 mm");
        assertThat(text(read, "/bays/0/glassType")).contains("28 mm thick over all");
        assertThat(text(read, "/bays/0/columns")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"IFC4_ADD2_TC1", "IFC4X3", "IFC4X3_ADD2", "ifc4"})
    void schemasThatAreTheSameInWhatIsRead(String schema) {
        assertThat(read(TESSELLATED.replace("'IFC4'", "'" + schema + "'")).bays()).hasSize(1);
    }

    @Test
    void otherSchemasAreRefused() {
        for (String schema : List.of("IFC2X3", "IFC4FUTURE", "CONFIG_CONTROL_DESIGN")) {
            refused(
                    TESSELLATED.replace("'IFC4'", "'" + schema + "'"),
                    "is a file of schema " + schema + "; export it as IFC4");
        }
        refused(TESSELLATED.replace("FILE_SCHEMA(('IFC4'));\n", ""), "does not say its schema");
    }

    /** Letters as they are, and a mark before them, which some programs write. */
    @Test
    void lettersOfUtf8() {
        String plain = UNITIZED.replace("B\\X2\\00FC\\X0\\rohaus", "\u00dcberhang");
        IfcImportResult read = read("\ufeff" + plain);
        assertThat(((Map<?, ?>) read.document()).get("name"))
                .isEqualTo("\u00dcberhang Ahornstra\u00dfe");
        IfcImportResult named =
                read(TESSELLATED.replace("'CW-1'", "'" + "\ud83c\udfe2".repeat(70) + "'"));
        assertThat(bay(named).get("id")).isEqualTo("\ud83c\udfe2".repeat(60));
        IfcImportResult half = read(UNITIZED.replace("\\X2\\00FC\\X0\\rohaus", "\\X2\\D83D\\X0\\"));
        assertThat(((Map<?, ?>) half.document()).get("name")).isEqualTo("B\ufffd Ahornstra\u00dfe");
    }

    @Test
    void bodiesThatAreNotUnderstoodSkipTheWall() {
        refused(
                TESSELLATED.replaceFirst("IFCTRIANGULATEDFACESET\\([^;]*;", "IFCADVANCEDBREP(#1);"),
                "can't be read: a body of kind IFCADVANCEDBREP is not read; export");
        refused(
                TESSELLATED.replaceFirst("'Body','Tess", "'Surface','Tess"),
                "no representation 'Body'");
        String lost = UNITIZED.replaceFirst("('Scheibe',\\$,\\$,#\\d+,)#\\d+", "$1#99999");
        refused(lost, "#99999 is not in the file");
    }

    /**
     * A member that can't be read gives no line; that is said, and the plates still make a grid.
     */
    @Test
    void membersThatAreNotUnderstoodAreSaid() {
        String arcs = TESSELLATED.replaceAll("IFCLINEINDEX\\(\\(1,2,3", "IFCARCINDEX((1,2,3");
        IfcImportResult read = read(arcs);
        // the outer columns now end at the edge of the glass, 12 mm beside the line
        assertThat(bay(read).get("columns"))
                .isEqualTo(List.of("1338 mm", "1500 mm", "1500 mm", "1338 mm"));
        assertThat(text(read, "/bays/0/columns"))
                .contains("stands at its left and right edge", "5 of its members", "with arcs");
    }

    @Test
    void shapesThatMayBeMirroredAreNotGuessedAt() {
        // turned by half a circle, without the second axis
        String turned =
                UNITIZED.replaceFirst(
                        "(IFCCARTESIANTRANSFORMATIONOPERATOR3D)\\(\\$,\\$,(#\\d+),\\$,\\$\\);",
                        "$1(#90001,\\$,$2,\\$,\\$);\n#90001= IFCDIRECTION((-1.,0.,0.));");
        refused(turned, "does not say whether its shape is mirrored");
    }

    @Test
    void aPlateThatIsNoRectangleIsNotTakenForOne() {
        // one upper corner of the first plate, 1326 mm wide, stands 400 mm lower
        refused(
                TESSELLATED
                        .replace("(0.012,-0.014,0.588)", "(0.012,-0.014,0.188)")
                        .replace("(0.012,0.014,0.588)", "(0.012,0.014,0.188)"),
                "is no upright rectangle");
    }

    /** Doors where plates are missing: a whole column of them leaves no other trace in the grid. */
    @Test
    void aColumnOfDoorsIsNoWideMullion() {
        String doors = TESSELLATED;
        for (int plate = 3; plate < 6; plate++) {
            doors = replaceNth(doors, "IFCPLATE(", "IFCDOOR(", 3);
        }
        refused(doors, "between its plates 1 and 2, counted from the left, stand 1524 mm empty");
        refused(doors, "its 3 doors and windows are not read");
    }

    @Test
    void twoPlatesInOnePlaceAreNotTwoLites() {
        // as many plates as places, but the last one has the body of the one before it
        List<String> plates =
                TESSELLATED.lines().filter(line -> line.contains("IFCPLATE(")).toList();
        String last = plates.get(plates.size() - 1);
        String before = plates.get(plates.size() - 3);
        refused(
                TESSELLATED.replace(last, last.replace(shape(last), shape(before))),
                "two of its plates stand in column 4, row 1 of its grid");
    }

    private static String shape(String product) {
        return product.replaceFirst(".*,(#\\d+),\\$,[^,]*$", "$1");
    }

    @Test
    void damagedFilesAreRefusedWithAWord() {
        refused(TESSELLATED.substring(0, TESSELLATED.length() / 2), "STEP) from line");
        String circle =
                TESSELLATED
                        .replaceFirst("IFCLOCALPLACEMENT\\(\\$,", "IFCLOCALPLACEMENT(#90001,")
                        .replace(
                                "DATA;",
                                "DATA;\n#90001=IFCLOCALPLACEMENT(#90002,$);\n"
                                        + "#90002=IFCLOCALPLACEMENT(#90001,$);");
        refused(circle, "a placement that hangs on itself");
        refused(
                TESSELLATED.replaceFirst("\\(3\\.,4\\.,0\\.45\\)", "(3.,1.E300,0.45)"),
                "a length of 1.0E300 m");
        refused(
                TESSELLATED.replaceFirst(
                        "IFCDIRECTION\\(\\(0\\.9[^)]*\\)", "IFCDIRECTION((0.,0.,0.)"),
                "a direction without a direction");
        refused(TESSELLATED.replaceFirst("\\.METRE\\.", ".GRAM."), "unit of length");
    }

    /** Shapes of a hundred shapes of a hundred shapes: a small file must not cost a large one. */
    @Test
    void shapesWithinShapesHaveAnEnd() {
        StringBuilder maps = new StringBuilder();
        for (int level = 0; level < 8; level++) {
            int id = 90_000 + 10 * level;
            String items =
                    IntStream.range(0, 100)
                            .mapToObj(i -> "#" + (id + 12))
                            .collect(Collectors.joining(","));
            maps.append("#" + id + "=IFCREPRESENTATIONMAP($,#" + (id + 1) + ");\n")
                    .append(
                            "#"
                                    + (id + 1)
                                    + "=IFCSHAPEREPRESENTATION($,'Body','',("
                                    + items
                                    + "));\n")
                    .append("#" + (id + 2) + "=IFCMAPPEDITEM(#" + id + ",#90003);\n");
        }
        maps.append("#90003=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#90004,$,$);\n")
                .append("#90004=IFCCARTESIANPOINT((0.,0.,0.));\n")
                .append("#90082=IFCBOUNDINGBOX(#90004,1.,1.,1.);\n");
        String file =
                TESSELLATED.replaceFirst(
                        "IFCTRIANGULATEDFACESET\\([^;]*;",
                        Matcher.quoteReplacement("IFCMAPPEDITEM(#90000,#90003);\n" + maps));
        refused(file, "bodies of more than 4000000 points");
    }

    private static String replaceNth(String text, String what, String with, int nth) {
        int at = -1;
        for (int i = 0; i <= nth; i++) {
            at = text.indexOf(what, at + 1);
        }
        return text.substring(0, at) + with + text.substring(at + what.length());
    }

    private static IfcImportResult read(String file) {
        return IfcImport.run(file.getBytes(UTF_8));
    }

    private static void refused(String file, String because) {
        assertThatThrownBy(() -> read(file))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining(because);
    }

    private static Map<?, ?> bay(IfcImportResult read) {
        return (Map<?, ?>) ((List<?>) ((Map<?, ?>) read.document()).get("bays")).get(0);
    }

    private static String text(IfcImportResult read, String pointer) {
        return read.lacking().stream()
                .filter(lacking -> lacking.pointer().equals(pointer))
                .map(IfcImportResult.Lacking::text)
                .collect(Collectors.joining("; "));
    }

    private static String text(String file) {
        try {
            return Files.readString(FOLDER.resolve(file));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
