package org.bayledger.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A second way to solve a beam, for the tests: cubic Hermite elements between all places where
 * anything changes, assembled into a dense stiffness matrix, each node with its deflection and a
 * slope on either side (tied unless hinged). It shares nothing with {@link Beam} but the model.
 */
final class BeamByStiffness {

    final double[] places;
    final double[] deflections;
    final double[] reactions;

    BeamByStiffness(BeamModel model) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, model.length()));
        cuts.addAll(model.supports());
        cuts.addAll(model.hinges());
        model.rigidity().forEach(step -> cuts.add(step.from()));
        for (BeamLoad load : model.loads()) {
            if (load instanceof BeamLoad.Distributed d) {
                cuts.addAll(List.of(d.from(), d.to()));
            } else if (load instanceof BeamLoad.Force f) {
                cuts.add(f.at());
            } else if (load instanceof BeamLoad.Moment m) {
                cuts.add(m.at());
            }
        }
        List<Double> nodes = new ArrayList<>(cuts);
        int n = nodes.size();
        int[] before = new int[n];
        int[] after = new int[n];
        int size = n;
        for (int i = 0; i < n; i++) {
            before[i] = size++;
            after[i] = model.hinges().contains(nodes.get(i)) ? size++ : before[i];
        }

        double[][] k = new double[size][size];
        double[] f = new double[size];
        for (int e = 0; e < n - 1; e++) {
            double x = nodes.get(e);
            double l = nodes.get(e + 1) - x;
            double ei = 0;
            for (BeamRigidityStep step : model.rigidity()) {
                if (step.from() <= x) {
                    ei = step.rigidity();
                }
            }
            int[] at = {e, after[e], e + 1, before[e + 1]};
            double[][] element = {
                {12, 6 * l, -12, 6 * l},
                {6 * l, 4 * l * l, -6 * l, 2 * l * l},
                {-12, -6 * l, 12, -6 * l},
                {6 * l, 2 * l * l, -6 * l, 4 * l * l}
            };
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    k[at[i]][at[j]] += element[i][j] * ei / (l * l * l);
                }
            }
            for (BeamLoad load : model.loads()) {
                if (load instanceof BeamLoad.Distributed d && d.from() <= x && d.to() > x) {
                    double rise = (d.atTo() - d.atFrom()) / (d.to() - d.from());
                    double p = d.atFrom() + rise * (x - d.from());
                    double q = p + rise * l;
                    f[at[0]] += l * (7 * p + 3 * q) / 20;
                    f[at[1]] += l * l * (3 * p + 2 * q) / 60;
                    f[at[2]] += l * (3 * p + 7 * q) / 20;
                    f[at[3]] -= l * l * (2 * p + 3 * q) / 60;
                }
            }
        }
        for (BeamLoad load : model.loads()) {
            if (load instanceof BeamLoad.Force p) {
                f[nodes.indexOf(p.at())] += p.force();
            } else if (load instanceof BeamLoad.Moment m) {
                f[before[nodes.indexOf(m.at())]] += m.moment();
            }
        }

        double[][] free = new double[size][];
        for (int i = 0; i < size; i++) {
            free[i] = k[i].clone();
        }
        double[] right = f.clone();
        for (double support : model.supports()) {
            int i = nodes.indexOf(support);
            free[i] = new double[size];
            free[i][i] = 1;
            right[i] = 0;
        }
        double[] u = eliminate(free, right);

        places = nodes.stream().mapToDouble(x -> x).toArray();
        deflections = java.util.Arrays.copyOf(u, n);
        reactions = new double[model.supports().size()];
        for (int s = 0; s < reactions.length; s++) {
            int i = nodes.indexOf(model.supports().get(s));
            reactions[s] = f[i];
            for (int j = 0; j < size; j++) {
                reactions[s] -= k[i][j] * u[j];
            }
        }
    }

    private static double[] eliminate(double[][] a, double[] b) {
        int n = b.length;
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int i = c + 1; i < n; i++) {
                if (Math.abs(a[i][c]) > Math.abs(a[pivot][c])) {
                    pivot = i;
                }
            }
            double[] row = a[c];
            a[c] = a[pivot];
            a[pivot] = row;
            double value = b[c];
            b[c] = b[pivot];
            b[pivot] = value;
            for (int i = c + 1; i < n; i++) {
                double factor = a[i][c] / a[c][c];
                if (factor != 0) {
                    for (int j = c; j < n; j++) {
                        a[i][j] -= factor * a[c][j];
                    }
                    b[i] -= factor * b[c];
                }
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int j = i + 1; j < n; j++) {
                b[i] -= a[i][j] * b[j];
            }
            b[i] /= a[i][i];
        }
        return b;
    }
}
