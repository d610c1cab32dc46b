package org.bayledger.review;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.bayledger.review.IfcImportResult.ImportedBay;
import org.bayledger.review.IfcImportResult.Lacking;
import org.bayledger.review.IfcImportResult.SkippedWall;

/**
 * Takes bays out of an IFC 4 file (ISO 16739-1:2018): every IfcCurtainWall whose IfcPlates fill a
 * grid in one vertical plane becomes a bay, walls in one plane become one elevation. Everything
 * else that a review needs is named as lacking; nothing is made up.
 */
final class IfcImport {

    private static final int LONGEST_NAME = 60;

    private final Set<String> names = new HashSet<>();
    private final List<ImportedBay> imported = new ArrayList<>();
    private final List<Lacking> lacking = new ArrayList<>();
    private final List<SkippedWall> skipped = new ArrayList<>();

    private final IfcModel model;
    private final IfcLayers layers;

    private IfcImport(IfcModel model) {
        this.model = model;
        this.layers = new IfcLayers(model);
    }

    /**
     * Reads a file.
     *
     * @throws org.bayledger.check.FaultsException where it is none of schema IFC4, or no bay can be
     *     made of it
     */
    static IfcImportResult run(byte[] file) {
        return new IfcImport(new IfcModel(StepReader.read(file))).read();
    }

    private IfcImportResult read() {
        List<StepEntity> found = model.all("IFCCURTAINWALL");
        if (found.isEmpty()) {
            throw IfcModel.refused(
                    "holds no IfcCurtainWall; export the facade as curtain walls with their plates"
                            + " and members");
        }
        Map<Integer, List<StepEntity>> parts = parts();
        IfcShape shape = new IfcShape(model);
        List<IfcWall> walls = new ArrayList<>();
        for (StepEntity wall : found) {
            try {
                walls.add(IfcWall.of(shape, wall, own(wall, parts)));
            } catch (IllegalArgumentException notABay) {
                skipped.add(
                        new SkippedWall(
                                wall.text(0),
                                plain(wall.text(2)),
                                String.valueOf(notABay.getMessage())));
            }
        }
        if (walls.isEmpty()) {
            throw IfcModel.refused(
                    "holds no IfcCurtainWall that a bay can be made of; the first one ("
                            + found.get(0)
                            + "): "
                            + skipped.get(0).reason());
        }
        return new IfcImportResult(document(walls), imported, lacking, skipped);
    }

    /** Parts of each whole, by its number. */
    private Map<Integer, List<StepEntity>> parts() {
        Map<Integer, List<StepEntity>> parts = new HashMap<>();
        for (StepEntity relation : model.all("IFCRELAGGREGATES", "IFCRELNESTS")) {
            for (StepEntity whole : model.found(Arrays.asList(relation.argument(4)))) {
                parts.computeIfAbsent(whole.id(), unused -> new ArrayList<>())
                        .addAll(model.found(relation.list(5)));
            }
        }
        return parts;
    }

    /** Parts of a wall, and of its units; another curtain wall inside is a wall of its own. */
    private static List<StepEntity> own(StepEntity wall, Map<Integer, List<StepEntity>> parts) {
        List<StepEntity> own = new ArrayList<>(List.of(wall));
        Set<Integer> seen = new HashSet<>(Set.of(wall.id()));
        for (int i = 0; i < own.size(); i++) {
            for (StepEntity part : parts.getOrDefault(own.get(i).id(), List.of())) {
                if (!part.type().equals("IFCCURTAINWALL") && seen.add(part.id())) {
                    own.add(part);
                }
            }
        }
        return own.subList(1, own.size());
    }

    private Map<String, Object> document(List<IfcWall> walls) {
        Map<String, Object> document = new LinkedHashMap<>();
        String name = plain(model.projectName());
        document.put("name", name.isEmpty() ? "Imported" : name);
        document.put("units", "SI");
        List<Object> elevations = new ArrayList<>();
        List<Object> bays = new ArrayList<>();
        List<List<IfcWall>> faces = faces(walls);
        for (int i = 0; i < faces.size(); i++) {
            String face = "E" + (i + 1);
            elevations.add(elevation(face, faces.get(i)));
            lacking.add(
                    new Lacking(
                            "/elevations/" + i,
                            "which of its ends are corners of the building, and the whole width and"
                                    + " height of the face: the file gives the extents of its"
                                    + " curtain walls; and whether it is seen from outside: columns"
                                    + " run toward positive x of the file, turn them round where"
                                    + " that is from right to left"));
            double left = left(faces.get(i));
            for (IfcWall wall : faces.get(i)) {
                bays.add(bay(face, left, wall, bays.size()));
            }
        }
        document.put("elevations", elevations);
        document.put("bays", bays);
        lacking.add(
                new Lacking(
                        "/site",
                        "the site: standard, wind speed, exposure, mean roof height and what goes"
                                + " with them"));
        lacking.add(new Lacking("/glassTypes", "the build-ups of the glass"));
        lacking.add(
                new Lacking(
                        "/sections", "the sections of verticals and horizontals, with E and I"));
        return document;
    }

