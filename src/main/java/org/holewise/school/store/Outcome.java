package org.holewise.school.store;

import java.util.List;

/** What became of a slip. */
sealed interface Outcome {

  /** It is in the ledger. */
  record Kept() implements Outcome {}

  /** It was in the ledger before: the form came twice. */
  record Already() implements Outcome {}

  /** Nothing was moved, since there are fewer than that. */
  record TooFew(List<Shortage> shortages) implements Outcome {}

  /** Nothing was moved, since others moved this item after its count was shown. */
  record Moved(int inStore) implements Outcome {}

  /** Nothing had to be moved: there are as many as there should be. */
  record Agrees() implements Outcome {}

  /** {@code place} is STORE or CLASS, and {@code there} how many are there. */
  record Shortage(Item item, Place place, int there) {}
}
