package org.holewise.document.picture;

import java.util.List;
import org.holewise.document.picture.BoardPicture.Body;
import org.holewise.document.picture.BoardPicture.Lead;
import org.holewise.document.picture.BoardPicture.Ring;
import org.holewise.document.picture.BoardPicture.Wire;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;

/**
 * Names parts, pins that must not be exchanged, and links. A chip's pins are told by the mark
 * beside its first.
 */
record Naming(List<Part> parts, Labels labels) {
  private static final double LEAD = 12;
  private static final double RING = 24;

  void name(List<Body> bodies, List<Lead> leads, List<Wire> wires, List<Ring> rings) {
    bodies.forEach(body -> labels.avoid(body.extent()));
    leads.forEach(lead -> labels.avoid(Box.around(lead.at(), LEAD, LEAD)));
    rings.forEach(ring -> labels.avoid(Box.around(ring.at(), RING, RING)));
    for (Wire wire : wires) {
      labels.avoid(Box.around(wire.from(), LEAD, LEAD));
      labels.avoid(Box.around(wire.to(), LEAD, LEAD));
    }
    for (Part part : parts) {
      if (!(part.kind().footprint(part.fields()) instanceof Footprint.Wires)) {
        name(part, bodies, leads);
      }
    }
    for (Wire wire : wires) {
      Spot middle = Spot.middle(List.of(wire.from(), wire.to()));
      labels.beside("L" + wire.number(), "link", Box.around(middle, 6, 6));
    }
  }

  private void name(Part part, List<Body> bodies, List<Lead> leads) {
    boolean chip = part.kind().footprint(part.fields()) instanceof Footprint.Dip;
    boolean lettered = !chip && (part.kind().polar() || part.pins().size() > 2);
    leads.stream()
        .filter(lead -> lettered && lead.pin().ref().equals(part.ref()))
        .forEach(
            lead -> labels.beside(lead.pin().name(), "pin", Box.around(lead.at(), LEAD, LEAD)));
    bodies.stream()
        .filter(body -> body.ref().equals(part.ref()))
        .forEach(
            body ->
                labels.beside(
                    (part.ref() + " " + PartValue.of(part)).strip(), "part", body.extent()));
  }
}
