package org.holewise.school.bench;

import java.util.ArrayList;
import java.util.List;
import org.holewise.document.shape.DocumentTree;
import org.holewise.document.text.Messages;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.EntryName;
import org.holewise.school.sheet.Said;
import tools.jackson.databind.JsonNode;

/**
 * Entries to save as a script sends them: {@code {"entries":[{"name":"part:R1","text":"1=b10",
 * "base":3}]}}.
 *
 * @param errors what cannot be read, each with its place; then there are no changes
 */
record EntriesDocument(List<Change> changes, List<Wrong> errors) {

  /** What is wrong at a place. */
  record Wrong(String at, Said said) {}

  static EntriesDocument read(byte[] body, Exercise exercise) {
    var read = new EntriesDocument(new ArrayList<>(), new ArrayList<>());
    var tree = DocumentTree.json(body);
    tree.problems()
        .forEach(p -> read.error(p.at(), "student.line.says", p.text(Messages.english())));
    if (tree.readable() && tree.problems().isEmpty()) {
      read.entries(tree.root().path("entries"), exercise);
    }
    return read;
  }

  private void entries(JsonNode entries, Exercise exercise) {
    if (!entries.isArray() || entries.isEmpty() || entries.size() > Drafts.MOST_ENTRIES) {
      error("/entries", "student.json.entries", Drafts.MOST_ENTRIES);
      return;
    }
    for (int i = 0; i < entries.size(); i++) {
      entry("/entries/" + i, entries.get(i), exercise);
    }
  }

  private void entry(String at, JsonNode entry, Exercise exercise) {
    String name = entry.path("name").asString("");
    JsonNode text = entry.path("text");
    JsonNode base = entry.path("base");
    if (EntryName.read(name, exercise).isEmpty()) {
      error(at + "/name", "student.json.name");
    }
    if (!text.isString()) {
      error(at + "/text", "student.json.text");
    } else if (text.asString().length() > Change.LONGEST) {
      error(at + "/text", "student.json.long", Change.LONGEST);
    }
    if (!base.isMissingNode() && !(base.canConvertToExactIntegral() && base.canConvertToLong())) {
      error(at + "/base", "student.json.base");
    }
    if (errors.isEmpty()) {
      changes.add(new Change(name, text.asString(), base.asLong(0)));
    }
  }

  private void error(String at, String key, Object... parts) {
    errors.add(new Wrong(at, Said.of(key, parts)));
  }
}
