package org.holewise.school.session;

import java.time.LocalDate;
import org.holewise.school.library.ExerciseVersion;
import org.holewise.school.roster.ClassGroup;

/** What a teacher settles before a session. */
public record Plan(
    ClassGroup group,
    ExerciseVersion version,
    LocalDate day,
    int benches,
    HintStep hint,
    boolean lookFirst) {}
