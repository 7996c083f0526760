package org.holewise.document.picture;

import java.util.List;

/**
 * A part of a board: some of its columns across some of its tracks.
 *
 * @param board 1 for the first
 * @param tracks rows and rails that lie side by side
 */
public record Patch(int board, int first, int last, List<String> tracks) {
  public Patch {
    tracks = List.copyOf(tracks);
  }
}
