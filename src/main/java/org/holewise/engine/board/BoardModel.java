package org.holewise.engine.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A model of board: what joins what under the plastic. Up to nine boards of one model may be
 * joined; joining them connects nothing.
 *
 * <p>Strips are numbered from 0: for each board in turn the columns' halves (a–e of column 1, f–j
 * of column 1, a–e of column 2 …), then each part of each rail. Immutable.
 *
 * @param name such as {@code 830-split}
 * @param rails in the order of the model's file
 * @param printed the ten letters printed beside the rows, in the order a to j
 */
public record BoardModel(String name, int columns, List<Rail> rails, List<String> printed) {
  /** How many boards can be named: {@code 9:e12} is on the last. */
  public static final int MOST_BOARDS = 9;

  private static final String ROWS = "abcdefghij";

  public BoardModel {
    rails = List.copyOf(rails);
    printed = List.copyOf(printed);
  }

  /** A model whose rows carry the usual letters. */
  public BoardModel(String name, int columns, List<Rail> rails) {
    this(name, columns, rails, List.of("a", "b", "c", "d", "e", "f", "g", "h", "i", "j"));
  }

  /** The same model with one rail interrupted at a column besides. */
  public BoardModel withGap(String track, int column) {
    return new BoardModel(
        name,
        columns,
        rails.stream()
            .map(rail -> rail.track().equals(track) ? rail.withGap(column) : rail)
            .toList(),
        printed);
  }

  /** Strips of one board. */
  public int strips() {
    int strips = 2 * columns;
    for (Rail rail : rails) {
      strips += rail.parts();
    }
    return strips;
  }

  /**
   * The strip of a hole; empty where this board has no such place. Any column of a rail stands for
   * the rail there, a hole or not.
   */
  public OptionalInt strip(Hole hole) {
    int strip = stripOrNone(hole);
    return strip < 0 ? OptionalInt.empty() : OptionalInt.of(strip);
  }

  /** The same, -1 where there is none. */
  public int stripOrNone(Hole hole) {
    if (hole.board() < 1 || hole.board() > MOST_BOARDS || hole.column() > columns) {
      return -1;
    }
    int local = hole.rail() ? railStrip(hole) : columnStrip(hole);
    return local < 0 ? -1 : (hole.board() - 1) * strips() + local;
  }

  private int columnStrip(Hole hole) {
    int row = ROWS.indexOf(hole.track());
    return row < 0 || hole.column() < 1 ? -1 : 2 * (hole.column() - 1) + (row < 5 ? 0 : 1);
  }

  private int railStrip(Hole hole) {
    int first = 2 * columns;
    for (Rail rail : rails) {
      if (rail.track().equals(hole.track())) {
        int part = rail.part(hole.column());
        return part < 0 ? -1 : first + part;
      }
      first += rail.parts();
    }
    return -1;
  }

  /** Whether there is a hole in the plastic at this very place. */
  public boolean has(Hole hole) {
    return stripOrNone(hole) >= 0
        && (!hole.rail() || rail(hole.track()).orElseThrow().columns().contains(hole.column()));
  }

  public Optional<Rail> rail(String track) {
    return rails.stream().filter(rail -> rail.track().equals(track)).findFirst();
  }

  /** The rail that a strip is or is part of; empty for half a column. */
  public Optional<Rail> rail(int strip) {
    int first = 2 * columns;
    for (Rail rail : rails) {
      int part = strip % strips() - first;
      if (part >= 0 && part < rail.parts()) {
        return Optional.of(rail);
      }
      first += rail.parts();
    }
    return Optional.empty();
  }

  /** The board of a strip, from 1. */
  public int board(int strip) {
    return strip / strips() + 1;
  }

  /** The holes in the plastic that make a strip, by column, then row. */
  public List<Hole> holes(int strip) {
    int local = strip % strips();
    if (local < 2 * columns) {
      int first = local % 2 == 0 ? 0 : 5;
      return IntStream.range(first, first + 5)
          .mapToObj(row -> new Hole(board(strip), ROWS.substring(row, row + 1), local / 2 + 1))
          .toList();
    }
    Rail rail = rail(strip).orElseThrow();
    return rail.columns().stream()
        .map(column -> new Hole(board(strip), rail.track(), column))
        .filter(hole -> stripOrNone(hole) == strip)
        .toList();
  }

  /** The same holes as they stand together: a strip's five, or the groups of a rail. */
  public List<List<Hole>> groups(int strip) {
    var groups = new ArrayList<List<Hole>>();
    Hole last = new Hole(0, "", 0);
    for (Hole hole : holes(strip)) {
      if (groups.isEmpty() || hole.column() > last.column() + 1) {
        groups.add(new ArrayList<>());
      }
      groups.get(groups.size() - 1).add(hole);
      last = hole;
    }
    return groups.stream().map(List::copyOf).toList();
  }
}
