package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;

/**
 * The storeys of a window wall: the runs of rows between edges of slabs.
 *
 * @param storeys each from slab to slab, from the sill up
 * @param slabs the slab edges, from the sill up
 */
record Storeys(List<Band> storeys, List<Band> slabs) {

    /**
     * Rows that follow one another.
     *
     * @param bottom height of its lower edge above the sill of the frame, m
     * @param rows heights of its rows, m
     */
    record Band(double bottom, List<Double> rows) {

        double height() {
            return rows.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    static Storeys of(List<Double> rows, WindowWallFrame frame) {
        List<Band> storeys = new ArrayList<>();
        List<Band> slabs = new ArrayList<>();
        List<Double> run = new ArrayList<>();
        double at = 0;
        double bottom = 0;
        for (int i = 0; i < rows.size(); i++) {
            double row = rows.get(i);
            if (frame.slabRows().contains(i + 1)) {
                close(storeys, bottom, run);
                slabs.add(new Band(at, List.of(row)));
                bottom = at + row;
            } else {
                run.add(row);
            }
            at += row;
        }
        close(storeys, bottom, run);
        return new Storeys(storeys, slabs);
    }

    private static void close(List<Band> storeys, double bottom, List<Double> run) {
        if (!run.isEmpty()) {
            storeys.add(new Band(bottom, List.copyOf(run)));
            run.clear();
        }
    }

    List<Double> heights() {
        return storeys.stream().map(Band::height).toList();
    }

    /** Horizontals of all storeys: one more than rows in each. */
    int horizontals() {
        return storeys.stream().mapToInt(storey -> storey.rows().size() + 1).sum();
    }
}
