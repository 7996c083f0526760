package org.holewise.running;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.holewise.HolewiseApplication;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** The application, started as from a command line, on a free port. */
public final class RunningSchool implements Site, AutoCloseable {

  private final ConfigurableApplicationContext context;

  private RunningSchool(ConfigurableApplicationContext context) {
    this.context = context;
  }

  /** A school's own installation with its data in the folder. */
  public static RunningSchool plain(Path data, String... arguments) {
    return start(List.of("--holewise.data=" + data), arguments);
  }

  /** The same at a port, as after a restart. */
  public static RunningSchool plainAt(int port, Path data) {
    return start(port, List.of("--holewise.data=" + data));
  }

  /** A school's own installation with its data where the settings say. */
  public static RunningSchool on(Settings settings, String... arguments) {
    return start(settings.arguments(), arguments);
  }

  /** A demo school with its data in the folder. */
  public static RunningSchool demo(Path data, String... arguments) {
    return start(List.of("--spring.profiles.active=demo", "--holewise.data=" + data), arguments);
  }

  private static RunningSchool start(List<String> first, String... more) {
    return start(0, first, more);
  }

  private static RunningSchool start(int port, List<String> first, String... more) {
    var arguments = new ArrayList<>(first);
    arguments.add("--server.port=" + port);
    arguments.addAll(List.of(more));
    var application = new SpringApplicationBuilder(HolewiseApplication.class);
    return new RunningSchool(application.run(arguments.toArray(String[]::new)));
  }

  public int port() {
    return context.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
  }

  @Override
  public URI at(String path) {
    return URI.create("http://localhost:" + port() + path);
  }

  /** One of the application's own parts, to set a scene through its own calls. */
  public <T> T part(Class<T> type) {
    return context.getBean(type);
  }

  /** As {@link #part(Class)}, where there are several of the kind. */
  public <T> T part(String name, Class<T> type) {
    return context.getBean(name, type);
  }

  @Override
  public void close() {
    context.close();
  }
}
