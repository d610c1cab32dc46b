package org.bayledger.review;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bays from files of ISO 16739 that the test writes itself, so that every size is known. */
class IfcImportTest {

    /**
     * A curtain wall as an exporter writes it: plates are extruded rectangles, mullions 60 mm wide
     * stand on the lines of the grid, glass is 30 mm thick and set 20 mm into them.
     */
    private static final class FileOfWalls {

        private final StringBuilder data = new StringBuilder();
        private final double perMetre;
        private int next = 100;

        FileOfWalls(double perMetre, String unit) {
            this.perMetre = perMetre;
            data.append("#1=IFCPROJECT('p',$,'Library \\X2\\00E9\\X0\\ ''A''',$,$,$,$,$,#2);\n")
                    .append("#2=IFCUNITASSIGNMENT((#3));\n")
                    .append(unit)
                    .append("#5=IFCDIRECTION((0.,0.,1.));\n");
        }

        static FileOfWalls inMillimetres() {
            return new FileOfWalls(1000, "#3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);\n");
        }

        static FileOfWalls inFeet() {
            return new FileOfWalls(
                    1 / 0.3048,
                    """
                    #3=IFCCONVERSIONBASEDUNIT(#4,.LENGTHUNIT.,'FOOT',#6);
                    #4=IFCDIMENSIONALEXPONENTS(1,0,0,0,0,0,0);
                    #6=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#7);
                    #7=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
                    """);
        }

        /** A wall whose lower left corner stands at a place, turned about the vertical. */
        FileOfWalls wall(
                String name,
                double x,
                double y,
                double z,
                double degrees,
                double[] columns,
                double[] rows) {
            int placement = placement(x, y, z, degrees, 0);
            int wall =
                    add(
                            "IFCCURTAINWALL('%s',$,'%s',$,$,#%d,$,$,$)"
                                    .formatted("g" + name, name, placement));
            List<Integer> parts = new ArrayList<>();
            double across = 0;
            for (int i = 0; i <= columns.length; i++) {
                parts.add(part("IFCMEMBER", placement, across - 0.03, 0, 0.06, sum(rows), 0.15));
                double up = 0;
                for (int j = 0; i < columns.length && j < rows.length; j++) {
                    parts.add(
                            part(
                                    "IFCPLATE",
                                    placement,
                                    across + 0.01,
                                    up + 0.01,
                                    columns[i] - 0.02,
                                    rows[j] - 0.02,
                                    0.03));
                    up += rows[j];
                }
                across += i < columns.length ? columns[i] : 0;
            }
            double up = 0;
            for (int j = 0; j <= rows.length; j++) {
                parts.add(part("IFCMEMBER", placement, 0, up - 0.03, sum(columns), 0.06, 0.15));
                up += j < rows.length ? rows[j] : 0;
            }
            add(
                    "IFCRELAGGREGATES('r%s',$,$,$,#%d,(%s))"
                            .formatted(
                                    name,
                                    wall,
                                    String.join(
                                            ",", parts.stream().map(part -> "#" + part).toList())));
            return this;
        }

        /** A body of an extruded rectangle whose corner stands in the wall's plane. */
        private int part(
                String type, int in, double left, double bottom, double w, double h, double deep) {
            int placement = placement(left + w / 2, 0, bottom, 0, in);
            int profile =
                    add(
                            "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s)"
                                    .formatted(length(w), length(deep)));
            int solid = add("IFCEXTRUDEDAREASOLID(#%d,$,#5,%s)".formatted(profile, length(h)));
            int shape = add("IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#%d))".formatted(solid));
            int product = add("IFCPRODUCTDEFINITIONSHAPE($,$,(#%d))".formatted(shape));
            return add("%s('x%d',$,$,$,$,#%d,#%d,$,$)".formatted(type, next, placement, product));
        }

