package org.bayledger.glass;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.Interlayer;
import org.bayledger.glazing.Pane;

/** What a reviewer should read about the build-up of a lite: laminates, units and their factors. */
final class BuildUpFindings {

    private final GlassRequest request;
    private final List<Finding> findings;

    private BuildUpFindings(GlassRequest request, List<Finding> findings) {
        this.request = request;
        this.findings = findings;
    }

    /** Adds them to a list. */
    static void add(GlassRequest request, List<Finding> findings) {
        BuildUpFindings all = new BuildUpFindings(request, findings);
        all.laminates();
        all.unit();
    }

    private void laminates() {
        List<Pane> panes = request.glass().panes();
        for (int i = 0; i < panes.size(); i++) {
            Pane pane = panes.get(i);
            Interlayer interlayer = pane.interlayer();
            if (interlayer == null) {
                continue;
            }
            String pointer = GlassRequest.panePointer(i);
            if (pane.minimumThicknesses().size() > 2) {
                findings.add(
                        Finding.note(
                                "PLIES_TAKEN_AS_LOOSE",
                                pointer + "/plies",
                                "More than two plies are taken as loose sheets, the least that they"
                                        + " can do, whatever the interlayer."));
            } else if (interlayer.shearModulus() != null) {
                findings.add(
                        Finding.info(
                                "INTERLAYER_MODULUS_GIVEN",
                                pointer + "/interlayer/shearModulus",
                                "The interlayer's shear modulus is the one given. It has to be its"
                                        + " maker's at the temperature of the film and for the"
                                        + " duration of the load."));
            } else {
                findings.add(
                        interlayer.temperature() == null
                                ? Finding.note(
                                        "INTERLAYER_TEMPERATURE_NOT_GIVEN",
                                        pointer + "/interlayer/temperature",
                                        "No interlayer temperature was given. 50 degC is taken, as"
                                                + " the practice does for wind; colder is stiffer.")
                                : Finding.info(
                                        "INTERLAYER_MODULUS",
                                        pointer + "/interlayer",
                                        "The interlayer's shear modulus is a published value for"
                                                + " its kind, from memory; its maker's figure"
                                                + " governs and can be given as shearModulus."));
            }
        }
    }

    private void unit() {
        GlassBuildUp glass = request.glass();
        if (!glass.isInsulating()) {
            return;
        }
        if (request.sealedUnit() == null) {
            findings.add(
                    Finding.note(
                            "CAVITY_PRESSURE_NOT_CHECKED",
                            "/sealedUnit",
                            "The panes share the load by stiffness, as the practice has it."
                                    + " Pressure in the sealed cavity from altitude, temperature"
                                    + " and weather was not looked at: describe it in"
                                    + " sealedUnit."));
        }
        boolean treated =
                glass.panes().stream()
                        .anyMatch(pane -> pane.heatTreatment() != HeatTreatment.ANNEALED);
        if (glass.panes().size() == 3) {
            findings.add(
                    Finding.note(
                            "TRIPLE_FACTORS_FROM_MEMORY",
                            "/glass/panes",
                            "The glass type factor of every pane of a triple unit is taken as 0.81"
                                    + " of the single lite's, from a less certain memory and on the"
                                    + " safe side; compare with the practice's table."));
        } else if (treated && !LoadDuration.isShort(request.load().durationOrShort())) {
            findings.add(
                    Finding.note(
                            "LONG_DURATION_FACTORS_FROM_MEMORY",
                            "/load/duration",
                            "The glass type factors of double units under long duration (annealed"
                                    + " 0.39 with its like and 0.43 with another, heat-strengthened"
                                    + " 1.25, fully tempered 2.85) are from a less certain memory;"
                                    + " compare with the practice's table."));
        }
    }
}
