package org.holewise.document;

import java.util.List;
import java.util.Optional;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Act;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Points;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a mark in the teacher's view. What is not known is left out, never null. The same mark
 * gives the same bytes on every machine.
 */
public final class MarkDocument {
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private final ObjectNode document = JsonNodeFactory.instance.objectNode();
  private final MarkRequest request;
  private final Texts texts;

  private MarkDocument(MarkRequest request, Messages messages) {
    this.request = request;
    this.texts = new Texts(messages, request.exercise(), request.record().build(), true);
  }

  /** The mark of a request as a tree. */
  public static ObjectNode tree(MarkRequest request, Mark mark, Messages messages) {
    var writer = new MarkDocument(request, messages);
    writer.write(mark);
    return writer.document;
  }

  /** A tree, or a list of them, as it goes out (UTF-8). */
  public static byte[] bytes(JsonNode tree) {
    return JSON.writeValueAsBytes(tree);
  }

  private void write(Mark mark) {
    document.put("engine", mark.engine()).put("priors", mark.priors());
    var findings = document.putArray("findings");
    request.findings().forEach(finding -> findings.add(finding(finding)));
    mark.findings().forEach(finding -> findings.add(finding(finding)));
    document.set("wiring", new WiringEntries(texts).wiring(mark.wiring()));
    var readings = document.putArray("readings");
    mark.readings().forEach(judged -> readings.add(ReadingEntries.reading(judged, texts)));
    var suspects = document.putArray("suspects");
    var places = new PlaceEntries(links());
    List<Suspect> all = mark.diagnosis().suspects();
    all.forEach(suspect -> suspects.add(places.suspect(suspect, all, texts)));
    mark.diagnosis()
        .next()
        .ifPresent(next -> document.set("next", ReadingEntries.next(next, texts)));
    var acts = document.putArray("try");
    mark.diagnosis().acts().forEach(act -> acts.add(act(act, places)));
    var cautions = document.putArray("cautions");
    mark.cautions().forEach(caution -> cautions.add(caution(caution)));
    document.set("marks", marks(mark.marks()));
  }

  private List<Link> links() {
    return request.record().build().map(build -> build.links()).orElse(List.of());
  }

  private ObjectNode finding(Finding finding) {
    return entry()
        .put("at", finding.at())
        .put("kind", finding.kind())
        .put("text", texts.finding(finding));
  }

  private ObjectNode act(Act act, PlaceEntries places) {
    var entry = entry().put("act", act.kind());
    places.put(entry, act.place(), act.holes());
    return entry.put("minutes", Numbers.six(act.minutes())).put("text", texts.act(act));
  }

  private ObjectNode caution(Caution caution) {
    var entry = entry();
    Optional.of(caution.ref())
        .filter(ref -> !ref.isEmpty())
        .ifPresent(ref -> entry.put("ref", ref));
    return entry.put("kind", caution.kind()).put("text", texts.caution(caution));
  }

  private static ObjectNode marks(Points points) {
    var entry =
        entry()
            .put("wiring", points.wiring())
            .put("readings", points.readings())
            .put("total", points.total())
            .put("of", points.of());
    return points.held() ? entry.put("held", true) : entry;
  }

  private static ObjectNode entry() {
    return JsonNodeFactory.instance.objectNode();
  }
}
