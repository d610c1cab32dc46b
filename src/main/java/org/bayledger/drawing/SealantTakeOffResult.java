package org.bayledger.drawing;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealsResult;
import org.bayledger.seals.TakeOff;

/**
 * The take-off of a frame's seals.
 *
 * @param verdict verdict of the check of these seals
 * @param takeOff sealant and labour
 * @param notCounted kinds that could not be counted from what was given, and are in no sum
 * @param findings what the check has to say, of missing counts and assumed beads among the rest
 * @param cautions what limits the answer
 */
public record SealantTakeOffResult(
        Verdict verdict,
        @JsonUnwrapped TakeOff takeOff,
        List<JointType> notCounted,
        List<Finding> findings,
        List<String> cautions) {

    static SealantTakeOffResult of(SealsResult result) {
        return new SealantTakeOffResult(
                result.outcome().verdict(),
                result.takeOff(),
                result.notCounted(),
                result.outcome().findings(),
                result.outcome().cautions());
    }
}
