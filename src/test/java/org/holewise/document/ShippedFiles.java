package org.holewise.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.holewise.document.shape.DocumentTree;
import tools.jackson.databind.JsonNode;

/** The exercises that come along and their builds, as trees. */
final class ShippedFiles {
  static final List<String> SLUGS = List.of("stage-cue", "stage-dimmer", "stage-moonlight");

  private ShippedFiles() {}

  static JsonNode exercise(String slug) {
    return DocumentTree.yaml(new String(file(slug + ".yaml"), StandardCharsets.UTF_8)).root();
  }

  static JsonNode build(String slug) {
    return DocumentTree.json(file(slug + "-build.json")).root();
  }

  /** A request to mark the checked build. */
  static JsonNode request(String slug) {
    var request = Edited.JSON.createObjectNode();
    request.set("exercise", exercise(slug));
    request.set("build", build(slug));
    return request;
  }

  private static byte[] file(String name) {
    try (var in = ShippedFiles.class.getResourceAsStream("/exercises/" + name)) {
      return Objects.requireNonNull(in, name).readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
