package org.holewise.drawing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.document.ExerciseDocument;
import org.holewise.drawing.circuit.Schematic;

/** The schematics of the exercises that come along, by file. */
final class ShippedSchematics {
  private static final Path FILES = Path.of("src/main/resources/exercises");

  private ShippedSchematics() {}

  static Map<String, Schematic> all() throws IOException {
    List<Path> files;
    try (var all = Files.list(FILES)) {
      files = all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    var schematics = new LinkedHashMap<String, Schematic>();
    for (Path file : files) {
      var exercise = ExerciseDocument.yaml(Files.readString(file)).orThrow().exercise();
      schematics.put(file.getFileName().toString(), Schematic.of(exercise));
    }
    return schematics;
  }
}
