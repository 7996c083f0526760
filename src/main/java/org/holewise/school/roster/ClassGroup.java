package org.holewise.school.roster;

/** A class that has its sessions together, such as 9b. */
public record ClassGroup(long id, String name) {}
