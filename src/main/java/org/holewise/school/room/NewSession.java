package org.holewise.school.room;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import org.holewise.school.session.HintStep;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What the form for a new session holds, as it was typed. */
record NewSession(
    String group, String exercise, String day, String benches, String hint, String lookFirst) {

  static final int MOST_BENCHES = 40;

  /** Far enough for any plan, near enough to notice a slip in the year. */
  private static final int YEARS = 2;

  NewSession(
      @Nullable String group,
      @Nullable String exercise,
      @Nullable String day,
      @Nullable String benches,
      @Nullable String hint,
      @Nullable String lookFirst) {
    this.group = text(group);
    this.exercise = text(exercise);
    this.day = text(day);
    this.benches = text(benches);
    this.hint = text(hint);
    this.lookFirst = text(lookFirst);
  }

  /** How most sessions are. */
  static NewSession usual(LocalDate today) {
    return new NewSession("", "", today.toString(), "15", HintStep.PART.name(), "");
  }

  public boolean looksFirst() {
    return lookFirst.equals("true");
  }

  Optional<LocalDate> date() {
    try {
      return Optional.of(LocalDate.parse(day));
    } catch (DateTimeParseException noDate) {
      return Optional.empty();
    }
  }

  Optional<Integer> places() {
    return WholeNumber.read(benches, 1, MOST_BENCHES);
  }

  Optional<Long> groupId() {
    return WholeNumber.read(group, 1, Integer.MAX_VALUE).map(Integer::longValue);
  }

  Optional<HintStep> step() {
    return Arrays.stream(HintStep.values()).filter(step -> step.name().equals(hint)).findFirst();
  }

  /** Says what is wrong with the day, the benches and the step. */
  void check(LocalDate today, Errors found) {
    if (date().isEmpty()) {
      found.rejectValue("day", "sessions.day.missing");
    } else if (date().filter(date -> isNear(date, today)).isEmpty()) {
      found.rejectValue("day", "sessions.day.far");
    }
    if (places().isEmpty()) {
      found.rejectValue("benches", "sessions.benches.wrong");
    }
    if (step().isEmpty()) {
      found.rejectValue("hint", "sessions.hint.missing");
    }
  }

  private static boolean isNear(LocalDate date, LocalDate today) {
    return !date.isBefore(today.minusDays(1)) && date.isBefore(today.plusYears(YEARS));
  }

  private static String text(@Nullable String typed) {
    return Objects.requireNonNullElse(typed, "").strip();
  }
}
