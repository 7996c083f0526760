package org.holewise.school.room;

import java.util.Objects;
import java.util.Optional;
import org.holewise.engine.exercise.Scheme;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A teacher's own marks as typed. */
record NewOverruling(String wiring, String readings, String reason) {

  /** As many characters as are kept of a reason or a note. */
  static final int LONGEST = 1000;

  NewOverruling(@Nullable String wiring, @Nullable String readings, @Nullable String reason) {
    this.wiring = Objects.requireNonNullElse(wiring, "").strip();
    this.readings = Objects.requireNonNullElse(readings, "").strip();
    this.reason = Objects.requireNonNullElse(reason, "").strip();
  }

  /** The marks that count now, to be changed. */
  static NewOverruling from(Optional<Result> result) {
    return result
        .map(marked -> new NewOverruling("" + marked.wiring(), "" + marked.readings(), ""))
        .orElseGet(() -> new NewOverruling("", "", ""));
  }

  Optional<Integer> wiringOf(Scheme scheme) {
    return WholeNumber.read(wiring, 0, scheme.wiring());
  }

  Optional<Integer> readingsOf(Scheme scheme) {
    return WholeNumber.read(readings, 0, scheme.readings());
  }

  void check(Scheme scheme, Errors found) {
    if (wiringOf(scheme).isEmpty()) {
      found.rejectValue("wiring", "overrule.marks.wrong", new Object[] {scheme.wiring()}, "");
    }
    if (readingsOf(scheme).isEmpty()) {
      found.rejectValue("readings", "overrule.marks.wrong", new Object[] {scheme.readings()}, "");
    }
    if (reason.isEmpty()) {
      found.rejectValue("reason", "overrule.reason.missing");
    }
    if (reason.length() > LONGEST) {
      found.rejectValue("reason", "bench.text.long");
    }
  }
}
