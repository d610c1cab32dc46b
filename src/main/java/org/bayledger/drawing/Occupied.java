package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Rectangles of a sheet that are taken, found by where they are. */
final class Occupied {

    /** Width and height of a cell, points: about that of a few words. */
    private static final double CELL = 40;

    private record Cell(int x, int y) {}

    private final Map<Cell, List<Box>> cells = new HashMap<>();

    void add(Box box) {
        any(
                box,
                cell -> {
                    cells.computeIfAbsent(cell, place -> new ArrayList<>()).add(box);
                    return false;
                });
    }

    /** Whether a rectangle stands on one that is taken. */
    boolean meets(Box box) {
        return any(
                box, cell -> cells.getOrDefault(cell, List.of()).stream().anyMatch(box::overlaps));
    }

    private static boolean any(Box box, Predicate<Cell> of) {
        for (int x = cell(box.x()); x <= cell(box.right()); x++) {
            for (int y = cell(box.y()); y <= cell(box.bottom()); y++) {
                if (of.test(new Cell(x, y))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int cell(double at) {
        return (int) Math.floor(at / CELL);
    }
}