        private int placement(double x, double y, double z, double degrees, int in) {
            int point =
                    add("IFCCARTESIANPOINT((%s,%s,%s))".formatted(length(x), length(y), length(z)));
            int direction =
                    add(
                            "IFCDIRECTION((%s,%s,0.))"
                                    .formatted(
                                            real(Math.cos(Math.toRadians(degrees))),
                                            real(Math.sin(Math.toRadians(degrees)))));
            int axes = add("IFCAXIS2PLACEMENT3D(#%d,#5,#%d)".formatted(point, direction));
            return add("IFCLOCALPLACEMENT(%s,#%d)".formatted(in == 0 ? "$" : "#" + in, axes));
        }

        private String length(double metres) {
            return real(metres * perMetre);
        }

        private static String real(double value) {
            return String.format(Locale.ROOT, "%.9f", value);
        }

        private static double sum(double[] values) {
            return Arrays.stream(values).sum();
        }

        private int add(String instance) {
            int id = next++;
            data.append('#').append(id).append('=').append(instance).append(";\n");
            return id;
        }

        String text() {
            return "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\n"
                    + "FILE_NAME('wall.ifc','2026-01-01T00:00:00',(''),(''),'','','');\n"
                    + "FILE_SCHEMA(('IFC4'));\nENDSEC;\n/* the instances */\nDATA;\n"
                    + data
                    + "ENDSEC;\nEND-ISO-10303-21;\n";
        }

        IfcImportResult read() {
            return IfcImport.run(text().getBytes(ISO_8859_1));
        }
    }

    private static final double[] COLUMNS = {1.5, 1.2, 1.5};
    private static final double[] ROWS = {0.9, 2.4};

    @ParameterizedTest
    @ValueSource(doubles = {0, 30, 90, 137})
    void gridIsTheOneThatWasBuiltWhicheverWayTheWallFaces(double degrees) {
        IfcImportResult read =
                FileOfWalls.inMillimetres()
                        .wall("N-03", 12, -7, 4.2, degrees, COLUMNS, ROWS)
                        .read();
        assertThat(document(read).get("name")).isEqualTo("Library \u00e9 'A'");
        assertThat(document(read).get("units")).isEqualTo("SI");
        Map<?, ?> bay = (Map<?, ?>) ((List<?>) document(read).get("bays")).get(0);
        // beyond a right angle the wall's own x axis runs against the file's
        List<String> columns = List.of("1500 mm", "1200 mm", "1500 mm");
        assertThat(bay.get("id")).isEqualTo("N-03");
        assertThat(bay.get("columns")).isEqualTo(columns);
        assertThat(bay.get("rows")).isEqualTo(List.of("900 mm", "2400 mm"));
        assertThat(bay.get("sill")).isEqualTo("4200 mm");
        assertThat(bay.get("offset")).isEqualTo("0 mm");
        assertThat(read.bays())
                .containsExactly(new IfcImportResult.ImportedBay("N-03", "gN-03", "N-03", 6));
        assertThat(read.lacking())
                .extracting(IfcImportResult.Lacking::pointer)
                .contains("/site", "/glassTypes", "/bays/0/glassType", "/elevations/0");
        assertThat(read.lacking()).anyMatch(lacking -> lacking.text().contains("30 mm thick"));
    }

    @Test
    void feetAreFeet() {
        IfcImportResult read =
                FileOfWalls.inFeet()
                        .wall("F", 0, 0, 0, 0, new double[] {1.524, 1.524}, new double[] {3.048})
                        .read();
        Map<?, ?> bay = (Map<?, ?>) ((List<?>) document(read).get("bays")).get(0);
        assertThat(bay.get("columns")).isEqualTo(List.of("1524 mm", "1524 mm"));
        assertThat(bay.get("rows")).isEqualTo(List.of("3048 mm"));
    }

