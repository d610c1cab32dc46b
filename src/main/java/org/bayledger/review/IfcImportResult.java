package org.bayledger.review;

import java.util.List;

/**
 * What an IFC file holds of a review.
 *
 * @param document a review document as far as the file goes; add what is lacking before it is
 *     reviewed
 * @param bays which curtain wall of the file each bay is
 * @param lacking what the document needs and the file does not hold, with where it goes
 * @param skipped curtain walls that no bay could be made of, with the reason
 */
public record IfcImportResult(
        Object document, List<ImportedBay> bays, List<Lacking> lacking, List<SkippedWall> skipped) {

    public IfcImportResult {
        bays = List.copyOf(bays);
        lacking = List.copyOf(lacking);
        skipped = List.copyOf(skipped);
    }

    /**
     * One bay and where it comes from.
     *
     * @param bay name of the bay in the document
     * @param globalId GlobalId of the IfcCurtainWall
     * @param name its name in the file; empty where it has none
     * @param lites plates that became lites
     */
    public record ImportedBay(String bay, String globalId, String name, int lites) {}

    /**
     * Something that the document still needs.
     *
     * @param pointer where it goes in the document
     * @param text what it is
     */
    public record Lacking(String pointer, String text) {}

    /**
     * A wall that is not in the document.
     *
     * @param globalId GlobalId of the IfcCurtainWall
     * @param name its name in the file; empty where it has none
     * @param reason why not
     */
    public record SkippedWall(String globalId, String name, String reason) {}
}
