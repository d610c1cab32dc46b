package org.bayledger.platform;

import com.fasterxml.jackson.databind.JavaType;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/**
 * Stands in for the service's own records while the document is gathered: a reference that names
 * the Java type, which {@link ContractDocument} replaces once it knows who sends what.
 */
final class RecordConverter implements ModelConverter {

    private static final String OWN = "#/components/schemas/org.bayledger.";

    @Override
    @SuppressWarnings("rawtypes")
    public @Nullable Schema resolve(
            AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> chain) {
        JavaType java = Json.mapper().constructType(type.getType());
        Class<?> raw = java == null ? Object.class : java.getRawClass();
        if (raw.isRecord() && raw.getName().startsWith("org.bayledger.")) {
            return new JsonSchema().$ref("#/components/schemas/" + java.toCanonical());
        }
        return chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
    }

    /** The type that a reference stands for, or null where it is an ordinary one. */
    static @Nullable JavaType type(@Nullable String reference) {
        return reference != null && reference.startsWith(OWN)
                ? Json.mapper()
                        .getTypeFactory()
                        .constructFromCanonical(
                                reference.substring("#/components/schemas/".length()))
                : null;
    }
}