    @Test
    void wallsInOnePlaneAreOneElevation() {
        IfcImportResult read =
                FileOfWalls.inMillimetres()
                        .wall("left", 0, 0, 0, 0, COLUMNS, ROWS)
                        .wall("right", 6, 0, 3.3, 0, COLUMNS, ROWS)
                        .wall("round the corner", 0, 5, 0, 90, COLUMNS, ROWS)
                        .read();
        List<?> elevations = (List<?>) document(read).get("elevations");
        assertThat(elevations).hasSize(2);
        assertThat(elevations.get(0))
                .isEqualTo(
                        Map.of(
                                "id", "E1",
                                "width", "10200 mm",
                                "height", "6600 mm",
                                "base", "0 mm"));
        Map<?, ?> right = (Map<?, ?>) ((List<?>) document(read).get("bays")).get(1);
        assertThat(right.get("offset")).isEqualTo("6000 mm");
        assertThat(right.get("sill")).isEqualTo("3300 mm");
    }

    @Test
    void theDocumentIsReviewedOnceWhatItLacksIsAdded() {
        IfcImportResult read =
                FileOfWalls.inMillimetres().wall("N-03", 0, 0, 0, 0, COLUMNS, ROWS).read();
        Map<String, Object> document = new LinkedHashMap<>();
        document(read).forEach((name, value) -> document.put(String.valueOf(name), value));
        document.put(
                "site",
                Map.of(
                        "standard", "ASCE_7_16",
                        "basicWindSpeed", "115 mph",
                        "exposureCategory", "B",
                        "meanRoofHeight", "30 m",
                        "leastHorizontalDimension", "20 m",
                        "roofSlope", "0 deg",
                        "enclosureClassification", "ENCLOSED",
                        "groundElevation", "0 m",
                        "topographicFactor", new BigDecimal(1),
                        "designBasis", "STRENGTH"));
        Map<String, Object> elevation = new LinkedHashMap<>();
        ((Map<?, ?>) ((List<?>) document(read).get("elevations")).get(0))
                .forEach((name, value) -> elevation.put(String.valueOf(name), value));
        elevation.put("cornerAtLeft", true);
        elevation.put("cornerAtRight", true);
        document.put("elevations", List.of(elevation));
        assertThat(Binder.bind(document, ReviewDocument.class).bays().get(0).columns())
                .containsExactly(1.5, 1.2, 1.5);
    }

    @Test
    void aWallWithoutAGridIsSkippedWithTheReason() {
        String one = FileOfWalls.inMillimetres().wall("A", 0, 0, 0, 0, COLUMNS, ROWS).text();
        // one plate taken out of the relation
        String broken = one.replaceFirst("IFCPLATE", "IFCBUILDINGELEMENTPROXY");
        assertThatThrownBy(() -> IfcImport.run(broken.getBytes(ISO_8859_1)))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("5 plates do not fill a grid of 3 columns and 2 rows");
    }

    @Test
    void whatIsNoSuchFileIsRefusedWithTheLine() {
        String good = FileOfWalls.inMillimetres().wall("A", 0, 0, 0, 0, COLUMNS, ROWS).text();
        refused(
                good.replace("'IFC4'", "'IFC2X3'"),
                "is a file of schema IFC2X3; export it as IFC4");
        refused(good.replace("END-ISO-10303-21;", ""), "'END-ISO-10303-21;' was expected");
        refused(good + "x", "nothing may follow");
        refused(good.replaceFirst("#5=", "#3="), "stands in the file twice");
        refused(good.replaceFirst("\\(0\\.,0\\.,1\\.\\)", "(0.,0,,1.)"), "a value was expected");
        refused(
                good.replaceFirst("IFCUNITASSIGNMENT\\(\\(#3\\)\\)", "IFCUNITASSIGNMENT(())"),
                "unit of length");
        refused(good.replace("IFCCURTAINWALL", "IFCWALL"), "no IfcCurtainWall");
        refused("", "line 1");
        refused("ISO-10303-21;HEADER;A(" + "(".repeat(5000), "nested deeper");
        refused(good.replaceFirst("#2=", "#99999999999="), "instance number");
    }

    private static void refused(String file, String because) {
        assertThatThrownBy(() -> IfcImport.run(file.getBytes(ISO_8859_1)))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining(because);
    }

    private static Map<?, ?> document(IfcImportResult read) {
        return (Map<?, ?>) read.document();
    }
}
