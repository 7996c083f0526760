package org.holewise.school.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.marking.Points;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.Marks;
import org.holewise.school.handin.Overrulings;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
import org.holewise.school.sheet.Moments;
import org.springframework.stereotype.Component;

/** Lists of hand-ins as students see them. */
@Component
class Attempts {

  private final HandIns handIns;
  private final Marks marks;
  private final Overrulings overrulings;
  private final Moments moments;

  Attempts(HandIns handIns, Marks marks, Overrulings overrulings, Moments moments) {
    this.handIns = handIns;
    this.marks = marks;
    this.overrulings = overrulings;
    this.moments = moments;
  }

  /** The hand-ins of a bench, the last first. */
  List<Attempt> of(Bench bench, LabSession session) {
    var attempts = new ArrayList<Attempt>();
    for (HandIn handIn : handIns.of(bench)) {
      attempts.add(0, attempt(handIn, session.released().isPresent()));
    }
    return attempts;
  }

  private Attempt attempt(HandIn handIn, boolean released) {
    Optional<Points> points = marks.points(handIn);
    var shown = released ? points.map(own -> counting(handIn, own)) : Optional.<Points>empty();
    String state = points.isEmpty() ? "marking" : shown.isEmpty() ? "marked" : "released";
    return new Attempt(handIn.number(), moments.of(handIn.at()), state, shown);
  }

  // What a teacher decided counts.
  private Points counting(HandIn handIn, Points own) {
    return overrulings.of(handIn).stream()
        .findFirst()
        .map(by -> new Points(by.wiring(), by.readings(), own.of(), false))
        .orElse(own);
  }
}
