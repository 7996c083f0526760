package org.holewise.school.sheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.holewise.drawing.SchematicDrawing;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.engine.exercise.Exercise;
import org.springframework.stereotype.Component;

/** The schematics of exercises in the school's symbols, each drawn once while it is wanted. */
@Component
public class Schematics {
  private static final int KEPT = 200;

  private final SymbolStyle style;
  private final Map<Version, SchematicSheet> drawn = Collections.synchronizedMap(new Latest());

  public Schematics(SymbolStyle style) {
    this.style = style;
  }

  /** The schematic of an exercise; it is drawn when it is first asked for. */
  public SchematicSheet of(Exercise exercise) {
    return drawn.computeIfAbsent(
        new Version(exercise),
        version -> SchematicSheet.of(exercise, SchematicDrawing.of(exercise, style)));
  }

  /** An exercise never changes: another version is another object. */
  private record Version(Exercise exercise) {
    @Override
    @SuppressWarnings("ReferenceEquality")
    public boolean equals(Object other) {
      return other instanceof Version version && version.exercise == exercise;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(exercise);
    }
  }

  /** Lets go of what was not asked for the longest. */
  private static final class Latest extends LinkedHashMap<Version, SchematicSheet> {
    private static final long serialVersionUID = 1;

    Latest() {
      super(16, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<Version, SchematicSheet> eldest) {
      return size() > KEPT;
    }
  }
}
