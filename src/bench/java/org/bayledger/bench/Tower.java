package org.bayledger.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bayledger.check.Binder;
import org.bayledger.check.StrictJson;
import org.bayledger.review.Bay;
import org.bayledger.review.ReviewDocument;

/**
 * A tower with any number of lites: bays of two columns and three rows on three elevations, as high
 * as a third of their width. No two lites have the same size: every column of the building has a
 * width of its own, and every row of a story a height. Three glass build-ups; both zones of ASCE 7
 * on each elevation, six in all; seven in a hundred bays have a lighter vertical.
 */
final class Tower {

    private static final int ELEVATIONS = 3;
    private static final int LITES_OF_A_BAY = 6;
    private static final double STORY = 4.0;
    private static final int LIGHT_EVERY = 14;

    /** Bays of an elevation over its stories. */
    private static final double SHAPE = 1.4;

    private final int bays;
    private final int across;
    private final int stories;
    private final List<String> json = new ArrayList<>();

    /**
     * Lays out a tower.
     *
     * @param lites at least this many
     */
    Tower(int lites) {
        bays = (lites + LITES_OF_A_BAY - 1) / LITES_OF_A_BAY;
        double ofFace = Math.ceil((double) bays / ELEVATIONS);
        across = (int) Math.ceil(Math.sqrt(ofFace * SHAPE));
        stories = (int) Math.ceil(ofFace / across);
        for (int bay = 0; bay < bays; bay++) {
            json.add(bay(bay, "G" + (1 + bay % ELEVATIONS), 200));
        }
    }

    int lites() {
        return bays * LITES_OF_A_BAY;
    }

    int bays() {
        return bays;
    }

    /** Gives one bay another glass and another spacing of the fasteners. */
    void change(int bay, int revision) {
        json.set(bay, bay(bay, "G" + (1 + revision % ELEVATIONS), 200 - 0.01 * revision));
    }

    /** The document as JSON, as small as it can be written. */
    String document() {
        StringBuilder text = new StringBuilder(shell());
        for (int bay = 0; bay < bays; bay++) {
            text.append(bay == 0 ? "" : ",").append(json.get(bay));
        }
        return text.append("]}").toString();
    }

    /** The document as the service binds it; bay by bay, as no request is as large as it may be. */
    ReviewDocument bound() {
        List<Bay> bound = new ArrayList<>();
        for (String bay : json) {
            bound.add(Binder.bind(tree(bay), Bay.class));
        }
        ReviewDocument one = Binder.bind(tree(shell() + json.get(0) + "]}"), ReviewDocument.class);
        return new ReviewDocument(
                one.name(),
                one.units(),
                one.site(),
                one.specifiedPressures(),
                one.glassTypes(),
                one.sections(),
                one.elevations(),
                bound);
    }

    private static Object tree(String text) {
        return StrictJson.read(text.getBytes(StandardCharsets.UTF_8));
    }

    private double columnWidth(int column) {
        return 1.3 + 0.0004 * column;
    }

    private double offset(int face, int bay) {
        double at = 0;
        for (int before = 0; before < bay; before++) {
            at += width(face, before);
        }
        return at;
    }

    private double width(int face, int bay) {
        int first = 2 * (face * across + bay);
        return columnWidth(first) + columnWidth(first + 1);
    }

    private String shell() {
        StringBuilder faces = new StringBuilder();
        for (int face = 0; face < ELEVATIONS; face++) {
            faces.append(face == 0 ? "" : ",")
                    .append(
                            String.format(
                                    Locale.ROOT,
                                    "{\"id\":\"F%d\",\"width\":\"%.4f m\",\"height\":\"%.1f m\","
                                            + "\"base\":\"0 m\",\"cornerAtLeft\":true,"
                                            + "\"cornerAtRight\":true}",
                                    face,
                                    offset(face, across),
                                    STORY * stories));
        }
        return String.format(
                Locale.ROOT,
                """
                {"name":"A generated tower","units":"SI","site":{"standard":"ASCE_7_16",
                 "basicWindSpeed":"40 m/s","exposureCategory":"B","riskCategory":"II",
                 "meanRoofHeight":"%.1f m","leastHorizontalDimension":"30 m","roofSlope":"0 deg",
                 "enclosureClassification":"ENCLOSED","groundElevation":"0 m",
                 "topographicFactor":1,"designBasis":"STRENGTH"},
                 "glassTypes":[{"id":"G1","panes":[
                   {"nominalThickness":"8 mm","heatTreatment":"HEAT_STRENGTHENED"},
                   {"nominalThickness":"6 mm","heatTreatment":"HEAT_STRENGTHENED"}],
                   "cavities":[{"width":"12 mm"}]},
                  {"id":"G2","panes":[{"nominalThickness":"8 mm","heatTreatment":"FULLY_TEMPERED"}]},
                  {"id":"G3","panes":[
                   {"nominalThickness":"8 mm","heatTreatment":"FULLY_TEMPERED"},
                   {"plies":[{"nominalThickness":"5 mm"},{"nominalThickness":"5 mm"}],
                    "interlayer":{"material":"PVB","thickness":"1.52 mm"},
                    "heatTreatment":"HEAT_STRENGTHENED"}],"cavities":[{"width":"12 mm"}]}],
                 "sections":[
                  {"id":"V1","secondMomentOfArea":"900 cm4","sectionModulus":"90e3 mm3",
                   "elasticModulus":"70 GPa","allowableBendingStress":"105 MPa",
                   "deadLoadSecondMomentOfArea":"96 cm4","deadLoadSectionModulus":"30e3 mm3",
                   "massPerLength":"6.8 kg/m","bucklingCovered":true},
                  {"id":"V2","secondMomentOfArea":"3000 cm4","sectionModulus":"250e3 mm3",
                   "elasticModulus":"70 GPa","allowableBendingStress":"105 MPa",
                   "deadLoadSecondMomentOfArea":"150 cm4","deadLoadSectionModulus":"50e3 mm3",
                   "massPerLength":"9 kg/m","bucklingCovered":true},
                  {"id":"H1","secondMomentOfArea":"374 cm4","sectionModulus":"52e3 mm3",
                   "elasticModulus":"70 GPa","allowableBendingStress":"105 MPa",
                   "deadLoadSecondMomentOfArea":"270 cm4","deadLoadSectionModulus":"43e3 mm3",
                   "massPerLength":"5.4 kg/m","bucklingCovered":true}],
                 "elevations":[%s],"bays":[\
                """,
                STORY * stories,
                faces);
    }

