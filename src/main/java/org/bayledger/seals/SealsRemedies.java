package org.bayledger.seals;

import static org.bayledger.quantity.Constants.INCH;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * What makes a frame pass: higher end dams, sealed joints, larger vents, more weeps, whichever are
 * needed, all together and run again.
 */
final class SealsRemedies {

    private final SealsRequest request;
    private final SealsResult result;
    private final Reporting reporting;
    private final List<Remedy.Change> changes = new ArrayList<>();
    private final List<String> sentences = new ArrayList<>();
    private SealDetails details;

    private SealsRemedies(SealsRequest request, SealsResult result, Reporting reporting) {
        this.request = request;
        this.result = result;
        this.reporting = reporting;
        this.details = request.details();
    }

    /** The remedy of a frame that exceeds a limit, if there is one. */
    static List<Remedy> of(SealsRequest request, SealsResult result, Reporting reporting) {
        return new SealsRemedies(request, result, reporting).remedies();
    }

    private List<Remedy> remedies() {
        dams();
        joints();
        vents();
        weeps();
        Outcome after = after().outcome();
        Double utilization = after.utilization();
        return after.verdict() == Verdict.EXCEEDED || utilization == null
                ? List.of()
                : List.of(new Remedy(String.join(" ", sentences), changes, utilization));
    }

    private SealsResult after() {
        return SealsCheck.assess(request.withDetails(details), reporting, List.of());
    }

    private void dams() {
        Double dam = details.endDamHeight();
        DrivingPressure driving = result.waterAndAir().drivingPressure();
        double head =
                Math.max(si(result.waterHead()), driving == null ? 0 : si(driving.waterHead()));
        if (dam != null && head > dam && details.holdsWater()) {
            raise(head);
        }
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }

    private void raise(double head) {
        boolean customary = reporting.units() == UnitSystem.US;
        double step = customary ? INCH / 8 : 0.001;
        double steps = Math.ceil(head / step);
        String height = customary ? steps / 8 + " in" : (long) steps + " mm";
        details = details.withEndDamHeight(steps * step);
        changes.removeIf(change -> change.pointer().equals("/endDamHeight"));
        changes.add(new Remedy.Change("/endDamHeight", height));
        sentences.removeIf(sentence -> sentence.startsWith("Make the sill's end dams"));
        sentences.add("Make the sill's end dams " + height + " high.");
    }

    private void joints() {
        MissedJoint missed = details.missedJoint();
        boolean together =
                result.waterAndAir().observedJoints().stream()
                                .anyMatch(joint -> joint.utilization() != null)
                        && sumExceeds();
        if (missed != null
                && missed.length() > 0
                && (result.unsealedJoint().utilization() > 1 || together || shareExceeds())) {
            details = details.withMissedJoint(new MissedJoint(missed.gap(), 0));
            changes.add(new Remedy.Change("/missedJoint/length", "0 mm"));
            sentences.add("Open up and seal the missed joint over its whole length.");
        }
        if (!together) {
            return;
        }
        WaterAndAir given = details.waterAndAirOrNone();
        List<ObservedJoint> repaired = new ArrayList<>();
        for (int i = 0; i < given.observedOrNone().size(); i++) {
            ObservedJoint joint = given.observedOrNone().get(i);
            ObservedFinding found = result.waterAndAir().observedJoints().get(i);
            boolean leaks = found.utilization() != null && found.utilization() > 0;
            repaired.add(leaks ? joint.withLength(0) : joint);
            if (leaks) {
                changes.add(new Remedy.Change("/observed/" + i + "/length", "0 mm"));
                sentences.add("Open up and repair " + found.joint() + " over its whole length.");
            }
        }
        details = details.withWaterAndAir(given.withObserved(repaired));
    }

    /** Whether the observed joints and the missed one exceed a limit together. */
    private boolean sumExceeds() {
        UnsealedJoint unsealed = result.unsealedJoint();
        boolean missed = details.missedJoint() != null;
        double water = missed ? si(unsealed.waterRate()) : 0;
        double air = missed ? unsealed.airRate().si() : 0;
        for (ObservedFinding joint : result.waterAndAir().observedJoints()) {
            water += si(joint.waterRate());
            air += si(joint.airRate());
        }
        water = Math.min(water, unsealed.spraySupply().si());
        return water > unsealed.allowedWater().si() || air > unsealed.allowedAir().si();
    }

    private boolean shareExceeds() {
        Chamber chamber = details.waterAndAirOrNone().pressureEqualization();
        PressureEqualization equalization = result.waterAndAir().pressureEqualization();
        return chamber != null
                && equalization != null
                && chamber.outerShareLimit() != null
                && equalization.worstShare() > chamber.outerShareLimit();
    }

    private void vents() {
        WaterAndAir given = details.waterAndAirOrNone();
        Chamber chamber = given.pressureEqualization();
        PressureEqualization equalization = result.waterAndAir().pressureEqualization();
        if (chamber == null || equalization == null || !shareExceeds()) {
            return;
        }
        Quantity needed = equalization.requiredVentArea();
        if (needed != null && needed.si() > chamber.ventArea()) {
            Quantity area =
                    Quantity.roundedUp(
                            Dimension.SECTION_AREA, needed.si() * (1 + 1e-9), reporting.units(), 3);
            details =
                    details.withWaterAndAir(
                            given.withPressureEqualization(chamber.withVentArea(area.si())));
            String text = area.text(reporting.units());
            changes.add(new Remedy.Change("/pressureEqualization/ventArea", text));
            sentences.add("Open vents of " + text + " to each chamber.");
        }
    }

    /** More weeps, or higher dams where it is the dams that limit the head over them. */
    private void weeps() {
        WaterAndAir given = details.waterAndAirOrNone();
        Weeps weeps = given.weeps();
        WeepSizing sizing = after().waterAndAir().weepSizing();
        if (weeps == null || sizing == null || sizing.utilization() <= 1) {
            return;
        }
        Integer count = sizing.requiredCount();
        if (count != null) {
            details = details.withWaterAndAir(given.withWeeps(weeps.withCount(count)));
            changes.add(new Remedy.Change("/weeps/count", count));
            sentences.add("Make " + count + " weeps.");
        } else if (weeps.availableHead() == null) {
            raise(sizing.requiredHead().si());
        }
    }
}
