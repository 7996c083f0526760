package org.holewise.school.cause;

import java.util.List;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.school.handin.SchoolPriors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** How often the fault finder was right, and what the school's causes taught it. */
@Controller
class CausesController {

  private final KnownCauses causes;
  private final SchoolPriors priors;

  CausesController(KnownCauses causes, SchoolPriors priors) {
    this.causes = causes;
    this.priors = priors;
  }

  /** A bin as the table beside the plot has it. */
  record Row(String said, int so, int count, String low, String high) {
    static Row of(Bin bin) {
      return new Row(
          Plot.inTen(bin.said(), 1),
          bin.so(),
          bin.count(),
          Plot.inTen(bin.low(), 1),
          Plot.inTen(bin.high(), 1));
    }
  }

  @GetMapping("/sessions/causes")
  String show(Model model) {
    List<KnownCause> known = causes.all();
    List<Bin> bins = Bin.of(known);
    model.addAttribute("all", Tally.of("", known));
    model.addAttribute("proven", known.stream().filter(KnownCause::proven).count());
    model.addAttribute("kinds", Tally.byKind(known));
    model.addAttribute("told", known.stream().filter(cause -> cause.wasSo().isPresent()).count());
    model.addAttribute("fewest", Bin.FEWEST);
    model.addAttribute("plot", Plot.of(bins));
    model.addAttribute("bins", bins.stream().map(Row::of).toList());
    return taught(model);
  }

  private String taught(Model model) {
    Priors now = priors.now();
    List<Leaning> leanings = Leaning.of(now);
    Leaning nothing = Leaning.ofNothingWrong(now);
    model.addAttribute("table", now.name());
    model.addAttribute("shipped", now.name().equals(Priors.start().name()));
    model.addAttribute("leanings", leanings);
    model.addAttribute("nothing", nothing);
    model.addAttribute("more", keys(Leaning.moved(leanings, true)));
    model.addAttribute("less", keys(Leaning.moved(leanings, false)));
    model.addAttribute(
        "nothingMoved", nothing.isWorthSaying() ? (nothing.isUp() ? "more" : "less") : "");
    return "cause/causes";
  }

  private static List<String> keys(List<Leaning> leanings) {
    return leanings.stream().map(leaning -> "right.family." + leaning.family()).toList();
  }
}
