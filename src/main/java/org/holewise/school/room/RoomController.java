package org.holewise.school.room;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.holewise.school.session.LabSession;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.context.request.WebRequest;

/** The room: a tile a bench, who needs the teacher most in front. */
@Controller
@RequestMapping("/sessions/{id}/room")
class RoomController {

  private final Paths paths;
  private final Room room;
  private final Clock clock;

  RoomController(Paths paths, Room room, Clock clock) {
    this.paths = paths;
    this.room = room;
    this.clock = clock;
  }

  @GetMapping
  String room(@PathVariable long id, Model model) {
    LabSession session = paths.session(id);
    model.addAttribute("etag", etag(session, minute()));
    return shown(session, model, "room/room");
  }

  /** The tiles alone; no view, and 304, within the minute while nothing in the session changes. */
  @GetMapping("/tiles")
  @Nullable String tiles(@PathVariable long id, WebRequest request, Model model) {
    LabSession session = paths.session(id);
    return request.checkNotModified(etag(session, minute()))
        ? null
        : shown(session, model, "room/tiles :: tiles");
  }

  private String shown(LabSession session, Model model, String view) {
    Instant now = minute();
    List<Tile> tiles = tiles(session, now);
    Map<Boolean, Long> needs =
        tiles.stream().collect(Collectors.partitioningBy(Tile::needs, Collectors.counting()));
    model.addAttribute("lab", SessionCard.of(session));
    model.addAttribute("tiles", tiles);
    model.addAttribute("needs", needs.getOrDefault(true, 0L));
    return view;
  }

  private List<Tile> tiles(LabSession session, Instant now) {
    record Placed(BenchProgress bench, Need need) {}
    return room.of(session).stream()
        .map(bench -> new Placed(bench, Need.of(bench, session.isOpen(), now)))
        .sorted(
            Comparator.comparing(Placed::need)
                .thenComparing(placed -> placed.bench().bench().number()))
        .map(placed -> Tile.of(placed.bench(), placed.need(), now))
        .toList();
  }

  private Instant minute() {
    return clock.instant().truncatedTo(ChronoUnit.MINUTES);
  }

  private static String etag(LabSession session, Instant minute) {
    return "\"" + session.id() + "-" + session.changes() + "-" + minute.getEpochSecond() + "\"";
  }
}
