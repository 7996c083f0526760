package org.holewise.engine.reading;

/**
 * What a reading should be.
 *
 * @param shown the expected value or word
 * @param low lower end of the 95 % band (SI); equal to the value for a word
 * @param high upper end of the band (SI)
 * @param worstLow lowest that limits allow, the meter's not included (SI)
 * @param worstHigh highest that limits allow (SI)
 * @param floating whether it hangs on an unconnected net
 */
public record Expected(
    Shown shown, double low, double high, double worstLow, double worstHigh, boolean floating) {}
