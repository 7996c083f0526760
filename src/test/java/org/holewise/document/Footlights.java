package org.holewise.document;

/** A request of the model stage's class: a row of resistors, measured with the supply off. */
final class Footlights {
  static final String REQUEST =
      """
      {"exercise": {
         "slug": "footlight-row", "title": "A row of footlight resistors",
         "aim": "Read three resistors and measure them, alone and in a row.",
         "notes": ["Have spare 2.2 k ready."],
         "board": "830-split", "meter": "hand-2000",
         "parts": [
           {"ref": "R1", "kind": "resistor", "ohms": 1000, "tolerance": 0.05},
           {"ref": "R2", "kind": "resistor", "ohms": "2k2", "tolerance": "5 %"},
           {"ref": "R3", "kind": "resistor", "ohms": "4.7 kΩ"}],
         "nets": {"left": ["R1.1"], "first": ["R1.2", "R2.1"], "second": ["R2.2", "R3.1"]},
         "conditions": [{"name": "cool"}, {"name": "warm", "temperature": 30, "set": {"R1": {"ohms": "1.01 k"}}}],
         "readings": [
           {"id": "r1", "label": "R1 before use", "ohms": ["R1.1", "R1.2"], "alone": true},
           {"id": "row", "ohms": ["R1.1", "R3.2"], "weight": 2, "band": ["7.5 k", 8300]},
           {"id": "ring", "joined": ["R1.2", "R2.1"], "when": "warm"}],
         "allow": {"seriesOrder": false, "equalParts": true, "extraLinks": true},
         "marks": {"wiring": 50, "readings": 50}},
       "build": {
         "exercise": "footlight-row", "board": "830-split", "meter": "hand-2000",
         "placed": [
           {"ref": "R1", "holes": {"1": "a5", "2": "a10"}, "marked": "1k0"},
           {"ref": "R2", "holes": {"1": "b10", "2": "b15"}},
           {"ref": "R3", "holes": {"1": "c15", "2": "c20"}}],
         "links": [["d10", "e10"]],
         "readings": {"r1": "998 ohm", "row": 7880, "ring": "yes"},
         "extra": [{"id": "x1", "ohms": ["R2.1", "e15"], "when": "cool", "value": "2.19 k"}]},
       "ask": ["ohms", "joined"]}
      """;

  private Footlights() {}

  static Edited request() {
    return Edited.of(REQUEST);
  }
}
