package org.holewise.school.bench;

/**
 * How something that was asked for at a bench ended.
 *
 * @param goOn address of the page to go on with, where there is nothing to say
 */
record Outcome(Answered answered, String goOn) {}
