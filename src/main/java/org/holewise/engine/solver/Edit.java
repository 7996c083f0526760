package org.holewise.engine.solver;

import java.util.stream.Stream;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/** A change of a circuit. A fault, a meter, a repair: each is at most two of these. */
public sealed interface Edit {

  /** The points that it leads to besides leads. */
  default Stream<Point> ends() {
    if (this instanceof Across across) {
      return Stream.of(across.one, across.other);
    }
    if (this instanceof Feed feed) {
      return Stream.of(feed.into, feed.from);
    }
    return this instanceof Source source ? Stream.of(source.plus, source.minus) : Stream.empty();
  }

  /**
   * A resistance between a lead and its strip (Ω); the lead's bare metal becomes a node of its own.
   */
  record Contact(Pin pin, double ohms) implements Edit {}

  /**
   * A meter in series at a lead (Ω): between the lead and what it touches, a bad contact included.
   * At most one a pin.
   */
  record InSeries(Pin pin, double ohms) implements Edit {}

  /**
   * A lead moved to another net; a net number of {@link Circuit#nets()} or more is a fresh strip.
   */
  record Moved(Pin pin, int net) implements Edit {}

  /** A resistance between two points (Ω), such as a voltmeter; 0 joins them. */
  record Across(Point one, Point other, double ohms) implements Edit {}

  /** A current from outside into {@code into} and out of {@code from} (A), whatever it takes. */
  record Feed(Point into, Point from, double amps) implements Edit {}

  /**
   * A source from outside (V) whose voltage gives way at {@code limit} (A), such as an ohmmeter or
   * a diode test: unlike a feed it has an answer where nothing conducts. {@link
   * OperatingPoint#outside()} tells what it delivers.
   */
  record Source(Point plus, Point minus, double volts, double limit) implements Edit {}

  /** Another part under the same ref: other values, same pins. */
  record Instead(Part part) implements Edit {}

  /** A part taken out: its law is left out, its pins stay on their nets. */
  record Without(String ref) implements Edit {}
}
