package org.bayledger.drawing;

/** The weights of lines, all black. */
enum Stroke {
    /** Frame of the sheet, outline of what the drawing is of. */
    HEAVY("1.4", ""),
    /** Outlines of bays, members, glass. */
    MEDIUM("0.8", ""),
    /** Column and row lines, tables, dimensions, leaders. */
    FINE("0.4", ""),
    /** Borders that are not seen on the wall. */
    DASHED("0.6", "5 2.5");

    private final String width;
    private final String dashes;

    Stroke(String width, String dashes) {
        this.width = width;
        this.dashes = dashes;
    }

    /** Attributes of a shape that is drawn with it and filled so. */
    String[] attributes(String fill, String... shape) {
        boolean dashed = !dashes.isEmpty();
        String[] all = new String[shape.length + (dashed ? 8 : 6)];
        System.arraycopy(shape, 0, all, 0, shape.length);
        int at = shape.length;
        all[at] = "fill";
        all[at + 1] = fill;
        all[at + 2] = "stroke";
        all[at + 3] = "black";
        all[at + 4] = "stroke-width";
        all[at + 5] = width;
        if (dashed) {
            all[at + 6] = "stroke-dasharray";
            all[at + 7] = dashes;
        }
        return all;
    }
}
