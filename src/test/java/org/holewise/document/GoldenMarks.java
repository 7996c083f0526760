package org.holewise.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.Read;
import org.holewise.document.text.Messages;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.marking.Marking;

/**
 * Marks that are kept to the byte. When they change, the engine's version must: run this class with
 * the folder of the golden files as its argument to write them anew, and read what changed.
 */
public final class GoldenMarks {
  static final List<String> NAMES =
      List.of(
          "moonlight-sound",
          "moonlight-dark",
          "moonlight-lamp-turned-round",
          "moonlight-anode-a-column-off",
          "moonlight-entry-wrong",
          "moonlight-asked",
          "moonlight-shorted-rails",
          "dimmer-sound",
          "dimmer-no-bridge",
          "dimmer-no-layout",
          "dimmer-exchanged",
          "dimmer-unreadable",
          "dimmer-odd",
          "dimmer-marked-otherwise",
          "cue-sound",
          "cue-base-lead-off",
          "cue-lamp-stays-dark",
          "cue-link-end-off",
          "cue-across-the-groove",
          "cue-two-slips",
          "cue-empty");

  private GoldenMarks() {}

  static byte[] request(String name) {
    return file(name + ".request.json");
  }

  static byte[] kept(String name) {
    return file(name + ".mark.json");
  }

  private static byte[] file(String name) {
    try (var in = GoldenMarks.class.getResourceAsStream("/golden/" + name)) {
      if (in == null) {
        throw new IllegalStateException("no golden file " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The mark of a golden request, made now. */
  static byte[] mark(String name) {
    var read = new RequestDocument(GoldenMarks::shipped).read(request(name));
    if (!(read instanceof Read.Ok<MarkRequest> ok)) {
      throw new IllegalStateException(name + " is malformed: " + read);
    }
    MarkRequest request = ok.value();
    var mark = Marking.mark(request.exercise(), request.record(), Priors.start(), request.ask());
    return MarkDocument.bytes(MarkDocument.tree(request, mark, Messages.english()));
  }

  private static Optional<Exercise> shipped(String slug) {
    return ExerciseDocument.json(MarkDocument.bytes(ShippedFiles.exercise(slug)))
            instanceof Read.Ok<PreparedExercise> ok
        ? Optional.of(ok.value().exercise())
        : Optional.empty();
  }

  /** Writes marks into the folder that comes first: those that are named after it, else all. */
  public static void main(String[] arguments) throws IOException {
    List<String> named = List.of(arguments).subList(1, arguments.length);
    for (String name : named.isEmpty() ? NAMES : named) {
      Files.write(Path.of(arguments[0], name + ".mark.json"), mark(name));
    }
  }
}
