package org.bayledger.platform;

import java.io.IOException;
import java.io.Writer;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/**
 * Answers for requests that the container itself refuses, such as an illegal character in the
 * request line, as a problem instead of the container's page. The container makes it by its name.
 */
public final class ProblemReportValve extends ErrorReportValve {

    private static final JsonMapper JSON = JsonMapper.shared();

    @Override
    protected void report(Request request, Response response, @Nullable Throwable cause) {
        int status = response.getStatus();
        if (status < 400 || response.getContentWritten() > 0 || !response.setErrorReported()) {
            return;
        }
        ProblemKind kind = ProblemKind.of(status);
        try {
            response.setContentType("application/problem+json");
            response.setCharacterEncoding("utf-8");
            Writer writer = response.getReporter();
            if (writer != null) {
                writer.write(JSON.writeValueAsString(Problem.of(kind, kind.meaning(), null)));
                response.finishResponse();
            }
        } catch (IOException e) {
            container.getLogger().debug("the caller hung up", e);
        }
    }
}
