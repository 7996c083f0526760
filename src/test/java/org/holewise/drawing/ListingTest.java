package org.holewise.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.TreeSet;
import org.holewise.drawing.circuit.Listing;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.engine.part.Pin;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whoever reads the rows learns what the drawing shows. */
@Tag("fast")
class ListingTest {

  @Test
  void aRowNamesPinsByTheirDataSheetAndWhatTheyAreJoinedTo() throws IOException {
    var listing = Listing.of(ShippedSchematics.all().get("stage-pulse.yaml"));
    var timer = listing.rows().get(1);
    assertThat(timer.ref()).isEqualTo("U1");
    assertThat(timer.joints().get(2).name()).isEqualTo("OUT");
    assertThat(timer.joints().get(2).others()).containsExactly(new Pin("R3", "1"));
    assertThat(listing.rows().get(2).value()).isEqualTo("10 kΩ");
  }

  @Test
  void theRowsHoldTheWholeNetlist() {
    for (Schematic schematic : FirstCourse.all().values()) {
      var pins = new TreeSet<Pin>();
      for (var row : Listing.of(schematic).rows()) {
        row.joints()
            .forEach(
                joint -> {
                  pins.add(joint.pin());
                  var net = new TreeSet<>(joint.others());
                  net.add(joint.pin());
                  assertThat(schematic.nets())
                      .anyMatch(
                          n -> n.name().equals(joint.net()) && new TreeSet<>(n.pins()).equals(net));
                });
      }
      assertThat(pins)
          .containsExactlyInAnyOrderElementsOf(
              schematic.nets().stream().flatMap(net -> net.pins().stream()).toList());
    }
  }
}
