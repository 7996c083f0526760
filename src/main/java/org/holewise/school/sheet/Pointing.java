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
import org.holewise.engine.wiring.Repair;

/** Which holes of a build to point at for what is said of it. */
record Pointing(Optional<Build> build) {

  Highlight at(Repair repair) {
    return Highlight.of(holes(repair));
  }

  /** The leads that are suspected, where they are entered; else where the fault may be. */
  Highlight at(Suspect suspect) {
    List<Hole> own = holes(suspect.place());
    return Highlight.of(own.isEmpty() ? suspect.likeliest().holes() : own);
  }

  private static List<Hole> holes(Repair repair) {
    if (repair instanceof Repair.MoveLead move) {
      return move.from().map(List::of).orElseGet(() -> first(move.to()));
    }
    if (repair instanceof Repair.MoveLinkEnd move) {
      return List.of(move.from());
    }
    if (repair instanceof Repair.RemoveLink remove) {
      return List.of(remove.where().from(), remove.where().to());
    }
    return repair instanceof Repair.AddLink add
        ? Stream.of(add.from(), add.to()).map(Pointing::first).flatMap(List::stream).toList()
        : List.of();
  }

  private static List<Hole> first(List<Hole> holes) {
    return holes.subList(0, Math.min(1, holes.size()));
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
    return place instanceof Place.OfSupply supply ? part(supply.ref()) : List.of();
  }

  private List<Hole> lead(Pin pin) {
    return build.stream()
        .flatMap(laid -> laid.placed().stream())
        .filter(placed -> placed.ref().equals(pin.ref()))
        .flatMap(placed -> placed.hole(pin.name()).stream())
        .limit(1)
        .toList();
  }

  private List<Hole> part(String ref) {
    return build.stream()
        .flatMap(laid -> laid.placed().stream())
        .filter(placed -> placed.ref().equals(ref))
        .limit(1)
        .flatMap(placed -> placed.holes().values().stream())
        .toList();
  }

  private List<Hole> link(int index) {
    List<Link> links = build.map(Build::links).orElse(List.of());
    return index < links.size()
        ? List.of(links.get(index).from(), links.get(index).to())
        : List.of();
  }
}
