package org.bayledger.review;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.io.InputStream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.util.unit.DataSize;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** Bays from an IFC file. */
@RestController
@Tag(name = "Reviews")
class IfcImportEndpoint {

    private final int maxBytes;

    IfcImportEndpoint(@Value("${bayledger.limits.ifc:50MB}") DataSize maxBytes) {
        this.maxBytes = Math.toIntExact(maxBytes.toBytes());
    }

    @Operation(
            operationId = "importIfc",
            summary = "Take bays out of an IFC 4 file",
            description =
                    "ISO 16739 (schema IFC4; also IFC4X3, where what is read here is the same) in"
                            + " the clear text of ISO 10303-21: every IfcCurtainWall whose plates"
                            + " fill a grid in one vertical plane becomes a bay; plates may belong"
                            + " to units (IfcElementAssembly). Bodies are read where they are"
                            + " extruded rectangles or polygons, faceted or tessellated, mapped or"
                            + " not; a wall with a plate of another kind is skipped with the"
                            + " reason. The answer is a review document as far as the file goes,"
                            + " and what it lacks. Stores nothing.",
            requestBody =
                    @RequestBody(
                            required = true,
                            description = "The file.",
                            content = {
                                @Content(
                                        mediaType = "application/x-step",
                                        schema = @Schema(type = "string")),
                                @Content(
                                        mediaType = "model/step",
                                        schema = @Schema(type = "string"))
                            }))
    @PostMapping(
            path = "/v1/imports/ifc",
            consumes = {"application/x-step", "model/step"},
            produces = "application/json")
    IfcImportResult read(InputStream file) throws IOException {
        byte[] bytes = file.readNBytes(maxBytes + 1);
        if (bytes.length > maxBytes) {
            throw new ErrorResponseException(
                    HttpStatus.CONTENT_TOO_LARGE,
                    ProblemDetail.forStatusAndDetail(
                            HttpStatus.CONTENT_TOO_LARGE,
                            "The file is larger than the "
                                    + maxBytes
                                    + " bytes that are taken here; export the facade alone, one"
                                    + " part of the building at a time."),
                    null);
        }
        return IfcImport.run(bytes);
    }
}
