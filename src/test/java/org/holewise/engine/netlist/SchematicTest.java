package org.holewise.engine.netlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.exercise.Scheme;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.PlainKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class SchematicTest {

  @Test
  void namedNetsComeFirstThenEveryPinOnNoneOfThem() {
    var exercise =
        new Exercise(
            "x",
            "x",
            "x",
            BoardModels.named("830").orElseThrow(),
            "hand-2000",
            List.of(PlainKind.BUTTON.part("S1"), PlainKind.RESISTOR.part("R1")),
            List.of(
                new Net("in", List.of(new Pin("R1", "1"), new Pin("S1", "2"))),
                new Net("out", List.of(new Pin("R1", "2")))),
            List.of(),
            List.of(),
            Allow.ALL,
            Scheme.USUAL);
    var netlist = Schematic.netlist(exercise);
    assertThat(netlist.nets())
        .extracting(net -> net.name() + net.pins())
        .containsExactly(
            "in[R1.1, S1.2]", "out[R1.2]", "S1.1[S1.1]", "S1.1a[S1.1a]", "S1.2a[S1.2a]");
    assertThat(netlist.net(new Pin("S1", "1a"))).isEqualTo(3);
  }
}
