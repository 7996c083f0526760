// What partners have entered: shown as soon as nobody is at its fields.
import * as entries from "./entries.js";
import { isLayout, say } from "./news.js";
import * as shelf from "./shelf.js";

const theirs = new Map();

/** Takes up what the server has. */
export function receive(texts) {
  for (const text of texts) {
    const entry = entries.find(text.name) ?? (text.text ? entries.row(text.name) : undefined);
    if (entry && text.revision > entry.base) {
      theirs.set(entry.name, text);
    }
  }
}

/** Shows what can be shown now. */
export function show() {
  [...theirs.keys()].forEach((name) => settle(entries.find(name)));
}

/** Shows a partner's text, unless its fields are in use or hold something that is not sent yet. */
export function settle(entry) {
  const text = theirs.get(entry.name);
  if (!text || entry.focused || shelf.get(entry.name)) {
    return;
  }
  theirs.delete(entry.name);
  if (text.revision > entry.base) {
    entry.keep(text.text, text.revision);
    entry.show(text.text);
    say("theirs", { entry, by: text.mine ? "" : text.by });
    if (isLayout(entry.name)) {
      say("layout");
    }
  }
}
