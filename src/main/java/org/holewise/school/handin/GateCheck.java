package org.holewise.school.handin;

import java.time.Instant;

/**
 * What a bench was told when it asked whether to switch on.
 *
 * @param layout the lines that it asked about
 */
public record GateCheck(String layout, boolean go, Instant at) {}
