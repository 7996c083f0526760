/**
 * How often the fault finder is right: builds with faults drawn from the prior table, marked, and
 * set beside the best that anybody could have made of the same readings. It makes its faults by
 * building them (leads moved, parts changed, resistors put in), and shares no code with the rules
 * that the finder looks for them by.
 */
package org.holewise.benchmark.finder;
