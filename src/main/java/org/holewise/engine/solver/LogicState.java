package org.holewise.engine.solver;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.part.Level;

/**
 * What a circuit's logic remembers, sees and drives, by part; parts without logic have empty rows.
 * The arrays belong to the run that steps it.
 */
record LogicState(Level[][] memory, Level[][] inputs, Level[][] outputs) {

  /** As the supply comes on: what outputs drive is not known yet. */
  static LogicState start(Circuit circuit) {
    int parts = circuit.mounted.length;
    var state = new LogicState(new Level[parts][], new Level[parts][], new Level[parts][]);
    for (int part = 0; part < parts; part++) {
      List<Stamp.Gates> gates = circuit.mounted[part].stamp().gates;
      boolean has = !gates.isEmpty();
      state.memory[part] = has ? gates.get(0).logic().start() : new Level[0];
      state.inputs[part] = unknown(has ? gates.get(0).logic().inputs() : 0);
      state.outputs[part] = unknown(has ? gates.get(0).logic().outputs() : 0);
    }
    return state;
  }

  private static Level[] unknown(int count) {
    Level[] levels = new Level[count];
    Arrays.fill(levels, Level.UNDEFINED);
    return levels;
  }

  /** Takes over what another state has of a part. */
  void take(LogicState other, int part) {
    memory[part] = other.memory[part].clone();
    inputs[part] = other.inputs[part].clone();
    outputs[part] = other.outputs[part].clone();
  }

  LogicState copy() {
    return new LogicState(copy(memory), copy(inputs), copy(outputs));
  }

  private static Level[][] copy(Level[][] rows) {
    Level[][] copy = new Level[rows.length][];
    for (int k = 0; k < rows.length; k++) {
      copy[k] = rows[k].clone();
    }
    return copy;
  }

  /** What tells states apart. */
  List<List<List<Level>>> key() {
    return List.of(Drives.copy(memory), Drives.copy(inputs), Drives.copy(outputs));
  }

  Drives drives() {
    return new Drives(Drives.copy(outputs), false, List.of());
  }

  boolean same(LogicState other) {
    return Arrays.deepEquals(memory, other.memory)
        && Arrays.deepEquals(inputs, other.inputs)
        && Arrays.deepEquals(outputs, other.outputs);
  }

  /** The same with every undefined output low. */
  LogicState guessed() {
    LogicState guess = copy();
    for (Level[] row : guess.outputs) {
      for (int k = 0; k < row.length; k++) {
        row[k] = row[k] == Level.UNDEFINED ? Level.LOW : row[k];
      }
    }
    return guess;
  }
}
