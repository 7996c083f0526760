package org.holewise.drawing.sheet;

/** Whose general forms the symbols have: IEC 60617 or ANSI Y32.2. */
public enum SymbolStyle {
  IEC,
  ANSI
}
