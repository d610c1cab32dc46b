package org.bayledger.check;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects faults so that a caller sees all of them at once; beyond the first hundred they are only
 * counted, so that a body full of faults costs no more than one without.
 */
public final class Faults {

    private static final int KEPT = 100;

    private final List<Fault> faults = new ArrayList<>();
    private int count;
    private boolean malformed;

    /** Adds a fault of reading. */
    public void malformed(String pointer, String detail) {
        add(new Fault(pointer, detail, Fault.Kind.MALFORMED));
    }

    /** Adds a fault of validity. */
    public void outOfRange(String pointer, String detail) {
        add(new Fault(pointer, detail, Fault.Kind.OUT_OF_RANGE));
    }

    /** Adds a fault of validity unless the condition holds. */
    public void require(boolean condition, String pointer, String detail) {
        if (!condition) {
            outOfRange(pointer, detail);
        }
    }

    /** Adds faults that were found below a pointer. */
    public void addAll(String prefix, List<Fault> more) {
        more.forEach(fault -> add(fault.below(prefix)));
    }

    /** How many were found, the ones that were not kept included. */
    public int size() {
        return count;
    }

    private void add(Fault fault) {
        count++;
        malformed |= fault.kind() == Fault.Kind.MALFORMED;
        if (faults.size() < KEPT) {
            faults.add(fault);
        }
    }

    /**
     * Ends the collection.
     *
     * @throws FaultsException where anything was collected
     */
    public void throwIfAny() {
        if (count > 0) {
            throw new FaultsException(faults, count, malformed);
        }
    }
}
