package org.bayledger.seals;

import java.util.List;

/**
 * What has to be bought and done, ready for a table. Kinds of joint that were not counted are not
 * in it.
 *
 * @param rows one row a kind of joint, in the order of the steps
 * @param sealants one row a sealant
 * @param labour one row a step
 */
public record TakeOff(
        List<TakeOffRow> rows, List<SealantQuantity> sealants, List<StepLabour> labour) {

    public TakeOff {
        rows = List.copyOf(rows);
        sealants = List.copyOf(sealants);
        labour = List.copyOf(labour);
    }
}
