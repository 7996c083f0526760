// Placing by tap: choose what to place, then tap the hole of each of its leads.
import * as bar from "./bar.js";
import * as draft from "./draft.js";
import * as entries from "./entries.js";
import * as holes from "./holes.js";
import * as partners from "./partners.js";
import * as shelf from "./shelf.js";
import { say, tell } from "./words.js";

const done = [];
const undrawn = new Set();
let entry = null;
let field = null;
let held = "";
let said = "";

/** What is asked for now: the entry, its field, and a hole that was tapped before either. */
export function now() {
  return { entry, field, held, undoable: done.length > 0 };
}

/** Draws the bar and the marks anew. */
export function show(first = said, aloud = false) {
  said = first;
  const says = bar.draw(now(), first);
  mark();
  if (aloud) {
    tell(says);
  }
}

function mark() {
  const own = [...undrawn].flatMap((name) => entries.find(name)?.holes ?? []);
  holes.mark(own.map((f) => holes.read(f.value)), "tapped");
  const asked = field ? holes.read(field.value) : "";
  const rest = entry ? entry.holes.map((f) => holes.read(f.value)) : [];
  holes.mark(rest.filter((hole) => hole && hole !== asked), "chosen");
  holes.mark([asked || held].filter((hole) => hole), "current");
  holes.name();
}

export function choose(one, at = one.holes.find((f) => !holes.read(f.value)) ?? one.holes[0]) {
  leave(one);
  entry = one;
  field = at;
  if (held) {
    const hole = held;
    held = "";
    put(hole);
  } else {
    show("", true);
  }
}

// A row for a link that was begun and has nothing in it goes again.
function leave(other = null) {
  const before = entry;
  entry = null;
  field = null;
  if (before && before !== other) {
    delete before.box.dataset.open;
    before.settle();
    partners.settle(before);
    entries.number();
  }
}

export function begin(name) {
  if (name !== "link") {
    choose(entries.find(name));
    return;
  }
  const link = entries.row(`link:${entries.madeUp()}`);
  link.box.dataset.open = "";
  link.settle();
  entries.number();
  choose(link);
}

export function end(aloud = true) {
  leave();
  held = "";
  show("", aloud);
}

function put(hole) {
  const others = holes.fieldsIn(hole).filter((f) => f !== field);
  done.push({ field, before: field.value });
  field.value = hole;
  taken(entry);
  const is = say("in", holes.named(field), hole);
  const warned = others.length > 0 ? ` ${say("shared", hole, others.map(holes.named).join(", "))}` : "";
  const rest = entry.holes.slice(entry.holes.indexOf(field) + 1);
  field = rest.find((f) => !holes.read(f.value)) ?? null;
  if (!field) {
    leave();
  }
  show(is + warned, true);
}

function taken(one) {
  undrawn.add(one.name);
  draft.take(one);
}

export function undo() {
  const last = done.pop();
  if (last) {
    last.field.value = last.before;
    const one = entries.of(last.field);
    one.box.dataset.open = "";
    one.settle();
    taken(one);
    leave(one);
    entry = one;
    field = last.field;
    show(say("undone"), true);
  }
}

/** A hole was tapped, or Enter pressed on it. */
export function tap(hole) {
  if (field) {
    put(hole);
    return;
  }
  const [used] = holes.fieldsIn(hole);
  if (used) {
    choose(entries.of(used), used);
  } else {
    held = held === hole ? "" : hole;
    show("", true);
  }
}

/** What was typed in a field moves its marks, too. */
export function typed(one) {
  undrawn.add(one.name);
  show();
}

export function drawn() {
  for (const name of undrawn) {
    if (!shelf.get(name)) {
      undrawn.delete(name);
    }
  }
  show();
}
