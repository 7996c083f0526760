package org.holewise.engine;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On a test whose numbers the project did not produce: those of a standard, a book, a data sheet or
 * plain arithmetic, named beside them. Every row of the test's table is one check.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Published {

  Family value();

  /** What is checked, and how many checks of it there are at least. */
  enum Family {
    LINEAR(25),
    METER(6),
    DIODE(15),
    BIPOLAR(20),
    MOSFET(5),
    OP_AMP(8),
    FILTER(10),
    LOGIC(20),
    CODE(10),
    UNCERTAINTY(5);

    final int least;

    Family(int least) {
      this.least = least;
    }
  }
}
