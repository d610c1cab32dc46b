package org.bayledger.framing;

import org.bayledger.check.Load;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * The glass edges along one member, to be held against suction.
 *
 * @param retention what holds the glass
 * @param tributaryWidth width of wall whose suction the member's fasteners carry, m: twice the
 *     greater of the halves of the lites beside it, at a jamb twice the half of its one lite, since
 *     a plate that is loaded on one side levers about its fasteners (prying; common practice, no
 *     source)
 * @param shortSide short side of the largest lite held, m
 * @param load wind pressures; of suction on the area tributary to one fastener where there are
 *     fasteners
 */
public record RetentionRequest(
        Retention retention,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100)
                double tributaryWidth,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100) double shortSide,
        Load load) {}
