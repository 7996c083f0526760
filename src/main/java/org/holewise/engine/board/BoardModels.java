package org.holewise.engine.board;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
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
  public static BoardModel read(String name, Reader text) throws IOException {
    return ModelFile.load(text).model(name);
  }

  private static Map<String, BoardModel> shipped() {
    var models = new LinkedHashMap<String, BoardModel>();
    try (var index = new BufferedReader(open("models.txt"))) {
      for (String name : index.lines().toList()) {
        try (var file = open(name + ".properties")) {
          models.put(name, read(name, file));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return models;
  }

  private static Reader open(String file) throws IOException {
    InputStream stream = BoardModels.class.getResourceAsStream(file);
    if (stream == null) {
      throw new IOException("not among the board models: " + file);
    }
    return new InputStreamReader(stream, StandardCharsets.UTF_8);
  }
}
