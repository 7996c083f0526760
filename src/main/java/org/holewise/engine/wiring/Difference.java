package org.holewise.engine.wiring;

import java.util.List;

/**
 * One repair of the smallest set, and every other repair of the same size that could stand for it.
 */
public record Difference(Repair repair, List<Repair> or) {}
