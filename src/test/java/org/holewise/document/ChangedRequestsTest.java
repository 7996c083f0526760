package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Read;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/** Whatever is done to a request, it is read or its wrong places are named, soon. */
@Tag("fast")
class ChangedRequestsTest {
  private static final int BODIES = 5_000;
  private static final int SPOILT = 2_000;

  /** Tells an answer that does not come from a machine that is busy; it is no measure of speed. */
  private static final Duration LONGEST = Duration.ofMinutes(1);

  private static final RequestDocument REQUESTS = new RequestDocument(slug -> Optional.empty());

  private static List<JsonNode> requests() {
    List<JsonNode> requests = new ArrayList<>();
    requests.add(Footlights.request().tree());
    ShippedFiles.SLUGS.forEach(slug -> requests.add(ShippedFiles.request(slug)));
    return requests;
  }

  @Test
  void changedRequestsAreReadOrTheirWrongPlacesAreNamed() {
    var requests = requests();
    var mutations = new Mutations(20_260);
    int read = 0;
    for (int i = 0; i < BODIES; i++) {
      JsonNode changed = mutations.change(requests.get(i % requests.size()));
      var outcome = timely(Edited.JSON.writeValueAsBytes(changed));
      if (outcome instanceof Read.Ok) {
        read++;
      } else {
        outcome.problems().forEach(problem -> assertPlaced(problem, changed));
      }
    }
    assertThat(read).as("both outcomes occur").isBetween(BODIES / 20, BODIES - BODIES / 20);
  }

  @Test
  void spoiltBytesAreReadOrTheirPlacesAreNamed() {
    var requests = requests();
    var mutations = new Mutations(77);
    for (int i = 0; i < SPOILT; i++) {
      byte[] sound = Edited.JSON.writeValueAsBytes(requests.get(i % requests.size()));
      var outcome = timely(mutations.spoil(sound));
      outcome.problems().forEach(problem -> assertThat(problem.text()).isNotBlank());
    }
  }

  private static Read<MarkRequest> timely(byte[] body) {
    return Assertions.assertTimeout(LONGEST, () -> REQUESTS.read(body));
  }

  /** The place is there, or it is missing from an object that is there. */
  private static void assertPlaced(Problem problem, JsonNode document) {
    assertThat(problem.text()).isNotBlank();
    JsonPointer at = JsonPointer.compile(problem.at());
    boolean there = !document.at(at).isMissingNode();
    boolean missing = !problem.at().isEmpty() && document.at(at.head()).isObject();
    assertThat(there || missing).as(problem + " in " + document).isTrue();
  }
}
