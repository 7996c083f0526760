package org.holewise.document.text;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Placed;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/** How sentences call leads, links, parts, nets and readings of one build. Immutable. */
final class Names {
  private static final int MOST_HOLES = 3;
  private static final int MOST_PINS = 2;

  private final Messages messages;
  private final Exercise exercise;
  private final Optional<Build> build;

  Names(Messages messages, Exercise exercise, Optional<Build> build) {
    this.messages = messages;
    this.exercise = exercise;
    this.build = build;
  }

  /** A lead, with the hole it was entered in. */
  String lead(Pin pin) {
    return lead(pin, hole(pin));
  }

  String lead(Pin pin, Optional<Hole> hole) {
    if (hole.isEmpty()) {
      return messages.say("who.lead", pin.ref(), pinName(pin));
    }
    return exercise.part(pin.ref()).filter(Names::plain).isPresent()
        ? messages.say("who.lead.only", pin.ref(), hole.get())
        : messages.say("who.lead.in", pin.ref(), pinName(pin), hole.get());
  }

  /** Whether its two leads do the same, so that the hole alone says which is meant. */
  private static boolean plain(Part part) {
    return part.pins().size() == 2 && !part.kind().exchanges(part.fields()).isEmpty();
  }

  private String pinName(Pin pin) {
    String kind = exercise.part(pin.ref()).map(part -> part.kind().name()).orElse("");
    for (String key : List.of("pin." + kind + "." + pin.name(), "pin." + pin.name())) {
      if (messages.has(key)) {
        return messages.say(key);
      }
    }
    return messages.say("pin.any", pin.name());
  }

  private Optional<Hole> hole(Pin pin) {
    return build.stream()
        .flatMap(layout -> layout.placed().stream())
        .filter(placed -> placed.ref().equals(pin.ref()))
        .findFirst()
        .map(Placed::holes)
        .flatMap(holes -> Optional.ofNullable(holes.get(pin.name())));
  }

  /** A link by its number, from 1, and its holes. */
  String link(int index) {
    return build
        .map(Build::links)
        .filter(links -> index < links.size())
        .map(links -> links.get(index))
        .map(link -> messages.say("who.link.between", index + 1, link.from(), link.to()))
        .orElseGet(() -> messages.say("who.link", index + 1));
  }

  String linkEnd(int index, Hole hole) {
    return messages.say("who.link.end", index + 1, hole);
  }

  /** A part of a finding: a pin of this exercise ({@code R1.2}) gets its name, the rest stays. */
  String written(String who) {
    return Pin.read(who)
        .filter(pin -> exercise.part(pin.ref()).isPresent())
        .map(pin -> messages.say("who.lead", pin.ref(), pinName(pin)))
        .orElse(who);
  }

  String reading(String id) {
    return messages.say("who.reading", label(id).orElse(id));
  }

  /** What the exercise calls a reading; empty for one that is not its own. */
  Optional<String> label(String id) {
    return exercise.readings().stream()
        .filter(reading -> reading.id().equals(id))
        .map(Reading::label)
        .findFirst();
  }

  String place(Place place) {
    if (place instanceof Place.OfLead lead) {
      return lead(lead.pin());
    }
    if (place instanceof Place.OfLink link) {
      return link(link.link());
    }
    if (place instanceof Place.OfPart part) {
      return part.ref();
    }
    if (place instanceof Place.OfSupply supply) {
      return supply.ref();
    }
    if (place instanceof Place.OfRail rail) {
      return messages.say("who.rail", new Hole(rail.board(), rail.track(), 0));
    }
    if (place instanceof Place.OfStrips strips) {
      return messages.say("who.strips", strips.one(), strips.other());
    }
    if (place instanceof Place.OfParts parts) {
      return all(List.of(parts.one(), parts.other()));
    }
    if (place instanceof Place.OfReadings readings) {
      return all(List.of(reading(readings.one()), reading(readings.other())));
    }
    return place instanceof Place.OfReading reading ? reading(reading.id()) : "";
  }

  /** A net by name, with a pin or two of it that are not the one spoken of. */
  String net(String name, Optional<Pin> but) {
    List<String> pins =
        exercise.nets().stream()
            .filter(net -> net.name().equals(name))
            .map(Net::pins)
            .flatMap(List::stream)
            .filter(pin -> !but.equals(Optional.of(pin)))
            .limit(MOST_PINS)
            .map(Pin::toString)
            .toList();
    return pins.isEmpty()
        ? messages.say("net.named", name)
        : messages.say("net.with", name, all(pins));
  }

  String all(List<?> things) {
    return joined("list.and", things);
  }

  /** The first few of several holes that would do. */
  String anyOf(List<Hole> holes) {
    if (holes.isEmpty()) {
      return messages.say("repair.any-free");
    }
    return joined("list.or", holes.subList(0, Math.min(MOST_HOLES, holes.size())));
  }

  private String joined(String key, List<?> things) {
    String last = String.valueOf(things.get(things.size() - 1));
    if (things.size() == 1) {
      return last;
    }
    var first = things.subList(0, things.size() - 1).stream().map(String::valueOf).toList();
    return messages.say(key, String.join(", ", first), last);
  }
}
