package org.bayledger.wind;

import java.util.List;
import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;

/**
 * What governs a component that touches several zones or heights: the greatest pressure of each
 * sign, which need not come from the same zone.
 *
 * @param positive the pressures among which the positive one is the greatest
 * @param negative the pressures among which the negative one is the greatest
 */
public record GoverningPressure(ZonePressure positive, ZonePressure negative) {

    public GoverningPressure {
        if (positive.basis() != negative.basis()) {
            throw new IllegalArgumentException("pressures of different bases can't be compared");
        }
    }

    /**
     * The governing pressures of those that a component touches.
     *
     * @param touched at least one, all of one basis
     */
    public static GoverningPressure of(List<ZonePressure> touched) {
        if (touched.isEmpty()) {
            throw new IllegalArgumentException("a component touches at least one zone");
        }
        ZonePressure away = touched.get(0);
        for (ZonePressure pressure : touched) {
            if (pressure.basis() != away.basis()) {
                throw new IllegalArgumentException(
                        "pressures of different bases can't be compared");
            }
            if (pressure.negative() < away.negative()) {
                away = pressure;
            }
        }
        ZonePressure toward = away;
        for (ZonePressure pressure : touched) {
            if (pressure.positive() > toward.positive()) {
                toward = pressure;
            }
        }
        return new GoverningPressure(toward, away);
    }

    /** Level of both pressures. */
    public LoadBasis basis() {
        return negative.basis();
    }

    /** Both pressures with their basis, as the checks that depend on them take a load. */
    public Load load() {
        return new Load(positive.positive(), negative.negative(), basis());
    }
}
