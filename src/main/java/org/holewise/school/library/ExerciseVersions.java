package org.holewise.school.library;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.holewise.document.ExerciseDocument;
import org.holewise.document.PreparedExercise;
import org.holewise.document.shape.Read;
import org.holewise.school.account.Sha256;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Exercises as sessions were planned with them: each version is kept word for word for good. */
@Repository
public class ExerciseVersions {

  private final JdbcClient db;
  private final Clock clock;

  /** A version never changes, so what was read of it once holds for as long as this runs. */
  private final Map<Long, ExerciseVersion> read = new ConcurrentHashMap<>();

  ExerciseVersions(JdbcClient db, Clock clock) {
    this.db = db;
    this.clock = clock;
  }

  /** The version that an exercise of the library is now; kept if it was not before. */
  public ExerciseVersion of(LibraryExercise entry) {
    String sha256 = Sha256.hex(entry.document());
    return withDigest(sha256).orElseGet(() -> keep(entry, sha256));
  }

  public Optional<ExerciseVersion> find(long id) {
    var known = read.get(id);
    return known == null ? kept(id) : Optional.of(known);
  }

  private ExerciseVersion keep(LibraryExercise entry, String sha256) {
    try {
      db.sql(
              """
              insert into exercise_versions (slug, sha256, document, made_at) values (?, ?, ?, ?)
              """)
          .params(entry.exercise().slug(), sha256, entry.document(), OffsetDateTime.now(clock))
          .update();
    } catch (DuplicateKeyException keptMeanwhile) {
      // Another kept the same text, which is as good.
    }
    return withDigest(sha256).orElseThrow();
  }

  private Optional<ExerciseVersion> withDigest(String sha256) {
    return db.sql("select id from exercise_versions where sha256 = ?")
        .param(sha256)
        .query(Long.class)
        .optional()
        .flatMap(this::find);
  }

  private Optional<ExerciseVersion> kept(long id) {
    return db.sql("select document from exercise_versions where id = ?")
        .param(id)
        .query(String.class)
        .optional()
        .map(document -> read.computeIfAbsent(id, key -> read(id, document)));
  }

  private static ExerciseVersion read(long id, String document) {
    if (ExerciseDocument.yaml(document) instanceof Read.Ok<PreparedExercise> ok) {
      return new ExerciseVersion(id, ok.value().exercise(), ok.value().notes());
    }
    throw new IllegalStateException("exercise version " + id + " can no longer be read");
  }
}
