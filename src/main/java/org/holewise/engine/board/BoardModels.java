package org.holewise.engine.board;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The board models that come along, each a data file beside this class. A school adds its own with
 * a file of the same shape, read by {@link #read}.
 */
public final class BoardModels {
  private static final Map<String, BoardModel> MODELS = shipped();

  private BoardModels() {}

  public static List<String> names() {
    return List.copyOf(MODELS.keySet());
  }

  public static Optional<BoardModel> named(String name) {
    return Optional.ofNullable(MODELS.get(name));
  }

  /**
   * Reads a model: {@code columns}, {@code printed} (ten letters), {@code rails} (tracks), {@code
   * rail.columns} (beside which the rails have holes: {@code 3-7 9-13}), {@code rail.gaps}; a rail
   * that differs has lines of its own, such as {@code rail.+a.gaps}.
   *
   * @throws IllegalArgumentException where the file does not describe a board
   */
  public static BoardModel read(String name, String text) {
    return ModelFile.of(name, text).model(name);
  }

  private static Map<String, BoardModel> shipped() {
    var models = new LinkedHashMap<String, BoardModel>();
    for (String name : text("models.txt").lines().toList()) {
      models.put(name, read(name, text(name + ".properties")));
    }
    return models;
  }

  private static String text(String file) {
    try (InputStream stream = BoardModels.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalStateException("not among the board models: " + file);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
