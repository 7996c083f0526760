package org.holewise.engine.wiring;

/** How the options of the parts still open fit what is decided, and which part to decide next. */
final class Fits {
  private static final int NOT_TO_BE_HAD = 10_000;

  /** For each open part and each of its options, the pins that must move. */
  final int[][] misfits;

  /** Pins that must move under the best options. */
  final int ahead;

  /** Those of them that belong to parts with twins. */
  final int twinsAhead;

  private final Search search;

  Fits(Search search) {
    this.search = search;
    misfits = new int[search.wanted.options.length][];
    int all = 0;
    int twins = 0;
    for (int part = 0; part < misfits.length; part++) {
      if (!search.decided(part)) {
        misfits[part] = misfits(part);
        all += least(misfits[part]);
        twins += hasTwins(part) ? least(misfits[part]) : 0;
      }
    }
    ahead = all;
    twinsAhead = twins;
  }

  /** The part with the fewest options within the slack, then with the fewest that fit best. */
  int choose(int slack) {
    int best = -1;
    long bestKey = Long.MAX_VALUE;
    for (int part = 0; part < misfits.length; part++) {
      if (!search.decided(part)) {
        int least = least(misfits[part]);
        long within = 0;
        long fitting = 0;
        for (int misfit : misfits[part]) {
          within += misfit <= least + slack ? 1 : 0;
          fitting += misfit == least ? 1 : 0;
        }
        long key = (within * 1000 + fitting) * 1000 + openPins(part);
        if (key < bestKey) {
          bestKey = key;
          best = part;
        }
      }
    }
    return best;
  }

  static int least(int[] numbers) {
    int least = NOT_TO_BE_HAD;
    for (int number : numbers) {
      least = Math.min(least, number);
    }
    return least;
  }

  private int[] misfits(int part) {
    Option[] options = search.wanted.options[part];
    int first = search.wanted.terminals.firstPin[part];
    int[] all = new int[options.length];
    for (int i = 0; i < options.length; i++) {
      int[] want = options[i].want();
      all[i] = search.gone(options[i]) ? NOT_TO_BE_HAD : 0;
      for (int j = 0; j < want.length; j++) {
        int strip = search.layout.pin()[first + j];
        if (strip >= 0 && search.label[strip] >= 0 && search.label[strip] != want[j]) {
          all[i]++;
        }
      }
    }
    return all;
  }

  private int openPins(int part) {
    Terminals t = search.wanted.terminals;
    int count = 0;
    for (int pin = t.firstPin[part]; pin < t.firstPin[part + 1]; pin++) {
      int strip = search.layout.pin()[pin];
      count += strip >= 0 && search.label[strip] < 0 ? 1 : 0;
    }
    return count;
  }

  private boolean hasTwins(int part) {
    Terminals t = search.wanted.terminals;
    return t.terminals(part).length < t.firstPin[part + 1] - t.firstPin[part];
  }
}