    private String bay(int index, String glass, double fastenerMillimetres) {
        int face = index % ELEVATIONS;
        int place = index / ELEVATIONS;
        int story = place / across;
        int bay = place % across;
        int first = 2 * (face * across + bay);
        double low = 0.9 + 0.0021 * story;
        double middle = 1.7 - 0.0031 * story;
        double floor = STORY * story;
        return String.format(
                Locale.ROOT,
                """
                {"id":"F%1$d-%2$d-%3$d","elevation":"F%1$d","offset":"%4$.4f m","sill":"%5$.1f m",\
                "columns":["%6$.4f m","%7$.4f m"],"rows":["%8$.4f m","%9$.4f m","%10$.4f m"],\
                "glassType":"%11$s","sillSupport":"SHIMMED_SILL",\
                "mullion":{"section":"%12$s","supports":["0 m","%13$.2f m"],"hinges":[]},\
                "horizontal":{"section":"H1"},\
                "glazingPocket":{"edgeClearance":"9.5 mm","bite":"13 mm"},\
                "retention":{"kind":"PRESSURE_PLATE","fastenerSpacing":"%14$.2f mm",\
                "allowableFastenerTension":"1.4 kN"},\
                "anchors":[{"id":"A","elevation":"%5$.1f m","role":"DEAD_LOAD",\
                "slabLiveLoadDeflection":"6 mm","allowableWindForce":"20 kN",\
                "allowableDeadLoadForce":"9 kN"},\
                {"id":"B","elevation":"%15$.2f m","role":"WIND_LOAD",\
                "slabLiveLoadDeflection":"6 mm","slotUp":"19 mm","slotDown":"19 mm",\
                "allowableWindForce":"20 kN"},\
                {"id":"C","elevation":"%16$.1f m","role":"DEAD_LOAD",\
                "slabLiveLoadDeflection":"6 mm"}],\
                "stackJoints":[{"elevation":"%17$.2f m","nominalWidth":"35 mm",\
                "sealantMovementCapability":0.5}],\
                "movement":{"material":"ALUMINUM","temperature":{"installed":"15 degC",\
                "minimum":"-18 degC","maximum":"82 degC"},"erectionTolerance":"3 mm",\
                "columnShortening":"1.5 mm","interstoryDrift":"15 mm","storyHeight":"4 m",\
                "drift":{"glassWidth":"1.4 m","glassHeight":"1.7 m","sideClearance":"6 mm",\
                "topBottomClearance":"6 mm","importanceFactor":1.25}},\
                "seals":{"drainage":"PRESSURE_EQUALIZED","bead":{"width":"6 mm","depth":"6 mm"},\
                "pressurePlateLength":"3 m","fastenersPerHorizontalEnd":2,\
                "perimeterFastenerSpacing":"450 mm","jointCovers":0,"anchorPenetrations":0,\
                "endDamHeight":"65 mm"}}""",
                face,
                story,
                bay,
                offset(face, bay),
                floor,
                columnWidth(first),
                columnWidth(first + 1),
                low,
                middle,
                STORY - low - middle,
                glass,
                index % LIGHT_EVERY == 0 ? "V1" : "V2",
                STORY - 0.15,
                fastenerMillimetres,
                floor + STORY - 0.15,
                floor + STORY,
                floor + STORY - 0.1);
    }
}
