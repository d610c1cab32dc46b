package org.bayledger.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A project of 500 lites on one elevation: five stories of ten bays, two columns by five rows. */
final class Facade {

    static final int LITES = 500;

    private static final int STORIES = 5;
    private static final int BAYS_OF_A_STORY = 10;
    private static final int STORY_FEET = 14;

    private final String shell;
    private final List<String> bays = new ArrayList<>();

    /**
     * Takes everything but the bays from a document.
     *
     * @param shell a document as JSON, with an elevation N and glass types and sections named as
     *     the bays name them
     */
    Facade(String shell) {
        this.shell = shell.substring(0, shell.indexOf("\"bays\""));
        for (int bay = 0; bay < STORIES * BAYS_OF_A_STORY; bay++) {
            bays.add(bay(bay, "G1", 9.0));
        }
    }

    int size() {
        return bays.size();
    }

    /** Gives one bay another glass in one lite, and another spacing of the fasteners. */
    void change(int bay, int revision) {
        bays.set(bay, bay(bay, revision % 2 == 0 ? "G2" : "G3", 8.0 - 0.01 * revision));
    }

    /** The document as JSON. */
    String document() {
        return shell + "\"bays\":[" + String.join(",", bays) + "]}";
    }

    private static String bay(int index, String glass, double fastenerInches) {
        int story = index / BAYS_OF_A_STORY;
        int column = index % BAYS_OF_A_STORY;
        double floor = STORY_FEET * (story + 1);
        return String.format(
                Locale.ROOT,
                """
                {"id":"N-%1$d%2$02d","elevation":"N","offset":"%3$d ft","sill":"%4$s ft",
                 "columns":["5 ft","5 ft"],"rows":["2.5 ft","3 ft","3 ft","2.5 ft","2.5 ft"],
                 "glassType":"G1","lites":[{"column":2,"row":2,"glassType":"%8$s"}],
                 "sillSupport":"SHIMMED_SILL",
                 "mullion":{"section":"V2","supports":["0 ft","13.5 ft"],"hinges":[]},
                 "horizontal":{"section":"H1"},
                 "glazingPocket":{"edgeClearance":"0.375 in","bite":"0.5 in"},
                 "retention":{"kind":"PRESSURE_PLATE","fastenerSpacing":"%9$.2f in",
                              "allowableFastenerTension":"320 lbf"},
                 "anchors":[
                  {"id":"L%1$d","elevation":"%4$s ft","role":"DEAD_LOAD",
                   "slabLiveLoadDeflection":"0.25 in","allowableWindForce":"1600 lbf",
                   "allowableDeadLoadForce":"1100 lbf"},
                  {"id":"L%1$d-top","elevation":"%5$s ft","role":"WIND_LOAD",
                   "slabLiveLoadDeflection":"0.25 in","slotUp":"0.75 in","slotDown":"0.75 in",
                   "allowableWindForce":"1600 lbf"},
                  {"id":"L%1$d-above","elevation":"%7$s ft","role":"DEAD_LOAD",
                   "slabLiveLoadDeflection":"0.25 in"}],
                 "stackJoints":[{"elevation":"%6$s ft","nominalWidth":"1.375 in",
                                 "sealantMovementCapability":0.5}],
                 "movement":{"material":"ALUMINUM",
                  "temperature":{"installed":"60 degF","minimum":"0 degF","maximum":"180 degF"},
                  "erectionTolerance":"0.125 in","columnShortening":"0.0625 in",
                  "interstoryDrift":"0.6 in","storyHeight":"14 ft",
                  "drift":{"glassWidth":"5 ft","glassHeight":"3 ft","sideClearance":"0.25 in",
                           "topBottomClearance":"0.25 in","importanceFactor":1.25}},
                 "seals":{"drainage":"PRESSURE_EQUALIZED",
                  "bead":{"width":"0.25 in","depth":"0.25 in"},"pressurePlateLength":"10 ft",
                  "fastenersPerHorizontalEnd":2,"perimeterFastenerSpacing":"18 in",
                  "jointCovers":0,"anchorPenetrations":0,"endDamHeight":"2.5 in"}}""",
                story + 2,
                column + 1,
                column * 10,
                floor,
                floor + 13.5,
                floor + 13.75,
                floor + STORY_FEET,
                glass,
                fastenerInches);
    }
}
