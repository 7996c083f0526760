package org.holewise.running;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import org.holewise.HolewiseApplication;

/**
 * The application in a process of its own, from the class path of the tests, so that it can be
 * killed or measured.
 */
public final class SeparateSchool implements Site, AutoCloseable {

  /** What makes a start quick where speed later does not matter. */
  public static final List<String> QUICK_START =
      List.of(
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-Xmx512m",
          "-XX:+UnlockDiagnosticVMOptions",
          "-XX:-BytecodeVerificationRemote");

  private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");
  private static final int LONGEST_START_SECONDS = 180;
  private static final int LONGEST_STOP_SECONDS = 30;

  private final Process process;
  private final CompletableFuture<Integer> port = new CompletableFuture<>();
  private final CompletableFuture<Integer> started = new CompletableFuture<>();
  private final Thread cleaner;

  private SeparateSchool(Process process) {
    this.process = process;
    cleaner = new Thread(process::destroyForcibly);
    Runtime.getRuntime().addShutdownHook(cleaner);
  }

  /** Starts a school and waits until it is ready. */
  public static SeparateSchool start(Settings settings, List<String> jvm, String... more) {
    var command = new ArrayList<String>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(jvm);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(HolewiseApplication.class.getName());
    command.add("--server.port=0");
    command.addAll(settings.arguments());
    command.addAll(List.of(more));
    try {
      var school =
          new SeparateSchool(new ProcessBuilder(command).redirectErrorStream(true).start());
      school.listen();
      return school;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public URI at(String path) {
    return URI.create("http://localhost:" + port.join() + path);
  }

  /** Ends the process as a power cut would: nothing in it hears of it. */
  public void kill() {
    process.destroyForcibly();
    ended();
  }

  /** Lets the process end as an operator would. */
  @Override
  public void close() {
    process.destroy();
    ended();
  }

  private void ended() {
    try {
      if (!process.waitFor(LONGEST_STOP_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException("the school did not end");
      }
      Runtime.getRuntime().removeShutdownHook(cleaner);
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private void listen() {
    var said = new StringBuffer();
    var reader = new Thread(() -> read(said), "school's log");
    reader.setDaemon(true);
    reader.start();
    try {
      started.get(LONGEST_START_SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException | TimeoutException e) {
      process.destroyForcibly();
      throw new IllegalStateException("the school did not start:\n" + said, e);
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private void read(StringBuffer said) {
    try (BufferedReader lines = process.inputReader(UTF_8)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        heard(line, said);
      }
    } catch (IOException e) {
      said.append(e);
    }
    started.completeExceptionally(new IllegalStateException("it ended"));
  }

  private void heard(String line, StringBuffer said) {
    if (!started.isDone()) {
      said.append(line).append('\n');
      var found = PORT.matcher(line);
      if (found.find()) {
        port.complete(Integer.valueOf(found.group(1)));
      }
      if (line.contains("Started " + HolewiseApplication.class.getSimpleName())) {
        started.complete(port.join());
      }
    }
  }

  private static IllegalStateException interrupted(InterruptedException e) {
    Thread.currentThread().interrupt();
    return new IllegalStateException(e);
  }
}
