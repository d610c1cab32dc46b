package org.bayledger.drawing;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * Pages of HTML that are XML as well, from the templates under /pages. What stands between the tags
 * is escaped; a property that the template names and the page lacks is an error, never a gap.
 */
final class Page {

    private static final Mustache.Compiler COMPILER =
            Mustache.compiler().withLoader(Page::source).strictSections(true);

    private final Template template;

    private Page(Template template) {
        this.template = template;
    }

    /** The page of a template, by the template's name. */
    static Page of(String name) {
        try (Reader source = source(name)) {
            return new Page(COMPILER.compile(source));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    byte[] write(Object content) {
        return template.execute(content).getBytes(StandardCharsets.UTF_8);
    }

    private static Reader source(String name) {
        return new InputStreamReader(
                Objects.requireNonNull(Page.class.getResourceAsStream("/pages/" + name), name),
                StandardCharsets.UTF_8);
    }
}
