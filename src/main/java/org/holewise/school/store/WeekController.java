package org.holewise.school.store;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What the sessions of seven days need, and whether the store has it. */
@Controller
class WeekController {

  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2999;

  private final Packings packings;
  private final Items items;
  private final Texts texts;
  private final Clock clock;

  WeekController(Packings packings, Items items, Texts texts, Clock clock) {
    this.packings = packings;
    this.items = items;
    this.texts = texts;
    this.clock = clock;
  }

  @GetMapping("/store/week")
  String show(@RequestParam(defaultValue = "") String from, Model model) {
    var asked = day(from);
    var start = asked.orElseGet(this::monday);
    var week = packings.inWeekFrom(start);
    var levels = items.all();
    model.addAttribute("unreadable", asked.isEmpty() && !from.isBlank() ? from : null);
    model.addAttribute("from", start);
    model.addAttribute("to", start.plusDays(6));
    model.addAttribute("current", start.equals(monday()));
    model.addAttribute("plans", week.stream().map(one -> SessionRow.of(one, levels)).toList());
    var demand = Demand.of(week, levels);
    model.addAttribute("demand", demand);
    model.addAttribute("unlisted", texts.unlisted(demand));
    return "store/week";
  }

  /**
   * @param left how many items are still to be packed
   * @param out how many things are with the class
   */
  record SessionRow(Packing packing, long left, int out) {

    static SessionRow of(Packing packing, List<Level> levels) {
      return new SessionRow(
          packing,
          levels.stream().filter(level -> packing.left(level.item()) > 0).count(),
          packing.uses().stream().mapToInt(Use::out).sum());
    }
  }

  private LocalDate monday() {
    return LocalDate.now(clock).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  private static Optional<LocalDate> day(String typed) {
    try {
      return Optional.of(LocalDate.parse(typed.strip()))
          .filter(day -> day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR);
    } catch (DateTimeException noDay) {
      return Optional.empty();
    }
  }
}
