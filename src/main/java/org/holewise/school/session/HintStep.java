package org.holewise.school.session;

/** How far the student's view of a mark goes; each step says more than the one before. */
public enum HintStep {
  /** Which readings fit, and whether the wiring does. */
  VERDICTS,
  /** In which part of the board to look. */
  AREA,
  /** At which part or link to look. */
  PART,
  /** At which lead in which hole to look, and what to do. */
  PLACE;

  public boolean reaches(HintStep step) {
    return compareTo(step) >= 0;
  }
}
