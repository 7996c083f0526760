package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.holewise.document.shape.Read;
import org.holewise.document.text.Messages;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.marking.Marking;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Whatever request is read can be marked, soon, and the mark fits its schema. */
class ChangedMarksTest {
  private static final int BODIES = 3_000;

  /** Tells an answer that does not come from a machine that is busy; it is no measure of speed. */
  private static final Duration LONGEST = Duration.ofMinutes(1);

  private static final RequestDocument REQUESTS = new RequestDocument(slug -> Optional.empty());

  @Test
  void changedRequestsThatAreReadAreMarked() {
    var mutations = new Mutations(9);
    var schema = DocumentSchemaTest.schema("mark");
    int marked = 0;
    int odd = 0;
    for (int i = 0; i < BODIES; i++) {
      var request = ShippedFiles.request(ShippedFiles.SLUGS.get(i % ShippedFiles.SLUGS.size()));
      JsonNode changed = mutations.change(request);
      var read = REQUESTS.read(Edited.JSON.writeValueAsBytes(changed));
      if (read instanceof Read.Ok<MarkRequest> ok) {
        ObjectNode mark = mark(ok.value(), changed);
        assertThat(schema.validate(mark)).as(changed.toString()).isEmpty();
        marked++;
        odd += mark.get("findings").isEmpty() ? 0 : 1;
      }
    }
    assertThat(marked).isGreaterThan(BODIES / 20);
    assertThat(odd).isGreaterThan(BODIES / 100);
  }

  private static ObjectNode mark(MarkRequest request, JsonNode document) {
    return Assertions.assertTimeout(
        LONGEST,
        () -> {
          var mark =
              Marking.mark(request.exercise(), request.record(), Priors.start(), request.ask());
          return MarkDocument.tree(request, mark, Messages.english());
        },
        document::toString);
  }
}
