package org.holewise.school.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.holewise.drawing.sheet.SymbolStyle;

/** The README's picture of a schematic. Run this class to write it anew. */
public final class DrawnSchematic {
  static final Path FILE = Path.of("src/site/schematic.svg");

  private DrawnSchematic() {}

  public static void main(String... none) throws IOException {
    SitePicture.write(FILE, svg());
  }

  /** The transistor amplifier of the library. */
  static String svg() throws IOException {
    var exercise = Shipped.exercise("stage-intercom");
    var picture = new Schematics(SymbolStyle.IEC).of(exercise).picture().orElseThrow();
    String drawn =
        Rendered.html(
            "fragments/schematic",
            "schematic",
            Map.of(
                "picture",
                picture,
                "id",
                "schematic",
                "title",
                exercise.title(),
                "description",
                exercise.aim()));
    return SitePicture.framed(picture.width(), picture.height(), drawn, "schematic");
  }
}
