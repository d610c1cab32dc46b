package org.bayledger.contract;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** The kinds of bodies that the contract knows, and by what their first bytes are recognized. */
enum Media {
    JSON("application/json", "json", true, ""),
    SVG("image/svg+xml", "svg", true, "<"),
    CSV("text/csv", "csv", true, ""),
    STEP("application/x-step", "ifc", true, "ISO-10303-21;"),
    /** The same under the name that was registered later. */
    MODEL_STEP("model/step", "ifc", true, "ISO-10303-21;"),
    NDJSON("application/x-ndjson", "ndjson", true, "{\""),
    PROBLEM("application/problem+json", "json", true, "{"),
    /** A page with its drawings is longer than the operation's description is worth. */
    HTML("text/html", "html", false, "<!DOCTYPE html>"),
    PDF("application/pdf", "pdf", false, "%PDF-"),
    XLSX(
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            "xlsx",
            false,
            "PK\3\4"),
    ZIP("application/zip", "zip", false, "PK\3\4");

    private final String type;
    private final String suffix;
    private final boolean shown;
    private final String beginning;

    Media(String type, String suffix, boolean shown, String beginning) {
        this.type = type;
        this.suffix = suffix;
        this.shown = shown;
        this.beginning = beginning;
    }

    /** The kind with a media type, whatever the parameters behind it. */
    static Media of(String type) {
        String plain = type.replaceFirst("\\s*;.*", "");
        return Arrays.stream(values())
                .filter(media -> media.type.equals(plain))
                .findFirst()
                .orElseThrow(() -> new AssertionError("a media type of no kind here: " + type));
    }

    /** Media type without parameters. */
    String type() {
        return type;
    }

    /** Suffix of files. */
    String suffix() {
        return suffix;
    }

    /** Whether the contract shows an example. */
    boolean shown() {
        return shown;
    }

    /** What is wrong with a body's first bytes. */
    List<String> faults(byte[] body) {
        String text = new String(body, StandardCharsets.UTF_8);
        return !text.isBlank() && text.startsWith(beginning)
                ? List.of()
                : List.of(
                        "is no " + type + " but " + text.substring(0, Math.min(80, text.length())));
    }
}
