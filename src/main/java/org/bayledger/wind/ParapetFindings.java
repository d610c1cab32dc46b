package org.bayledger.wind;

import java.util.List;
import org.bayledger.check.Finding;

/** What a person has to know of a component that stands higher than the roof. */
final class ParapetFindings {

    private ParapetFindings() {}

    /** What to say of a component's height, which may reach into a parapet. */
    static List<Finding> of(Site site, WallRules.Parapet parapet, String pointer, String what) {
        return switch (parapet) {
            case NONE -> List.of();
            case NOT_GIVEN ->
                    List.of(
                            Finding.action(
                                    "ABOVE_ROOF",
                                    pointer,
                                    what
                                            + " stands higher than the roof"
                                            + (site.parapetHeight() == null
                                                    ? ""
                                                    : " with its parapet")
                                            + ". A parapet has wind on both faces and load cases"
                                            + " of its own, which are not covered: "
                                            + (site.standard().isAsce()
                                                    ? "give parapetHeight, or work it out apart."
                                                    : "give the building's height with its parapet.")
                                            + " The pressures given are those of a wall at that"
                                            + " height."));
            case NOT_COVERED ->
                    List.of(
                            Finding.action(
                                    "PARAPET_NOT_COVERED",
                                    pointer,
                                    what
                                            + " reaches into the parapet. Its load cases take the"
                                            + " suction on the roof behind it, which is covered for"
                                            + " a roofSlope of up to 7 degrees (10 for tall"
                                            + " buildings) that was given: work it out apart. The"
                                            + " pressures given are those of a wall at that"
                                            + " height."));
            case COVERED ->
                    List.of(
                            Finding.note(
                                    "PARAPET_PRESSURES",
                                    pointer,
                                    what
                                            + " reaches into the parapet: its pressures, over its"
                                            + " whole area, are those of a parapet that stands as"
                                            + " one solid wall around the roof, both faces taken"
                                            + " together. Cladding on one face of a closed parapet"
                                            + " has less; give what lies below the roof as a"
                                            + " component of its own to take less there."));
        };
    }
}
