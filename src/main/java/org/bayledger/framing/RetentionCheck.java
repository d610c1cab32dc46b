package org.bayledger.framing;

import static org.bayledger.quantity.Constants.PSI;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.check.Remedy.Change;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Retention of the glass under suction.
 *
 * <p>Pressure plate: one screw carries T = p b s, with p the suction on the area tributary to it
 * (Pa), b the width of wall beside the member that hangs on it (m) and s the spacing of the screws
 * (m); statics. A plate that is loaded on one side levers about its screws: b is then twice the
 * half width of that side (prying; common practice, no source). Structural silicone: bite = p a /
 * (2 F), with a the short side of the lite (m) and F the allowable stress, 20 psi (trapezoidal load
 * distribution, ASTM C1401 practice, from memory). Gaskets keep the glass where what is left of
 * their bite is no less than the glazing system's maker accepts. Both leave the weight of the glass
 * to setting blocks.
 */
public final class RetentionCheck {

    /** Customary allowable stress of structural silicone, 20 psi in Pa (ASTM C1401 practice). */
    static final double SILICONE_STRESS = 20 * PSI;

    private static final String PRYING =
            "Prying of a plate loaded on one side is covered by a tributary width of twice the half"
                    + " width there (common practice, no source); the plate's own bending and the"
                    + " bearing of its gaskets were not checked.";

    private static final String ADHESION =
            "Adhesion and compatibility of structural silicone are the sealant maker's to confirm"
                    + " by test.";

    private RetentionCheck() {}

    /** Checks what holds the glass; what would pass is computed where it fails. */
    public static RetentionResult run(RetentionRequest request, Reporting reporting) {
        Trace trace = new Trace(reporting.trace());
        AllowableLoad load = request.load().allowable(trace);
        List<Finding> findings = new ArrayList<>();
        Verdict verdict = Verdict.SATISFIED;
        if (load.negative() == null) {
            findings.addAll(load.missingSigns("/load"));
            verdict = Verdict.UNDETERMINED;
        }
        double suction = load.negative() == null ? 0 : -load.negative();
        Retention retention = request.retention();
        double utilization;
        double strength;
        Quantity tension = null;
        Quantity bite = null;
        List<Remedy> remedies = List.of();
        if (retention.kind() == Retention.Kind.PRESSURE_PLATE) {
            double spacing = orZero(retention.fastenerSpacing());
            double allowable = orZero(retention.allowableFastenerTension());
            double force = suction * request.tributaryWidth() * spacing;
            tension = Quantity.of(Dimension.FORCE, force);
            strength = force / allowable;
            double covered = bite(retention, trace, findings, reporting);
            trace.step(
                    "T",
                    "tension of one screw",
                    Dimension.FORCE,
                    force,
                    "p b s",
                    "statics; s spacing of the screws, b tributary width, of a plate loaded on one"
                            + " side twice the half width (prying; common practice, no source)");
            trace.step(
                    "T,all",
                    "allowable tension of one screw",
                    Dimension.FORCE,
                    allowable,
                    "input",
                    "input");
            if (strength > 1 && covered <= 1) {
                Quantity closer =
                        Quantity.roundedDown(
                                Dimension.LENGTH, spacing / strength, reporting.units(), 2);
                remedies =
                        List.of(
                                new Remedy(
                                        "Space the screws of the pressure plate no further apart"
                                                + " than "
                                                + closer.text(reporting.units())
                                                + ".",
                                        List.of(new Change("/retention/fastenerSpacing", closer)),
                                        Math.max(covered, strength * closer.si() / spacing)));
            }
            utilization = Math.max(strength, covered);
        } else {
            double allowable =
                    retention.allowableSiliconeStress() == null
                            ? SILICONE_STRESS
                            : retention.allowableSiliconeStress();
            double given = orZero(retention.siliconeBite());
            double required = suction * request.shortSide() / 2 / allowable;
            bite = Quantity.of(Dimension.LENGTH, required);
            strength = required / given;
            utilization = strength;
            trace.step(
                    "F",
                    "allowable stress of the silicone",
                    Dimension.STRESS,
                    allowable,
                    retention.allowableSiliconeStress() == null ? "customary 20 psi" : "input",
                    "ASTM C1401 practice (from memory)");
            trace.step(
                    "B",
                    "bite needed",
                    Dimension.LENGTH,
                    required,
                    "p a / (2 F)",
                    "ASTM C1401 practice, trapezoidal distribution (from memory)");
            if (utilization > 1) {
                Quantity wider =
                        Quantity.roundedUp(Dimension.LENGTH, required, reporting.units(), 2);
                remedies =
                        List.of(
                                new Remedy(
                                        "Give the structural silicone a bite of "
                                                + wider.text(reporting.units())
                                                + ".",
                                        List.of(new Change("/retention/siliconeBite", wider)),
                                        required / wider.si()));
            }
        }
        verdict = verdict.and(Verdict.ofUtilization(utilization));
        if (strength > 1) {
            findings.add(
                    Finding.action(
                            "RETENTION_EXCEEDED",
                            "/retention",
                            "What holds the glass against suction carries "
                                    + reporting.text(Dimension.NONE, strength)
                                    + " times what it may."));
        }
        return new RetentionResult(
                new Outcome(
                        verdict,
                        load.negative() == null ? null : utilization,
                        findings,
                        remedies,
                        trace.steps(),
                        Cautions.with(
                                retention.kind() == Retention.Kind.PRESSURE_PLATE
                                        ? PRYING
                                        : ADHESION)),
                tension,
                bite);
    }

    /**
     * The bite that would do, the least one with what is lost, over the nominal one; 0 where it was
     * not given.
     */
    private static double bite(
            Retention retention, Trace trace, List<Finding> findings, Reporting reporting) {
        Double nominal = retention.gasketBite();
        Double least = retention.minimumGasketBite();
        if (nominal == null || least == null) {
            return 0;
        }
        double left = nominal - orZero(retention.biteLoss());
        trace.step(
                "B,left",
                "bite of the gaskets that is left",
                Dimension.LENGTH,
                left,
                "gasketBite - biteLoss",
                "geometry");
        if (left < least) {
            findings.add(
                    Finding.action(
                            "GASKET_BITE_TOO_SMALL",
                            "/retention/gasketBite",
                            "The gaskets keep "
                                    + reporting.text(Dimension.LENGTH, Math.max(0, left))
                                    + " of the glass edge; at least "
                                    + reporting.text(Dimension.LENGTH, least)
                                    + " is needed. Give the glass more bite, or reduce what may be"
                                    + " lost of it."));
        }
        return (least + orZero(retention.biteLoss())) / nominal;
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
