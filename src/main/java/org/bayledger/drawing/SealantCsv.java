package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealantQuantity;
import org.bayledger.seals.TakeOffRow;
import org.jspecify.annotations.Nullable;

/**
 * A take-off of sealant as CSV (RFC 4180): a heading with the units, a line a kind of joint, a line
 * a kind that could not be counted, and a line a sealant with what is to be bought.
 */
final class SealantCsv {

    private SealantCsv() {}

    static byte[] write(SealantTakeOffResult result, UnitSystem units) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (TakeOffRow row : result.takeOff().rows()) {
            rows.add(
                    Arrays.asList(
                            row.step(),
                            row.type(),
                            row.count(),
                            plain(row.length(), units),
                            plain(row.beadWidth(), units),
                            plain(row.beadDepth(), units),
                            row.sealant() == null ? "GASKETS" : row.sealant(),
                            null,
                            plain(row.volume(), units),
                            plain(row.volumeWithWaste(), units),
                            null,
                            null));
        }
        for (JointType type : result.notCounted()) {
            rows.add(
                    Arrays.asList(
                            null,
                            type,
                            "not counted",
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null));
        }
        for (SealantQuantity sealant : result.takeOff().sealants()) {
            rows.add(
                    Arrays.asList(
                            null,
                            "TOTAL",
                            null,
                            null,
                            null,
                            null,
                            sealant.use(),
                            sealant.name(),
                            plain(sealant.volume(), units),
                            plain(sealant.volumeWithWaste(), units),
                            sealant.cartridges(),
                            sealant.sausages()));
        }
        return CsvText.write(
                List.of(
                        "step",
                        "joint",
                        "count",
                        "length (" + Dimension.DISTANCE.symbol(units) + ")",
                        "bead width (" + Dimension.LENGTH.symbol(units) + ")",
                        "bead depth (" + Dimension.LENGTH.symbol(units) + ")",
                        "sealant",
                        "name",
                        "in place (" + Dimension.VOLUME.symbol(units) + ")",
                        "with waste (" + Dimension.VOLUME.symbol(units) + ")",
                        "cartridges",
                        "or sausages"),
                rows);
    }

    private static String plain(Quantity quantity, UnitSystem units) {
        return quantity.value(units).toPlainString();
    }
}
