package org.holewise.engine.diagnosis;

/** What is wrong with how readings were taken or written down, the bench being sound. */
sealed interface Slip {
  /** Whether that reading is one of those. */
  boolean concerns(String id);

  /** Red and black exchanged. */
  record Leads(String reading) implements Slip {
    @Override
    public boolean concerns(String id) {
      return reading.equals(id);
    }
  }

  /** Wrong for a reason not listed: anything that the range shows is as likely. */
  record Anything(String reading) implements Slip {
    @Override
    public boolean concerns(String id) {
      return reading.equals(id);
    }
  }

  /** So many times what the meter should have shown; nothing, where its fuse is blown. */
  record Scaled(String reading, double factor) implements Slip {
    @Override
    public boolean concerns(String id) {
      return reading.equals(id);
    }
  }

  /** Each of two readings written down for the other. */
  record Exchanged(String one, String other) implements Slip {
    @Override
    public boolean concerns(String id) {
      return one.equals(id) || other.equals(id);
    }

    String instead(String id) {
      return one.equals(id) ? other : one;
    }
  }
}
