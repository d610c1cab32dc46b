package org.bayledger.platform;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.List;
import org.bayledger.check.Cautions;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** The OpenAPI document that the service serves of itself. */
@Configuration(proxyBeanMethods = false)
class ContractConfiguration {

    private static final String DESCRIPTION =
            """
            Curtain-wall checks, bay by bay and revision by revision, and a ledger that shows later \
            what was checked.

            %s

            A quantity in a request is a text with a unit, such as `"120 mph"`, or an object with \
            value and unit; every computed quantity in an answer is such an object. Null is the \
            same as absent. Properties and query parameters that are not described here are \
            refused. Answers may gain properties, and their enumerated texts may gain values: \
            callers should pass over what they do not know.

            Every fault is answered as `application/problem+json` (RFC 9457) with all its errors \
            at once, each with a JSON pointer into the body. Beside the problems listed with each \
            operation, a path that is not described here answers 404, another method 405, and a \
            request line or header fields that are too large 400, 414 or 431.

            Every answer has an `X-Request-Id`, which the service's log repeats; a caller may send \
            one of its own (1 to 64 letters, digits, `.`, `_` and `-`).
            """;

    private static final List<Tag> TAGS =
            List.of(
                    tag("Checks", "One check on what is sent; stores nothing."),
                    tag("Drawings", "Pictures to scale, of what is sent or was recorded."),
                    tag(
                            "Ledger",
                            "Projects and their revisions: recorded, read, compared, proven."),
                    tag("Reviews", "A whole job through all checks; stores nothing."),
                    tag("Selection", "Sections and spans that pass the checks."),
                    tag("Take-offs", "How much of everything a job needs."));

    private static Tag tag(String name, String description) {
        return new Tag().name(name).description(description);
    }

    @Bean
    OpenAPI contract(ObjectProvider<BuildProperties> build) {
        BuildProperties properties = build.getIfAvailable();
        return new OpenAPI()
                .info(
                        new Info()
                                .title("Bayledger")
                                .version(
                                        properties == null
                                                ? "development"
                                                : properties.getVersion())
                                .description(
                                        DESCRIPTION.formatted(String.join(" ", Cautions.with())))
                                .license(
                                        new License()
                                                .name("Apache License 2.0")
                                                .identifier("Apache-2.0")))
                .tags(TAGS)
                .servers(List.of(new Server().url("/").description("This service")));
    }

    @Bean
    RecordConverter recordConverter() {
        return new RecordConverter();
    }

    @Bean
    ContractDocument contractDocument(
            @Qualifier("requestMappingHandlerMapping")
                    ObjectProvider<RequestMappingHandlerMapping> mapping) {
        return new ContractDocument(mapping);
    }
}