    private static List<List<IfcWall>> faces(List<IfcWall> walls) {
        List<List<IfcWall>> faces = new ArrayList<>();
        for (IfcWall wall : walls) {
            faces.stream()
                    .filter(face -> face.get(0).isBeside(wall))
                    .findFirst()
                    .orElseGet(
                            () -> {
                                List<IfcWall> face = new ArrayList<>();
                                faces.add(face);
                                return face;
                            })
                    .add(wall);
        }
        return faces;
    }

    private static double left(List<IfcWall> face) {
        return face.stream().mapToDouble(wall -> wall.grid().start()).min().orElseThrow();
    }

    private Map<String, Object> elevation(String id, List<IfcWall> face) {
        double left = left(face);
        double right =
                face.stream()
                        .mapToDouble(wall -> wall.grid().start() + wall.grid().width())
                        .max()
                        .orElseThrow();
        double base = face.stream().mapToDouble(wall -> wall.grid().bottom()).min().orElseThrow();
        double top =
                face.stream()
                        .mapToDouble(wall -> wall.grid().bottom() + wall.grid().height())
                        .max()
                        .orElseThrow();
        Map<String, Object> elevation = new LinkedHashMap<>();
        elevation.put("id", id);
        elevation.put("width", millimetres(right - left));
        elevation.put("height", millimetres(top - base));
        elevation.put("base", millimetres(base));
        return elevation;
    }

    private Map<String, Object> bay(String face, double left, IfcWall wall, int index) {
        IfcGrid grid = wall.grid();
        String id = name(wall.source());
        Map<String, Object> bay = new LinkedHashMap<>();
        bay.put("id", id);
        bay.put("elevation", face);
        bay.put("offset", millimetres(grid.start() - left));
        bay.put("sill", millimetres(grid.bottom()));
        bay.put("columns", grid.columns().stream().map(IfcImport::millimetres).toList());
        bay.put("rows", grid.rows().stream().map(IfcImport::millimetres).toList());
        imported.add(
                new ImportedBay(
                        id,
                        wall.source().text(0),
                        plain(wall.source().text(2)),
                        grid.columns().size() * grid.rows().size()));
        String at = "/bays/" + index;
        for (String doubtful : wall.doubts()) {
            lacking.add(new Lacking(at + "/columns", doubtful));
        }
        String said = layers.of(wall.plates());
        lacking.add(
                new Lacking(
                        at + "/glassType",
                        "its glass; the plates of the file are "
                                + millimetres(wall.glassThickness())
                                + " thick over all"
                                + (said.isEmpty() ? "" : ", of " + said + " as the file says")));
        lacking.add(new Lacking(at + "/mullion", "the section and supports of its verticals"));
        lacking.add(new Lacking(at + "/horizontal", "the section of its horizontals"));
        lacking.add(new Lacking(at + "/anchors", "its anchors, stack joints and movement"));
        lacking.add(new Lacking(at + "/glazingPocket", "edge clearance and bite, and retention"));
        lacking.add(new Lacking(at + "/sillSupport", "what its bottom lites rest on"));
        lacking.add(new Lacking(at + "/seals", "drainage and beads of its internal seals"));
        return bay;
    }

    /** A name of its own for a bay: the wall's, where it makes one. */
    private String name(StepEntity wall) {
        String given = plain(wall.text(2)).replace('/', '-');
        // whole letters: half of a pair of UTF-16 is none
        int letters = Math.min(given.codePointCount(0, given.length()), LONGEST_NAME);
        String base =
                given.isEmpty() ? "W" : given.substring(0, given.offsetByCodePoints(0, letters));
        String name = given.isEmpty() ? "W1" : base;
        for (int i = 2; !names.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = base + (given.isEmpty() ? "" : "-") + i;
        }
        return name;
    }

    /** A text of the file without line ends and other control characters. */
    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    /** To a tenth of a millimetre, which is finer than anything is built. */
    private static String millimetres(double metres) {
        BigDecimal length =
                BigDecimal.valueOf(1000 * metres)
                        .setScale(1, RoundingMode.HALF_UP)
                        .stripTrailingZeros();
        return (length.signum() == 0 ? "0" : length.toPlainString()) + " mm";
    }
}
