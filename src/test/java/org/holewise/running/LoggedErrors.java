package org.holewise.running;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.AppenderBase;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.slf4j.LoggerFactory;

/** What an application in this process logs as an error, with its trace. */
public final class LoggedErrors extends AppenderBase<ILoggingEvent> {

  private final List<String> said = new CopyOnWriteArrayList<>();

  /** Listens from now on; to be asked for again after an application started, which resets logs. */
  public void listen() {
    setContext(root().getLoggerContext());
    start();
    if (!root().isAttached(this)) {
      root().addAppender(this);
    }
  }

  public void forget() {
    said.clear();
  }

  public void leave() {
    root().detachAppender(this);
  }

  /** All that was logged since it was forgotten; empty where nothing was. */
  public String said() {
    return String.join("\n", said);
  }

  @Override
  protected void append(ILoggingEvent event) {
    if (event.getLevel().isGreaterOrEqual(Level.ERROR)) {
      String trace = ThrowableProxyUtil.asString(event.getThrowableProxy());
      said.add(event.getFormattedMessage() + "\n" + trace);
    }
  }

  private static Logger root() {
    return (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
  }
}
