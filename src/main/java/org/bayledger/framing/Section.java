package org.bayledger.framing;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What a member's cross-section brings, as its maker or engineer gives it. Its stiffness under wind
 * comes from exactly one of secondMomentOfArea, outline, halves and thermalBreak.
 *
 * @param secondMomentOfArea second moment of area for bending under wind, m4
 * @param elasticModulus modulus of elasticity, Pa; aluminum 69.6 GPa (10 100 ksi), which is taken
 *     where alloy is given and this is not
 * @param sectionModulus least section modulus for bending under wind, m3; without it stress is not
 *     checked
 * @param allowableBendingStress allowable bending stress at allowable-stress level, Pa; without it
 *     and without alloy stress is not checked; with alloy the lesser of both counts
 * @param deadLoadSecondMomentOfArea second moment of area for bending parallel to the wall, m4;
 *     without it a check under dead load is at best UNDETERMINED
 * @param deadLoadSectionModulus least section modulus for bending parallel to the wall, m3
 * @param massPerLength mass of the member with what is fixed to it, kg/m
 * @param bucklingCovered true where allowableBendingStress already covers local and
 *     lateral-torsional buckling of this member as it is braced; without that statement, or walls
 *     and lateralBuckling from which both are computed, the verdict is UNDETERMINED
 * @param construction how the section is made up; absent: one piece of metal
 * @param compositeProperties true where the properties of a thermally broken or split section are
 *     those of the parts as they work together, from test or calculation
 * @param alloy alloy and temper, from which allowable bending stresses for yielding, rupture and
 *     buckling are computed; unwelded metal
 * @param outline closed lines that bound the metal of a section in one piece, one outer boundary
 *     and any holes in it, from which the properties of both axes are computed; x runs along the
 *     wall, y along the depth at right angles to it, so that wind bends the section about x
 * @param halves the two halves of a SPLIT section, which bend together under wind and share it by
 *     stiffness
 * @param thermalBreak the two metal parts of a THERMALLY_BROKEN section and what joins them
 * @param walls flat walls in compression under wind, all that there are, for local buckling; with
 *     alloy
 * @param lateralBuckling what lateral-torsional buckling depends on; with alloy
 * @param reinforcement steel inside the member
 */
