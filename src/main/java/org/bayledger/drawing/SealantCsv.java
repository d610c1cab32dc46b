package org.bayledger.drawing;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealantQuantity;
import org.bayledger.seals.TakeOffRow;

/**
 * A take-off of sealant as CSV (RFC 4180): a heading with the units, a line a kind of joint, a line
 * a kind that could not be counted, and a line a sealant with what is to be bought.
 */
final class SealantCsv {

    private SealantCsv() {}

    static byte[] write(SealantTakeOffResult result, UnitSystem units) {
        StringWriter text = new StringWriter();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord(
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
                    "or sausages");
            for (TakeOffRow row : result.takeOff().rows()) {
                csv.printRecord(
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
                        null);
            }
            for (JointType type : result.notCounted()) {
                csv.printRecord(
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
                        null);
            }
            for (SealantQuantity sealant : result.takeOff().sealants()) {
                csv.printRecord(
                        null,
                        "TOTAL",
                        null,
                        null,
                        null,
                        null,
                        sealant.use(),
                        CsvText.cell(sealant.name()),
                        plain(sealant.volume(), units),
                        plain(sealant.volumeWithWaste(), units),
                        sealant.cartridges(),
                        sealant.sausages());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String plain(Quantity quantity, UnitSystem units) {
        return quantity.value(units).toPlainString();
    }
}
