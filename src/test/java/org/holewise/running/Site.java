package org.holewise.running;

import java.net.URI;

/** Where an application that runs can be reached. */
public interface Site {

  /** The address of a page. */
  URI at(String path);
}
