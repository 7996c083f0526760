package org.holewise.document.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.board.Hole;
import org.holewise.engine.part.Pin;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.Repair.Slip;

/** Says what is wrong with a wiring and how to repair it. */
final class RepairTexts {
  private final Messages messages;
  private final Names names;

  RepairTexts(Messages messages, Names names) {
    this.messages = messages;
    this.names = names;
  }

  String of(Repair repair) {
    if (repair instanceof Repair.MoveLead move) {
      return lead(move);
    }
    if (repair instanceof Repair.MoveLinkEnd move) {
      String who = names.linkEnd(move.link(), move.from());
      return moved(who, Optional.empty(), move.net(), move.joins(), move.to(), move.slip());
    }
    if (repair instanceof Repair.AddLink add) {
      String key = add.acrossGap() ? "repair.add.gap" : "repair.add";
      return messages.say(
          key,
          names.net(add.net(), Optional.empty()),
          names.anyOf(add.from()),
          names.anyOf(add.to()));
    }
    return repair instanceof Repair.RemoveLink remove
        ? removed(remove)
        : placed((Repair.PlacePart) repair);
  }

  private String placed(Repair.PlacePart place) {
    return place
        .anew()
        .map(anew -> messages.say("repair.reseat", place.ref(), anew.to()))
        .orElseGet(() -> messages.say("repair.place", place.ref()));
  }

  private String lead(Repair.MoveLead move) {
    String who = names.lead(move.pin(), move.from());
    var pin = Optional.of(move.pin());
    return move.from().isEmpty() && !move.net().isEmpty()
        ? messages.say(
            "repair.move.unplaced", who, names.net(move.net(), pin), names.anyOf(move.to()))
        : moved(who, pin, move.net(), move.joins(), move.to(), move.slip());
  }

  private String moved(
      String who, Optional<Pin> pin, String net, String joins, List<Hole> to, Slip slip) {
    if (net.isEmpty()) {
      return messages.say("repair.move.nowhere", who, "", names.anyOf(to));
    }
    boolean says = slip == Slip.ELSEWHERE && !joins.isEmpty();
    String slipped = slip.name().toLowerCase(Locale.ROOT).replace('_', '-');
    String of = slip == Slip.SAME_STRIP && pin.isEmpty() ? "end." : "move.";
    return messages.say(
        "repair." + of + slipped + (says ? ".joins" : ""),
        who,
        names.net(net, pin),
        names.anyOf(to),
        says ? names.net(joins, Optional.empty()) : "");
  }

  private String removed(Repair.RemoveLink remove) {
    var where = remove.where();
    return remove.joins().isEmpty() || remove.and().isEmpty()
        ? messages.say("repair.remove.one", remove.link() + 1, where.from(), where.to())
        : messages.say(
            "repair.remove",
            remove.link() + 1,
            where.from(),
            where.to(),
            names.net(remove.joins(), Optional.empty()),
            names.net(remove.and(), Optional.empty()));
  }
}
