package org.bayledger.check;

import java.util.ArrayList;
import java.util.List;

/** Collects faults so that a caller sees all of them at once. */
public final class Faults {

    private final List<Fault> faults = new ArrayList<>();

    /** Adds a fault of reading. */
    public void malformed(String pointer, String detail) {
        faults.add(new Fault(pointer, detail, Fault.Kind.MALFORMED));
    }

    /** Adds a fault of validity. */
    public void outOfRange(String pointer, String detail) {
        faults.add(new Fault(pointer, detail, Fault.Kind.OUT_OF_RANGE));
    }

    /** Adds a fault of validity unless the condition holds. */
    public void require(boolean condition, String pointer, String detail) {
        if (!condition) {
            outOfRange(pointer, detail);
        }
    }

    /** Adds faults that were found below a pointer. */
    public void addAll(String prefix, List<Fault> more) {
        more.forEach(fault -> faults.add(fault.below(prefix)));
    }

    public int size() {
        return faults.size();
    }

    /**
     * Ends the collection.
     *
     * @throws FaultsException where anything was collected
     */
    public void throwIfAny() {
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
    }
}
