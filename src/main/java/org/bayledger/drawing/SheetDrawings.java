package org.bayledger.drawing;

import java.util.List;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;

/** Which drawings stand on a review sheet. */
public enum SheetDrawings {
    /**
     * Of every elevation its wind zones; of every bay its setting blocks, its internal seals and
     * the horizontal that governs it.
     */
    ALL,
    /** Of every elevation its wind zones. */
    ELEVATIONS,
    /** None. */
    NONE;

    /** Bays up to which a sheet shows the drawings of all where nothing else was asked for. */
    static final int FEW_BAYS = 20;

    /** Bays whose drawings one sheet may hold: three sheets of paper each. */
    static final int MOST_BAYS = 100;

    /** What was asked for, or what suits the number of bays. */
    static SheetDrawings chosen(@Nullable SheetDrawings asked, int bays) {
        if (asked == ALL && bays > MOST_BAYS) {
            throw new FaultsException(
                    List.of(
                            new Fault(
                                    "",
                                    "query parameter drawings: ALL is for up to "
                                            + MOST_BAYS
                                            + " bays, and this job has "
                                            + bays
                                            + "; ask for ELEVATIONS, and for the drawings of one"
                                            + " bay by themselves",
                                    Fault.Kind.OUT_OF_RANGE)));
        }
        if (asked != null) {
            return asked;
        }
        return bays <= FEW_BAYS ? ALL : ELEVATIONS;
    }
}
