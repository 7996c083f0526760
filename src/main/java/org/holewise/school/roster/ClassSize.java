package org.holewise.school.roster;

/** A class and how many students are in it. */
record ClassSize(ClassGroup group, int students) {}
