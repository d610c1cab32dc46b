package org.bayledger.blocks;

import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.glazing.Pane;
import org.jspecify.annotations.Nullable;

/**
 * How far a setting block is pressed together.
 *
 * <pre>
 *   E = 0.0981 (56 + 7.62336 S) / (0.137505 (254 - 2.54 S))   MPa, S degrees Shore A
 *   q = l b / (2 t (l + b))                                    loaded over free area
 *   k = E (1 + q^2) l b / t
 * </pre>
 *
 * <p>E Young's modulus of a rubber: A. N. Gent, On the relation between indentation hardness and
 * Young's modulus, Rubber Chemistry and Technology 31 (1958), from memory; stated for 20 to 80
 * degrees, taken here up to 95, where published relations differ by about a factor of two. E (1 + 2
 * f q^2) is the stiffness between faces that hold it, f about 0.5 for a hard rubber: A. N. Gent and
 * P. B. Lindley, The compression of bonded rubber blocks, Proc. Inst. Mech. Eng. 173 (1959), from
 * memory. l length of the block, b width that glass presses on, t height. Hard packers have the
 * modulus of their material and no shape to their stiffness; what lies under a block is taken as
 * firm.
 */
final class BlockStiffness {

    private static final double SOFTEST = 20;
    private static final double HARDEST = 95;

    private BlockStiffness() {}

    /**
     * Young's modulus of a rubber, Pa.
     *
     * @param hardness S, degrees Shore A
     */
    static double modulus(double hardness) {
        return 0.0981e6 * (56 + 7.62336 * hardness) / (0.137505 * (254 - 2.54 * hardness));
    }

    /**
     * Compression of a block under a unit load, m/N, or null where something that it rests on is
     * not known.
     */
    static @Nullable Double compliance(InstalledBlock block, @Nullable GlassBuildUp glass) {
        Double width = contactWidth(block, glass);
        Double length = block.length();
        Double height = block.height();
        if (width == null || length == null || height == null) {
            return null;
        }
        Double hardness = block.hardness();
        Double hard = block.material() == null ? null : block.material().hardModulus();
        double apparent;
        if (hardness != null && hardness >= SOFTEST && hardness <= HARDEST) {
            double shape = length * width / (2 * height * (length + width));
            apparent = modulus(hardness) * (1 + shape * shape);
        } else if (hardness == null && hard != null) {
            apparent = hard;
        } else {
            return null;
        }
        return height / (apparent * length * width);
    }

    /** Width over which glass presses on a block, m, or null where it is not known. */
    static @Nullable Double contactWidth(InstalledBlock block, @Nullable GlassBuildUp glass) {
        Double width = block.width();
        if (glass == null) {
            return width;
        }
        double panes = glass.panes().stream().mapToDouble(Pane::thickness).sum();
        return width == null ? panes : (Double) Math.min(width, panes);
    }
}
