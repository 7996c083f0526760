package org.holewise.school.system;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Objects;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** The last word on what went wrong: a page for people, a problem document for programs. */
@Controller
class ErrorPages implements ErrorController {

  @RequestMapping("/error")
  Object error(HttpServletRequest request, HttpServletResponse response) {
    HttpStatus status = status(request);
    String path = Objects.toString(request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI), "");
    if (path.startsWith(request.getContextPath() + "/api/")) {
      return ResponseEntity.status(status)
          .contentType(MediaType.APPLICATION_PROBLEM_JSON)
          .body(Problems.problem(status, detail(status)));
    }
    response.setStatus(status.value());
    return request.getAttribute(WayIn.STALE) == null ? page(status) : "error/stale";
  }

  private static HttpStatus status(HttpServletRequest request) {
    if (request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code) {
      var status = HttpStatus.resolve(code);
      return status == null ? HttpStatus.INTERNAL_SERVER_ERROR : status;
    }
    // Nothing went wrong: somebody typed the address of this page.
    return HttpStatus.NOT_FOUND;
  }

  private static String detail(HttpStatus status) {
    if (status.is5xxServerError()) {
      return "The server failed, and its log says why. Try again later.";
    }
    return status == HttpStatus.NOT_FOUND
        ? "Nothing is at this address."
        : "The request does not fit this address.";
  }

  private static String page(HttpStatus status) {
    if (status.is5xxServerError()) {
      return "error/5xx";
    }
    return switch (status) {
      case FORBIDDEN, NOT_FOUND -> "error/" + status.value();
      default -> "error/4xx";
    };
  }
}
