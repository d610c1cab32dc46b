package org.bayledger.mechanics;

import java.util.Arrays;
import java.util.List;

/**
 * A beam cut wherever its rigidity, its load or what holds it changes. On each segment the rigidity
 * is constant and the load a straight line, so that from the state at its start the state anywhere
 * on it follows exactly. With w the load, V the shear, M the bending moment (positive where the
 * side the load points to is in tension), t the slope, v the deflection and s the distance from the
 * segment's start:
 *
 * <pre>
 *   w(s) = w0 + w1 s
 *   V(s) = V0 - w0 s - w1 s^2/2
 *   M(s) = M0 + V0 s - w0 s^2/2 - w1 s^3/6
 *   t(s) = t0 - (M0 s + V0 s^2/2 - w0 s^3/6 - w1 s^4/24) / EI
 *   v(s) = v0 + t0 s - (M0 s^2/2 + V0 s^3/6 - w0 s^4/24 - w1 s^5/120) / EI
 * </pre>
 *
 * <p>The state at a segment's start is the one just past the force and the moment that act there.
 */
final class BeamSegments {

    final int count;

    /** Start of each segment, and last the end of the beam, m. */
    final double[] start;

    /** Load at the segment's start, N/m, and its change along the segment, N/m2. */
    final double[] load;

    final double[] loadSlope;

    /** Flexural rigidity, N m2. */
    final double[] rigidity;

    /** Force (N) and moment (N m) at the segment's start, and last those at the beam's end. */
    final double[] force;

    final double[] couple;

    /** State just past each segment's start: N, N m, rad, m. */
    final double[] shear;

    final double[] moment;
    final double[] slope;
    final double[] deflection;

    /** State just before the end of the stretch marched along last. */
    double endShear;

    double endMoment;
    double endSlope;
    double endDeflection;

    /**
     * @param model the beam
     * @param nodes where it is held or hinged, m, increasing; places of the model that are the same
     *     place as one of these, or as an end of the beam, are taken to be exactly there
     */
    BeamSegments(BeamModel model, double[] nodes) {
        List<BeamLoad> loads = model.loads();
        List<BeamRigidityStep> steps = model.rigidity();
        double length = model.length();
        double near = model.onePlace();

        double[] places = new double[2 + nodes.length + steps.size() + 2 * loads.size()];
        int n = 0;
        places[n++] = 0;
        places[n++] = length;
        for (double node : nodes) {
            places[n++] = node;
        }
        for (BeamRigidityStep step : steps) {
            places[n++] = snap(step.from(), nodes, length, near);
        }
        for (BeamLoad load : loads) {
            if (load instanceof BeamLoad.Distributed d) {
                places[n++] = snap(d.from(), nodes, length, near);
                places[n++] = snap(d.to(), nodes, length, near);
            } else if (load instanceof BeamLoad.Force f) {
                places[n++] = snap(f.at(), nodes, length, near);
            } else if (load instanceof BeamLoad.Moment m) {
                places[n++] = snap(m.at(), nodes, length, near);
            }
        }
        Arrays.sort(places, 0, n);
        int distinct = 0;
        for (int i = 1; i < n; i++) {
            if (places[i] != places[distinct]) {
                places[++distinct] = places[i];
            }
        }
        start = Arrays.copyOf(places, distinct + 1);
        count = distinct;
        load = new double[count];
        loadSlope = new double[count];
        rigidity = new double[count];
        force = new double[count + 1];
        couple = new double[count + 1];
        shear = new double[count];
        moment = new double[count];
        slope = new double[count];
        deflection = new double[count];

        for (BeamRigidityStep step : steps) {
            int from = indexOf(snap(step.from(), nodes, length, near));
            Arrays.fill(rigidity, from, count, step.rigidity());
        }
        for (BeamLoad each : loads) {
            if (each instanceof BeamLoad.Distributed d) {
                double from = snap(d.from(), nodes, length, near);
                double to = snap(d.to(), nodes, length, near);
                double change = (d.atTo() - d.atFrom()) / (to - from);
                for (int i = indexOf(from); start[i] < to; i++) {
                    load[i] += d.atFrom() + change * (start[i] - from);
                    loadSlope[i] += change;
                }
            } else if (each instanceof BeamLoad.Force f) {
                force[indexOf(snap(f.at(), nodes, length, near))] += f.force();
            } else if (each instanceof BeamLoad.Moment m) {
                couple[indexOf(snap(m.at(), nodes, length, near))] += m.moment();
            }
        }
    }

