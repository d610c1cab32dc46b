package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.glass.SealedCavities.Sheet;
import org.bayledger.glass.SealedCavities.State;
import org.bayledger.glazing.Cavity;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.Pane;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The sealed-cavity model of one insulating unit ({@link SealedCavities}) over its climates and
 * winds, against what each pane resists alone.
 *
 * <pre>
 * R(d)  = NFL PF GTF(d)                       GTF of the pane in its unit, where more panes may break
 * u     = max( |q| / R(dw), |qc / R(dc) + (q - qc) / R(dw)|, |qc| / R(dc) )
 * </pre>
 *
 * q net pressure on the pane under climate and wind, qc under the climate alone, dw and dc how long
 * wind and climate last. Loads of different durations are added up by the equivalent load of one
 * duration, q3 = sum q_i (d_i / 3 s)^(1/16) for annealed glass (ASTM E1300-16, appendix on
 * combining loads of different durations, from memory), which is the middle term; heat-treated
 * glass takes the practice's factor for 30 d for any climate longer than 3 s. A laminated pane
 * bends and is stressed with the interlayer of the wind's duration where there is wind, which draws
 * more of the climate's load, and resists the climate's part with that of the climate's duration. A
 * cold interlayer is stiffer still and draws more again: with a laminated pane every case is also
 * found with rigid interlayers, and the worse of the two is kept, as for the load share factor
 * ({@link PaneSums}).
 */
final class SealedUnitCheck {

    private final GlassRequest request;
    private final GlassModel model;
    private final List<Member> gust;
    private final SealedUnit unit;
    private final boolean rigid;
    private final List<SealedUnitResult.Case> cases = new ArrayList<>();

    /**
     * A pane at one duration.
     *
     * @param bending sheet that bends as it does
     * @param stressed sheet that is stressed as it is
     * @param resistance pressure that it resists alone for that duration, Pa
     */
    private record Member(Sheet bending, Sheet stressed, double resistance) {}

    private SealedUnitCheck(GlassRequest request, SealedUnit unit, boolean rigid) {
        this.request = request;
        this.unit = unit;
        this.rigid = rigid;
        this.model = GlassModel.of(request);
        this.gust = members(request.load().durationOrShort());
    }

    /**
     * All cases, or null where no sealed unit is described.
     *
     * @param load the wind; a sign that was not called out is left out
     */
    static @Nullable SealedUnitResult of(GlassRequest request, AllowableLoad load, Trace trace) {
        SealedUnit unit = request.sealedUnit();
        if (unit == null) {
            return null;
        }
        SealedUnitCheck check = new SealedUnitCheck(request, unit, false);
        List<SealedUnitResult.Case> found = check.run(load);
        if (request.glass().panes().stream().anyMatch(Pane::isLaminated)) {
            List<SealedUnitResult.Case> stiff = new SealedUnitCheck(request, unit, true).run(load);
            List<SealedUnitResult.Case> soft = found;
            found =
                    IntStream.range(0, soft.size())
                            .mapToObj(i -> worse(soft.get(i), stiff.get(i)))
                            .toList();
        }
        SealedUnitResult result = new SealedUnitResult(found, greatest(found));
        SealedUnitTrace.write(
                unit, result, check.gust.stream().map(Member::resistance).toList(), trace);
        return result;
    }

    /** Whether nothing about the sealed cavities is in doubt, or none are described. */
    static boolean passes(GlassRequest request, AllowableLoad load) {
        SealedUnitResult result = of(request, load, new Trace(TraceLevel.GOVERNING));
        if (result == null || result.cases().isEmpty()) {
            return true;
        }
        Double utilization = result.utilization();
        return utilization != null && utilization <= 1;
    }

    private static SealedUnitResult.Case worse(
            SealedUnitResult.Case one, SealedUnitResult.Case other) {
        Double mine = one.utilization();
        Double theirs = other.utilization();
        return mine == null || (theirs != null && mine >= theirs) ? one : other;
    }

    private List<SealedUnitResult.Case> run(AllowableLoad load) {
        SealedUnit.Sealing sealed = unit.sealed();
        winds(null, sealed.absolutePressure(), sealedTemperatures(request, sealed), load);
        for (SealedUnit.Climate climate : unit.service()) {
            int cavities = request.glass().panes().size() - 1;
            winds(climate, climate.absolutePressure(), climate.temperatures(cavities), load);
        }
        return cases;
    }

    private static List<Double> sealedTemperatures(
            GlassRequest request, SealedUnit.Sealing sealed) {
        return request.glass().panes().stream().skip(1).map(pane -> sealed.temperature()).toList();
    }

    private void winds(
            SealedUnit.@Nullable Climate climate,
            double ambient,
            List<Double> temperatures,
            AllowableLoad load) {
        SealedCavities.Air air =
                new SealedCavities.Air(
                        unit.sealed().absolutePressure(),
                        unit.sealed().temperature(),
                        ambient,
                        temperatures);
        List<Member> lasting = climate == null ? gust : members(climate.duration());
        if (climate != null) {
            State alone = solve(lasting, air, 0);
            add(
                    climate,
                    null,
                    alone,
                    lasting,
                    ambient,
                    pane -> {
                        double pressure = alone.panePressures().get(pane);
                        return Math.abs(pressure) / lasting.get(pane).resistance();
                    });
        }
        State still = solve(gust, air, 0);
        if (load.positive() != null) {
            wind(climate, PressureSign.POSITIVE, load.positive(), air, still, lasting);
        }
        if (load.negative() != null) {
            wind(climate, PressureSign.NEGATIVE, load.negative(), air, still, lasting);
        }
    }

