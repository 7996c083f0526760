package org.holewise.document.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.picture.BoardPicture.Lead;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Placed;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Chips on the drawing: as long as their pins, with a mark beside the first. */
@Tag("fast")
class ChipPictureTest {
  private static final Part COUNTER =
      new Part("U1", Registry.kind("74393").orElseThrow(), Fields.NONE);

  private static BoardPicture picture(String pin1, View view) {
    Placed chip =
        new Placed("U1", Map.of(), Optional.of(LampBench.hole(pin1)), Optional.empty())
            .seated(COUNTER);
    var build = new Build(BoardModels.named("830").orElseThrow(), List.of(chip), List.of());
    return BoardPicture.of(build, List.of(COUNTER), Highlight.NONE, view, false);
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void itsBodyLiesBetweenItsRowsAndCoversNoHole(View view) {
    BoardPicture picture = picture("e20", view);
    Box body = picture.bodies().get(0).extent();
    double along = view == View.ALONG ? body.width() : body.height();
    assertThat(along).isGreaterThan(6 * Tracks.PITCH);
    for (Lead lead : picture.leads()) {
      assertThat(body.shared(Box.around(lead.at(), 4, 4))).isZero();
    }
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void turnedRoundItsMarkIsAtTheOtherEnd(View view) {
    String one = picture("e20", view).bodies().get(0).detail();
    String other = picture("f26", view).bodies().get(0).detail();
    assertThat(one).isNotEqualTo(other);
    assertThat(picture("e20", view).bodies().get(0).extent())
        .isEqualTo(picture("f26", view).bodies().get(0).extent());
  }
}
