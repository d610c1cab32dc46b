package org.bayledger.glazing;

import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One pane: a single sheet with its nominal thickness, or plies laminated with an interlayer.
 *
 * @param nominalThickness nominal thickness of a single sheet, m: one of the table of {@link
 *     NominalThickness}; absent where plies are given
 * @param plies the sheets of a laminated pane, outermost first; absent for a single sheet
 * @param interlayer the film between the plies; given with plies and only then
 * @param heatTreatment heat treatment of the sheet, or of every ply
 */
public record Pane(
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE)
                @Nullable Double nominalThickness,
        @Size(min = 2, max = 4) @Nullable List<Ply> plies,
        @Nullable Interlayer interlayer,
        HeatTreatment heatTreatment) {

    /** Density of soda-lime glass, kg/m3 (ASTM E1300 and EN 572-1, from memory). */
    public static final double DENSITY = 2500;

    /** Refuses what is neither a single sheet of the table nor a complete laminate. */
    public Pane {
        Faults faults = new Faults();
        if (plies == null) {
            if (nominalThickness == null) {
                faults.malformed(
                        "/nominalThickness",
                        "is required for a single sheet; a laminated pane has plies and an"
                                + " interlayer instead");
            } else if (NominalThickness.find(nominalThickness) == null) {
                faults.outOfRange("/nominalThickness", NominalThickness.refusal());
            }
            if (interlayer != null) {
                faults.malformed("/interlayer", "belongs to a pane with plies");
            }
        } else {
            plies = List.copyOf(plies);
            if (nominalThickness != null) {
                faults.malformed("/nominalThickness", "must be absent where plies are given");
            }
            if (interlayer == null) {
                faults.malformed("/interlayer", "is required where plies are given");
            }
        }
        faults.throwIfAny();
    }

    /** A single sheet. */
    public static Pane monolithic(double nominalThickness, HeatTreatment heatTreatment) {
        return new Pane(nominalThickness, null, null, heatTreatment);
    }

    /** Plies laminated with one kind of film. */
    public static Pane laminated(
            List<Ply> plies, Interlayer interlayer, HeatTreatment heatTreatment) {
        return new Pane(null, plies, interlayer, heatTreatment);
    }

    /** Whether the pane has plies. */
    public boolean isLaminated() {
        return plies != null;
    }

    /** Nominal thickness of each sheet, outermost first, m. */
    public List<Double> nominalThicknesses() {
        if (plies == null) {
            return nominalThickness == null ? List.of() : List.of(nominalThickness);
        }
        List<Double> sheets = new ArrayList<>();
        for (Ply ply : plies) {
            sheets.add(ply.nominalThickness());
        }
        return sheets;
    }

    /** Least thickness of each sheet, outermost first, m. */
    public List<Double> minimumThicknesses() {
        List<Double> least = new ArrayList<>();
        for (double nominal : nominalThicknesses()) {
            least.add(NominalThickness.of(nominal).minimum());
        }
        return least;
    }

    /** Nominal thickness from face to face, interlayers included, m. */
    public double thickness() {
        double glass = sheets();
        return interlayer == null ? glass : glass + films() * interlayer.thickness();
    }

    /** Mass per area from the nominal thicknesses, interlayers included, kg/m2. */
    public double areaMass() {
        double mass = DENSITY * sheets();
        return interlayer == null ? mass : mass + films() * interlayer.areaMass();
    }

    /** The pane with every sheet one step thicker, or null where a sheet is the thickest made. */
    public @Nullable Pane thicker() {
        List<Double> next = new ArrayList<>();
        for (double nominal : nominalThicknesses()) {
            NominalThickness now = NominalThickness.of(nominal);
            NominalThickness then = now.thicker();
            if (then == null) {
                return null;
            }
            next.add(now.isCustomary(nominal) ? then.customary() : then.metric());
        }
        return interlayer == null
                ? monolithic(next.get(0), heatTreatment)
                : laminated(next.stream().map(Ply::new).toList(), interlayer, heatTreatment);
    }

    /** The same glass with another heat treatment. */
    public Pane with(HeatTreatment other) {
        return new Pane(nominalThickness, plies, interlayer, other);
    }

    private double sheets() {
        double sum = 0;
        for (double sheet : nominalThicknesses()) {
            sum += sheet;
        }
        return sum;
    }

    private int films() {
        return plies == null ? 0 : plies.size() - 1;
    }
}
