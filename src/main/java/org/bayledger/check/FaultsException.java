package org.bayledger.check;

import java.util.List;
import java.util.stream.Collectors;

/** A request that cannot be answered, with everything that is wrong with it. */
public final class FaultsException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    public FaultsException(List<Fault> faults) {
        super(
                faults.stream()
                        .map(fault -> fault.pointer() + ": " + fault.detail())
                        .collect(Collectors.joining("; ")));
        this.faults = List.copyOf(faults);
    }

    /** A single fault of validity. */
    public static FaultsException outOfRange(String pointer, String detail) {
        return new FaultsException(List.of(new Fault(pointer, detail, Fault.Kind.OUT_OF_RANGE)));
    }

    public List<Fault> faults() {
        return faults;
    }

    /** Whether anything could not even be read (400 rather than 422). */
    public boolean malformed() {
        return faults.stream().anyMatch(fault -> fault.kind() == Fault.Kind.MALFORMED);
    }
}
