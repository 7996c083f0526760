package org.holewise.route;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A kept connection that sends any bytes as a request, however wrong, and reads the answer as RFC
 * 9112, section 6, frames it.
 */
final class Wire implements AutoCloseable {

  private static final int PATIENCE_MILLIS = 20_000;

  private final Socket socket;
  private final InputStream in;
  private boolean open = true;

  /** What came back; header names in small letters. */
  record Answer(int status, Map<String, String> headers, String body) {

    String header(String name) {
      return headers.getOrDefault(name, "");
    }
  }

  Wire(int port) throws IOException {
    socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setSoTimeout(PATIENCE_MILLIS);
    socket.setTcpNoDelay(true);
    in = new BufferedInputStream(socket.getInputStream());
  }

  /** This connection, or a new one where it was closed. */
  Wire orNew(int port) throws IOException {
    if (open) {
      return this;
    }
    close();
    return new Wire(port);
  }

  Answer send(byte[] request, boolean head) throws IOException {
    socket.getOutputStream().write(request);
    Answer answer = answer(head);
    while (answer.status() < 200) {
      answer = answer(head);
    }
    open = open && !answer.header("connection").equalsIgnoreCase("close");
    return answer;
  }

  private Answer answer(boolean head) throws IOException {
    int status = Integer.parseInt(line().split(" ", 3)[1]);
    var headers = new HashMap<String, String>();
    for (String line = line(); !line.isEmpty(); line = line()) {
      int colon = line.indexOf(':');
      headers.put(
          line.substring(0, colon).toLowerCase(Locale.ROOT), line.substring(colon + 1).strip());
    }
    boolean bare = head || status < 200 || status == 204 || status == 304;
    return new Answer(status, headers, bare ? "" : new String(body(headers), UTF_8));
  }

  private byte[] body(Map<String, String> headers) throws IOException {
    if (headers.getOrDefault("transfer-encoding", "").equals("chunked")) {
      return chunks();
    }
    String length = headers.get("content-length");
    if (length != null) {
      return exactly(Integer.parseInt(length));
    }
    open = false;
    return in.readAllBytes();
  }

  private byte[] chunks() throws IOException {
    var all = new ByteArrayOutputStream();
    for (int size = size(); size > 0; size = size()) {
      all.write(exactly(size));
      line();
    }
    line();
    return all.toByteArray();
  }

  private int size() throws IOException {
    return Integer.parseInt(line().split(";")[0].strip(), 16);
  }

  private byte[] exactly(int length) throws IOException {
    byte[] bytes = in.readNBytes(length);
    if (bytes.length < length) {
      throw new EOFException("the answer ends after " + bytes.length + " of " + length);
    }
    return bytes;
  }

  private String line() throws IOException {
    var line = new ByteArrayOutputStream();
    for (int next = in.read(); next != '\n'; next = in.read()) {
      if (next < 0) {
        open = false;
        throw new EOFException("no answer, only '" + line.toString(ISO_8859_1) + "'");
      }
      line.write(next);
    }
    return line.toString(ISO_8859_1).strip();
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
