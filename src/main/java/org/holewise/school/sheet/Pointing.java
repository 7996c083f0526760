package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.part.Pin;

/** Which holes of a build to point at for what is said of it. */
record Pointing(Optional<Build> build) {

  Highlight at(Suspect suspect) {
    return Highlight.of(holes(suspect));
  }

  /** The leads that are suspected, where they are entered; else where the fault may be. */
  List<Hole> holes(Suspect suspect) {
    List<Hole> own = holes(suspect.place());
    return own.isEmpty() ? suspect.likeliest().holes() : own;
  }

  private List<Hole> holes(Place place) {
    if (place instanceof Place.OfLead lead) {
      return lead(lead.pin());
    }
    if (place instanceof Place.OfLink link) {
      return link(link.link());
    }
    if (place instanceof Place.OfPart part) {
      return part(part.ref());
    }
    if (place instanceof Place.OfParts parts) {
      return Stream.of(parts.one(), parts.other()).flatMap(ref -> part(ref).stream()).toList();
    }
    return place instanceof Place.OfSupply supply ? part(supply.ref()) : List.of();
  }

  List<Hole> lead(Pin pin) {
    return build.flatMap(laid -> laid.placed(pin.ref())).stream()
        .flatMap(placed -> placed.hole(pin.name()).stream())
        .toList();
  }

  List<Hole> part(String ref) {
    return build.flatMap(laid -> laid.placed(ref)).stream()
        .flatMap(placed -> placed.holes().values().stream())
        .toList();
  }

  List<Hole> link(int index) {
    List<Link> links = build.map(Build::links).orElse(List.of());
    return index < links.size()
        ? List.of(links.get(index).from(), links.get(index).to())
        : List.of();
  }
}