    /**
     * The sum of two states of one beam, each times a factor: within Bernoulli's theory of bending
     * everything is linear in the loads. Both must be cut at the same places.
     */
    BeamSegments(BeamSegments one, double factor, BeamSegments other, double otherFactor) {
        if (!Arrays.equals(one.start, other.start)
                || !Arrays.equals(one.rigidity, other.rigidity)) {
            throw new IllegalArgumentException(
                    "only states of the same beam, cut at the same places, can be added");
        }
        start = one.start;
        count = one.count;
        rigidity = one.rigidity;
        load = sum(one.load, factor, other.load, otherFactor);
        loadSlope = sum(one.loadSlope, factor, other.loadSlope, otherFactor);
        force = sum(one.force, factor, other.force, otherFactor);
        couple = sum(one.couple, factor, other.couple, otherFactor);
        shear = sum(one.shear, factor, other.shear, otherFactor);
        moment = sum(one.moment, factor, other.moment, otherFactor);
        slope = sum(one.slope, factor, other.slope, otherFactor);
        deflection = sum(one.deflection, factor, other.deflection, otherFactor);
    }

    static double[] sum(double[] one, double factor, double[] other, double otherFactor) {
        double[] sum = new double[one.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = factor * one[i] + otherFactor * other[i];
        }
        return sum;
    }

    static double snap(double at, double[] nodes, double length, double near) {
        for (double node : nodes) {
            if (Math.abs(at - node) <= near) {
                return node;
            }
        }
        if (at <= near) {
            return 0;
        }
        return at >= length - near ? length : at;
    }

    /** The segment that begins at exactly this place, or {@code count} for the beam's end. */
    int indexOf(double at) {
        return Arrays.binarySearch(start, at);
    }

    /** The segment on which a place lies, the one that begins there where two meet. */
    int segmentAt(double at) {
        int i = Arrays.binarySearch(start, at);
        return Math.min(i >= 0 ? i : -i - 2, count - 1);
    }

    double lengthOf(int i) {
        return start[i + 1] - start[i];
    }

    /**
     * Carries a state, given just before the loads at the start of segment {@code first}, along the
     * segments up to the start of {@code beyond}; leaves it at the end just before the loads there.
     */
    void march(
            int first,
            int beyond,
            double startShear,
            double startMoment,
            double startSlope,
            double startDeflection) {
        double v = startShear;
        double m = startMoment;
        double t = startSlope;
        double d = startDeflection;
        for (int i = first; i < beyond; i++) {
            v -= force[i];
            m += couple[i];
            shear[i] = v;
            moment[i] = m;
            slope[i] = t;
            deflection[i] = d;
            double s = lengthOf(i);
            v = shearAt(i, s);
            m = momentAt(i, s);
            t = slopeAt(i, s);
            d = deflectionAt(i, s);
        }
        endShear = v;
        endMoment = m;
        endSlope = t;
        endDeflection = d;
    }

    double shearAt(int i, double s) {
        return shear[i] - s * (load[i] + s * loadSlope[i] / 2);
    }

    double momentAt(int i, double s) {
        return moment[i] + s * (shear[i] - s * (load[i] / 2 + s * loadSlope[i] / 6));
    }

    double slopeAt(int i, double s) {
        double bent = moment[i] + s * (shear[i] / 2 - s * (load[i] / 6 + s * loadSlope[i] / 24));
        return slope[i] - s * bent / rigidity[i];
    }

    double deflectionAt(int i, double s) {
        double bent =
                moment[i] / 2 + s * (shear[i] / 6 - s * (load[i] / 24 + s * loadSlope[i] / 120));
        return deflection[i] + s * (slope[i] - s * bent / rigidity[i]);
    }
}
