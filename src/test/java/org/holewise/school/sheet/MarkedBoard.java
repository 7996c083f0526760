package org.holewise.school.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.holewise.document.picture.BoardPicture;

/** The README's picture of a slip, marked by the product. Run this class to write it anew. */
public final class MarkedBoard {
  static final Path FILE = Path.of("src/site/marked-board.svg");

  private MarkedBoard() {}

  public static void main(String... none) throws IOException {
    SitePicture.write(FILE, svg());
  }

  /** A lead a column off in the transistor exercise, ringed and its strip dashed. */
  static String svg() throws IOException {
    String lines = Shipped.lines("stage-cue", "column-off");
    MarkSheet mark = Shipped.sheet("stage-cue", lines);
    var build = Shipped.record("stage-cue", lines).build();
    var bench = BenchView.of(Shipped.exercise("stage-cue"), build, mark.highlight());
    BoardPicture picture = bench.along();
    return SitePicture.framed(
        picture.frame().width(),
        picture.frame().height(),
        drawn(picture, mark.look().orElseThrow().text()),
        "board");
  }

  private static String drawn(BoardPicture picture, String said) {
    return Rendered.html(
        "fragments/board",
        "board",
        Map.of("picture", picture, "id", "board", "title", "A marked build", "description", said));
  }
}
