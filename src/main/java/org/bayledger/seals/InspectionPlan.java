package org.bayledger.seals;

import java.util.List;

/**
 * How many joints of each kind to inspect before they are hidden. A kind passes where none of its
 * sample is defective.
 *
 * @param confidence chance with which a sample holds a defective joint where the share of defective
 *     joints is defectRate
 * @param defectRate share of defective joints that must not go unnoticed
 * @param rows one row a kind of joint, in the order of the steps
 */
public record InspectionPlan(double confidence, double defectRate, List<InspectionRow> rows) {

    public InspectionPlan {
        rows = List.copyOf(rows);
    }
}
