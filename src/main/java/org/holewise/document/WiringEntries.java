package org.holewise.document;

import java.util.List;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.Hole;
import org.holewise.engine.wiring.Difference;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.WiringReport;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes how the wiring compares, and the repairs. */
final class WiringEntries {
  private final Texts texts;

  WiringEntries(Texts texts) {
    this.texts = texts;
  }

  ObjectNode wiring(WiringReport report) {
    var entry =
        JsonNodeFactory.instance
            .objectNode()
            .put("matches", report.matches())
            .put("score", Numbers.six(report.score()));
    var differences = entry.putArray("differences");
    report.differences().forEach(difference -> differences.add(difference(difference)));
    return entry;
  }

  private ObjectNode difference(Difference difference) {
    var entry = place(difference.repair());
    var or = entry.putArray("or");
    difference.or().forEach(repair -> or.add(place(repair).put("text", texts.repair(repair))));
    return entry.put("text", texts.repair(difference.repair()));
  }

  private static ObjectNode place(Repair repair) {
    var entry = JsonNodeFactory.instance.objectNode();
    if (repair instanceof Repair.MoveLead move) {
      entry.put("ref", move.pin().ref()).put("pin", move.pin().name());
      move.from().ifPresent(hole -> entry.put("hole", hole.toString()));
      return moved(entry, move.net(), move.joins(), move.to());
    }
    if (repair instanceof Repair.MoveLinkEnd move) {
      entry.put("link", move.link()).put("end", move.end()).put("hole", move.from().toString());
      return moved(entry, move.net(), move.joins(), move.to());
    }
    if (repair instanceof Repair.AddLink add) {
      var sides = entry.putArray("add");
      holes(sides.addArray(), add.from());
      holes(sides.addArray(), add.to());
      return named(entry, "net", add.net());
    }
    if (repair instanceof Repair.RemoveLink remove) {
      entry.put("remove", remove.link());
      holes(entry.putArray("holes"), List.of(remove.where().from(), remove.where().to()));
      return entry;
    }
    Repair.PlacePart placed = (Repair.PlacePart) repair;
    entry.put("place", placed.ref());
    placed
        .anew()
        .ifPresent(
            anew -> {
              entry.put("hole", anew.from().toString());
              holes(entry.putArray("move"), List.of(anew.to()));
            });
    return entry;
  }

  private static ObjectNode moved(ObjectNode entry, String net, String joins, List<Hole> to) {
    named(named(entry, "net", net), "joins", joins);
    holes(entry.putArray("move"), to);
    return entry;
  }

  private static ObjectNode named(ObjectNode entry, String field, String name) {
    return name.isEmpty() ? entry : entry.put(field, name);
  }

  static void holes(ArrayNode list, List<Hole> holes) {
    holes.forEach(hole -> list.add(hole.toString()));
  }
}
