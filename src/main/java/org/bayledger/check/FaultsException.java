package org.bayledger.check;

import java.util.List;
import java.util.stream.Collectors;

/** A request that cannot be answered, with everything that is wrong with it. */
public final class FaultsException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    private final int count;
    private final boolean malformed;

    public FaultsException(List<Fault> faults) {
        this(
                faults,
                faults.size(),
                faults.stream().anyMatch(fault -> fault.kind() == Fault.Kind.MALFORMED));
    }

    FaultsException(List<Fault> faults, int count, boolean malformed) {
        super(
                faults.stream()
                        .map(fault -> fault.pointer() + ": " + fault.detail())
                        .collect(Collectors.joining("; ")));
        this.faults = List.copyOf(faults);
        this.count = count;
        this.malformed = malformed;
    }

    /** A single fault of validity. */
    public static FaultsException outOfRange(String pointer, String detail) {
        return new FaultsException(List.of(new Fault(pointer, detail, Fault.Kind.OUT_OF_RANGE)));
    }

    /** The faults, the first hundred at most. */
    public List<Fault> faults() {
        return faults;
    }

    /** How many faults there are, the ones that were not kept included. */
    public int count() {
        return count;
    }

    /** Whether anything could not even be read (400 rather than 422). */
    public boolean malformed() {
        return malformed;
    }
}
