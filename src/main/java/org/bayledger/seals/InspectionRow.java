package org.bayledger.seals;

import org.jspecify.annotations.Nullable;

/**
 * The sample of one kind of joint.
 *
 * @param step step at which they are sealed
 * @param type kind of joint
 * @param joints joints of the kind
 * @param defective how many defective joints the defect rate stands for, rounded up
 * @param sampleSize joints to inspect, picked at random, of which none may be defective
 * @param missProbability chance that none of them is defective although so many joints are
 * @param basis the sum, to be redone by hand
 * @param boundAfterOne joints that may be defective, with the confidence of the plan, if one of the
 *     sample is
 * @param sampleSizeAfterOne joints to inspect in all if one of the sample is defective, without
 *     another: less shows nothing; all joints where one defect can't be allowed
 * @param found what an inspection showed; null where none was given
 */
public record InspectionRow(
        int step,
        JointType type,
        int joints,
        int defective,
        int sampleSize,
        double missProbability,
        String basis,
        int boundAfterOne,
        int sampleSizeAfterOne,
        @Nullable InspectionShown found) {}
