package org.holewise.school.system;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.mvstore.MVStoreException;
import org.h2.mvstore.MVStoreTool;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;

/**
 * H2 in a file. Without a write delay and always at the file's end, so that what was acknowledged
 * outlives a power cut; with room for all our statements, so that each is read once a connection.
 */
record EmbeddedStore(Path file) implements JdbcConnectionDetails {

  private static final String APPENDING = ";WRITE_DELAY=0;REUSE_SPACE=FALSE;QUERY_CACHE_SIZE=256";

  /** Below this a file is not worth the wait (bytes). */
  private static final long LARGE = 64L << 20;

  private static final Logger log = LoggerFactory.getLogger(EmbeddedStore.class);

  /** Makes a file small again that has grown; nobody else may have it open. */
  void tidy() {
    tidy(LARGE);
  }

  /**
   * What is still needed is copied beside the file, and the copy takes its place in one move: who
   * is killed meanwhile loses nothing.
   *
   * @param large a smaller file is left alone (bytes)
   */
  void tidy(long large) {
    Path data = file.resolveSibling(file.getFileName() + ".mv.db");
    try {
      if (Files.exists(data) && Files.size(data) >= large) {
        log.info("tidying {}", data);
        MVStoreTool.compact(data.toString(), false);
      }
    } catch (MVStoreException e) {
      // Who opens it next is told why it cannot be opened.
      log.warn("the data could not be tidied", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String getJdbcUrl() {
    return "jdbc:h2:file:" + file + APPENDING;
  }

  @Override
  public String getUsername() {
    return "sa";
  }

  @Override
  public String getPassword() {
    return "";
  }
}
