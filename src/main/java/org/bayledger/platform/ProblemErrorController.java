package org.bayledger.platform;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * Answers for errors that never reached an endpoint, where the container asks for an error page.
 */
@Hidden
@RestController
class ProblemErrorController implements ErrorController {

    @RequestMapping("/error")
    ResponseEntity<Problem> error(HttpServletRequest request) {
        int status =
                request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code
                        ? code
                        : ProblemKind.NOT_FOUND.status();
        ProblemKind kind = ProblemKind.of(status);
        Object path = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        Problem problem =
                Problem.of(kind, kind.meaning(), path == null ? null : String.valueOf(path));
        return ResponseEntity.status(kind.status())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }
}
