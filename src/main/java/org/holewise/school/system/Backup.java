package org.holewise.school.system;

import java.nio.file.Path;
import java.time.Instant;

/** A kept copy of the embedded database. */
record Backup(Path file, Instant made, long bytes) {

  public String name() {
    return file.getFileName().toString();
  }

  /** Megabytes, rounded up to a tenth. */
  public double megabytes() {
    return Math.ceil(bytes / 100_000.0) / 10;
  }
}
