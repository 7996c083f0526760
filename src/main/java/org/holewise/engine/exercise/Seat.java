package org.holewise.engine.exercise;

/**
 * Where an author wants a part's symbol to stand in the drawing of the schematic: its middle at
 * that column and row, counted from 0 in steps of 40 px, seen in a mirror and then turned.
 *
 * @param turn 0, 90, 180 or 270 degrees clockwise
 * @param mirror left and right exchanged before it is turned
 */
public record Seat(int column, int row, int turn, boolean mirror) {}