    private void wind(
            SealedUnit.@Nullable Climate climate,
            PressureSign sign,
            double wind,
            SealedCavities.Air air,
            State still,
            List<Member> lasting) {
        State state = solve(gust, air, wind);
        add(
                climate,
                sign,
                state,
                gust,
                air.ambient(),
                pane -> {
                    double whole = state.panePressures().get(pane);
                    double constant = still.panePressures().get(pane);
                    double brief = gust.get(pane).resistance();
                    double slow = lasting.get(pane).resistance();
                    return Math.max(
                            Math.max(Math.abs(whole) / brief, Math.abs(constant) / slow),
                            Math.abs(constant / slow + (whole - constant) / brief));
                });
    }

    private State solve(List<Member> members, SealedCavities.Air air, double wind) {
        return SealedCavities.solve(
                members.stream().map(Member::bending).toList(),
                request.width() * request.height(),
                widths(),
                air,
                wind);
    }

    private List<Double> widths() {
        return Objects.requireNonNull(request.glass().cavities()).stream()
                .map(Cavity::width)
                .toList();
    }

    private void add(
            SealedUnit.@Nullable Climate climate,
            @Nullable PressureSign sign,
            State state,
            List<Member> members,
            double ambient,
            IntToDoubleFunction use) {
        List<SealedUnitResult.PaneState> panes = new ArrayList<>();
        List<@Nullable Double> middles = new ArrayList<>();
        double greatest = 0;
        for (int i = 0; i < members.size(); i++) {
            double pressure = state.panePressures().get(i);
            Member member = members.get(i);
            if (!member.bending().covers(pressure) || !member.stressed().covers(pressure)) {
                middles.add(null);
                panes.add(pane(pressure, null, null, null));
                continue;
            }
            double middle =
                    Math.copySign(member.bending().respond(pressure).centreDeflection(), pressure);
            double used = use.applyAsDouble(i);
            greatest = Math.max(greatest, used);
            middles.add(middle);
            panes.add(
                    pane(
                            pressure,
                            Quantity.of(Dimension.LENGTH, middle),
                            Quantity.of(
                                    Dimension.STRESS,
                                    member.stressed().respond(pressure).maxPrincipalStress()),
                            used));
        }
        List<SealedUnitResult.CavityState> cavities = cavities(state, middles, ambient);
        boolean sound =
                !middles.contains(null)
                        && cavities.stream().noneMatch(SealedUnitResult.CavityState::panesTouch);
        cases.add(
                new SealedUnitResult.Case(
                        climate == null ? null : climate.name(),
                        sign,
                        cavities,
                        panes,
                        sound ? (Double) greatest : null));
    }

    private List<SealedUnitResult.CavityState> cavities(
            State state, List<@Nullable Double> middles, double ambient) {
        List<SealedUnitResult.CavityState> cavities = new ArrayList<>();
        List<Double> widths = widths();
        for (int j = 0; j < widths.size(); j++) {
            Double before = middles.get(j);
            Double behind = middles.get(j + 1);
            Double gap = before == null || behind == null ? null : widths.get(j) - before + behind;
            cavities.add(
                    new SealedUnitResult.CavityState(
                            Quantity.of(
                                    Dimension.PRESSURE, state.cavityPressures().get(j) - ambient),
                            gap == null ? null : Quantity.of(Dimension.LENGTH, Math.max(0, gap)),
                            gap != null && gap <= 0));
        }
        return cavities;
    }

    private static SealedUnitResult.PaneState pane(
            double pressure,
            @Nullable Quantity deflection,
            @Nullable Quantity stress,
            @Nullable Double utilization) {
        return new SealedUnitResult.PaneState(
                Quantity.of(Dimension.PRESSURE, pressure), deflection, stress, utilization);
    }

    private List<Member> members(double duration) {
        List<Member> members = new ArrayList<>();
        List<Pane> panes = request.glass().panes();
        for (int i = 0; i < panes.size(); i++) {
            Pane pane = panes.get(i);
            EffectiveThickness thickness = PaneSums.thickness(pane, model, duration);
            double base = PaneSums.resistance(model, thickness, request.probability(), i);
            boolean twoDurations = pane.heatTreatment() != HeatTreatment.ANNEALED;
            double lasting =
                    twoDurations && !LoadDuration.isShort(duration) ? LoadDuration.LONG : duration;
            members.add(
                    new Member(
                            sheet(rigid ? thickness.onePiece() : thickness.deflection(), i),
                            sheet(thickness.stress(), i),
                            base * GlassTypeFactor.of(panes, i, lasting)));
        }
        return List.copyOf(members);
    }

    /** A sheet that the plate solution covers. */
    private Sheet sheet(double thickness, int index) {
        try {
            model.greatestPressure(thickness);
        } catch (IllegalArgumentException beyond) {
            throw FaultsException.outOfRange(
                    GlassRequest.panePointer(index), model.refusal(thickness));
        }
        return new Sheet(model, thickness);
    }

    private static @Nullable Double greatest(List<SealedUnitResult.Case> cases) {
        double greatest = 0;
        for (SealedUnitResult.Case each : cases) {
            Double utilization = each.utilization();
            if (utilization == null) {
                return null;
            }
            greatest = Math.max(greatest, utilization);
        }
        return greatest;
    }

    /** The case of the greatest utilization; null where there is none. */
    static SealedUnitResult.@Nullable Case worst(SealedUnitResult result) {
        SealedUnitResult.Case worst = null;
        double greatest = -1;
        for (SealedUnitResult.Case each : result.cases()) {
            Double utilization = each.utilization();
            if (utilization != null && utilization > greatest) {
                greatest = utilization;
                worst = each;
            }
        }
        return worst;
    }
}
