package org.bayledger.drawing;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** A review sheet's page as a PDF. */
final class SheetPdf {

    /** The one font, which the library of PDFs carries: it has the signs of the verdicts. */
    private static final String FONT =
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    static {
        // its notes on every font and page are of no use to whoever runs the service
        XRLog.setLoggingEnabled(false);
    }

    private SheetPdf() {}

    static byte[] of(byte[] page) {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useFont(SheetPdf::font, "sheet");
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useExternalResourceAccessControl(
                // nothing is ever fetched; what the page shows stands in it
                (uri, type) -> uri == null || uri.startsWith("data:"),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withHtmlContent(new String(page, StandardCharsets.UTF_8), null);
        builder.withProducer("Bayledger");
        builder.toStream(pdf);
        try {
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pdf.toByteArray();
    }

    private static InputStream font() {
        return Objects.requireNonNull(PdfRendererBuilder.class.getResourceAsStream(FONT), FONT);
    }
}
