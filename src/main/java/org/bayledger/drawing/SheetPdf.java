package org.bayledger.drawing;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Semaphore;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;

/** A review sheet's page as a PDF with tags, title and language: the same page, the same bytes. */
final class SheetPdf {

    /**
     * Items of a job up to which a PDF is made: about 240 pages. It is laid out in memory as a
     * whole, for which a heap of 400 MB is enough at that length.
     */
    static final int MOST_ITEMS = 1000;

    /** PDFs that are laid out at the same time; others wait, so that memory has a bound. */
    private static final Semaphore AT_ONCE = new Semaphore(2, true);

    /** The one family, which has the signs of the verdicts. */
    private static final String FONT = "/liberation/LiberationSans-";

    /** Tags of tables in the font: that of substitutions, and one that no reader knows. */
    private static final int GSUB = 0x47535542;

    private static final int NONE = 0x7a7a7a7a;

    private static final byte[] REGULAR_FONT = font("Regular");
    private static final byte[] BOLD_FONT = font("Bold");

    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    static {
        // its notes on every font and page are of no use to whoever runs the service
        XRLog.setLoggingEnabled(false);
    }

    private SheetPdf() {}

    /** Refuses a job that is too large, before anything is drawn. */
    static void requireFew(long items) {
        if (items > MOST_ITEMS) {
            throw new FaultsException(
                    List.of(
                            new Fault(
                                    "",
                                    "this job has "
                                            + items
                                            + " items, and a PDF is made of up to "
                                            + MOST_ITEMS
                                            + "; take the page instead (Accept: text/html) and"
                                            + " print that, or send fewer bays",
                                    Fault.Kind.OUT_OF_RANGE)));
        }
    }

    static byte[] of(byte[] page, SheetOrigin origin) {
        AT_ONCE.acquireUninterruptibly();
        try {
            return write(page, origin);
        } finally {
            AT_ONCE.release();
        }
    }

    private static byte[] write(byte[] page, SheetOrigin origin) {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.useFont(
                () -> new ByteArrayInputStream(REGULAR_FONT),
                "sheet",
                REGULAR,
                FontStyle.NORMAL,
                true);
        builder.useFont(
                () -> new ByteArrayInputStream(BOLD_FONT), "sheet", BOLD, FontStyle.NORMAL, true);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useExternalResourceAccessControl(
                // nothing is ever fetched; what the page shows stands in it
                (uri, type) -> uri == null || uri.startsWith("data:"),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withHtmlContent(new String(page, StandardCharsets.UTF_8), null);
        builder.withProducer("Bayledger");
        builder.toStream(pdf);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            try (PDDocument document = renderer.createPDFKeepOpen()) {
                settle(document, page, origin);
                document.save(pdf);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pdf.toByteArray();
    }

    /** Takes the clock and chance out of the file. */
    private static void settle(PDDocument document, byte[] page, SheetOrigin origin) {
        Calendar at =
                origin.recordedAt() == null
                        ? null
                        : GregorianCalendar.from(
                                OffsetDateTime.parse(origin.recordedAt()).toZonedDateTime());
        document.getDocumentInformation().setCreationDate(at);
        document.setDocumentId((long) Arrays.hashCode(page));
    }

    /**
     * A style of the font without its table of substitutions, which hides it from the library of
     * PDFs: that library looks for ligatures with a regular expression for every piece of text,
     * which takes half the time of a sheet, and a text without ligatures is found by searching.
     */
    private static byte[] font(String style) {
        String name = FONT + style + ".ttf";
        try (InputStream stream = SheetPdf.class.getResourceAsStream(name)) {
            byte[] font = Objects.requireNonNull(stream, name).readAllBytes();
            ByteBuffer tables = ByteBuffer.wrap(font);
            // OpenType: number of tables at byte 4, entries of 16 bytes from byte 12, tag first
            int count = tables.getShort(4);
            for (int at = 12; at < 12 + 16 * count; at += 16) {
                if (tables.getInt(at) == GSUB) {
                    tables.putInt(at, NONE);
                }
            }
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