public record Section(
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double secondMomentOfArea,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE) @Nullable Double elasticModulus,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE)
                @Nullable Double sectionModulus,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE)
                @Nullable Double allowableBendingStress,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double deadLoadSecondMomentOfArea,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE)
                @Nullable Double deadLoadSectionModulus,
        @Measured(value = Dimension.LINE_MASS, sign = Sign.NOT_NEGATIVE)
                @Nullable Double massPerLength,
        @Nullable Boolean bucklingCovered,
        @Nullable Construction construction,
        @Nullable Boolean compositeProperties,
        @Nullable Alloy alloy,
        @Size(min = 1, max = 20) @Nullable List<OutlineRing> outline,
        @Size(min = 2, max = 2) @Nullable List<SectionHalf> halves,
        @Nullable ThermalBreak thermalBreak,
        @Size(min = 1, max = 50) @Nullable List<Wall> walls,
        @Nullable LateralBuckling lateralBuckling,
        @Nullable Reinforcement reinforcement) {

    /** How a section is made up. */
    public enum Construction {
        /** One piece of metal. */
        SINGLE,
        /** Two pieces of metal joined by a thermal break that shares load only in part. */
        THERMALLY_BROKEN,
        /** Two halves that meet in a unitized joint. */
        SPLIT
    }

    private static final String COMPUTED = "is computed from the outline; give one of the two";

    public Section {
        outline = outline == null ? null : List.copyOf(outline);
        halves = halves == null ? null : List.copyOf(halves);
        walls = walls == null ? null : List.copyOf(walls);
        Faults faults = new Faults();
        if (elasticModulus == null && alloy == null) {
            faults.malformed(
                    "/elasticModulus", "is required where no alloy is given; units: MPa, ksi");
        }
        long ways =
                Stream.of(secondMomentOfArea, outline, halves, thermalBreak)
                        .filter(Objects::nonNull)
                        .count();
        if (ways == 0) {
            faults.malformed(
                    "/secondMomentOfArea",
                    "is required where neither outline nor halves nor thermalBreak is given;"
                            + " units: mm4, cm4, in4");
        }
        faults.require(
                ways < 2,
                "/secondMomentOfArea",
                "has more than one source: give one of secondMomentOfArea, outline, halves and"
                        + " thermalBreak");
        faults.require(
                sectionModulus == null
                        || (outline == null && halves == null && thermalBreak == null),
                "/sectionModulus",
                "is computed from outline, halves or thermalBreak; leave it out");
        if (outline != null) {
            faults.require(
                    deadLoadSecondMomentOfArea == null, "/deadLoadSecondMomentOfArea", COMPUTED);
            faults.require(deadLoadSectionModulus == null, "/deadLoadSectionModulus", COMPUTED);
            faults.require(
                    construction == null || construction == Construction.SINGLE,
                    "/outline",
                    "is that of one piece of metal; for a thermally broken section give"
                            + " thermalBreak, for a split one halves");
            SectionOutline.require(outline, faults);
        }
        faults.require(
                halves == null || construction == Construction.SPLIT,
                "/halves",
                "belong to construction SPLIT");
        faults.require(
                thermalBreak == null || construction == Construction.THERMALLY_BROKEN,
                "/thermalBreak",
                "belongs to construction THERMALLY_BROKEN");
        faults.require(
                alloy == null
                        || bucklingCovered == null
                        || allowableBendingStress != null
                        || !bucklingCovered,
                "/bucklingCovered",
                "is a statement on allowableBendingStress, which was not given; with alloy alone"
                        + " give walls and lateralBuckling");
        faults.require(walls == null || alloy != null, "/walls", "need alloy");
        faults.require(lateralBuckling == null || alloy != null, "/lateralBuckling", "needs alloy");
        for (int i = 0; alloy != null && walls != null && i < walls.size(); i++) {
            faults.require(
                    walls.get(i).thickness() <= alloy.greatestThickness() * (1 + 1e-9),
                    "/walls/" + i + "/thickness",
                    "is beyond the thickness for which the strengths of "
                            + alloy.title()
                            + " are listed");
        }
        faults.throwIfAny();
    }

    /** A section of one piece with its properties given. */
    Section with(
            @Nullable Double inertia,
            @Nullable Double modulus,
            @Nullable Double deadInertia,
            @Nullable Double deadModulus) {
        boolean joined = halves != null || thermalBreak != null;
        return new Section(
                inertia,
                elasticModulus,
                modulus,
                allowableBendingStress,
                deadInertia,
                deadModulus,
                massPerLength,
                bucklingCovered,
                construction,
                joined ? Boolean.TRUE : compositeProperties,
                alloy,
                null,
                null,
                null,
                walls,
                lateralBuckling,
                reinforcement);
    }

    /**
     * The section as wind parallel to the wall bends it, or null where its second moment of area
     * for that was not given. Walls and bracing, which are those under wind at right angles to the
     * wall, don't hold for it.
     */
    public @Nullable Section turned() {
        Double inertia = deadLoadInertia();
        return inertia == null
                ? null
                : new Section(
                        inertia,
                        elasticModulus,
                        deadLoadModulus(),
                        allowableBendingStress,
                        null,
                        null,
                        massPerLength,
                        bucklingCovered,
                        construction,
                        compositeProperties,
                        alloy,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null);
    }

    Section withReinforcement(Reinforcement changed) {
        return with(lateralBuckling, changed);
    }

    Section withLateralBuckling(LateralBuckling changed) {
        return with(changed, reinforcement);
    }

    private Section with(@Nullable LateralBuckling braced, @Nullable Reinforcement steel) {
        return new Section(
                secondMomentOfArea,
                elasticModulus,
                sectionModulus,
                allowableBendingStress,
                deadLoadSecondMomentOfArea,
                deadLoadSectionModulus,
                massPerLength,
                bucklingCovered,
                construction,
                compositeProperties,
                alloy,
                outline,
                halves,
                thermalBreak,
                walls,
                braced,
                steel);
    }

    /** Whether its properties are computed from something else than properties. */
    boolean computed() {
        return secondMomentOfArea == null;
    }

    /** Modulus of elasticity in force, Pa. */
    public double modulusOfElasticity() {
        return elasticModulus == null ? Alloy.ELASTIC_MODULUS : elasticModulus;
    }

    /** Second moment of area for bending parallel to the wall, m4, given or computed. */
    public @Nullable Double deadLoadInertia() {
        return outline == null
                ? deadLoadSecondMomentOfArea
                : Double.valueOf(SectionOutline.of(outline).deadInertia());
    }

    /** Section modulus for bending parallel to the wall, m3, given or computed. */
    @Nullable Double deadLoadModulus() {
        return outline == null
                ? deadLoadSectionModulus
                : Double.valueOf(SectionOutline.of(outline).deadModulus());
    }

    /** Whether the properties about an axis are known to be those of the section as it works. */
    boolean worksAsGiven(Axis axis) {
        return construction == null
                || construction == Construction.SINGLE
                || Boolean.TRUE.equals(compositeProperties)
                || (axis == Axis.WIND && (halves != null || thermalBreak != null));
    }
}
