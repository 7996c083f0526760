package org.holewise.school.system;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Takes a body of the API only up to a size, whether or not its length was announced. */
final class BodyLimit extends OncePerRequestFilter {

  private static final int ONE = 256 * 1024;
  private static final int BATCH = 8 * 1024 * 1024;

  private final Problems problems;

  BodyLimit(Problems problems) {
    this.problems = problems;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    int limit = request.getServletPath().endsWith("/batch") ? BATCH : ONE;
    if (request.getContentLengthLong() > limit) {
      problems.tooLarge(response, limit);
      return;
    }
    byte[] body = request.getInputStream().readNBytes(limit + 1);
    if (body.length > limit) {
      problems.tooLarge(response, limit);
      return;
    }
    chain.doFilter(new Read(request, body), response);
  }

  /** The request with its body, read before. */
  private static final class Read extends HttpServletRequestWrapper {

    private final Body body;

    Read(HttpServletRequest request, byte[] bytes) {
      super(request);
      body = new Body(new ByteArrayInputStream(bytes));
    }

    @Override
    public ServletInputStream getInputStream() {
      return body;
    }
  }

  private static final class Body extends ServletInputStream {

    private final ByteArrayInputStream bytes;

    Body(ByteArrayInputStream bytes) {
      this.bytes = bytes;
    }

    @Override
    public int read() {
      return bytes.read();
    }

    @Override
    public int read(byte[] target, int offset, int length) {
      return bytes.read(target, offset, length);
    }

    @Override
    public boolean isFinished() {
      return bytes.available() == 0;
    }

    @Override
    public boolean isReady() {
      return true;
    }

    @Override
    public void setReadListener(ReadListener listener) {
      throw new UnsupportedOperationException("the body is read already");
    }
  }
}
