// Placing by tap: choose what to place, then tap the hole of each of its leads.
import * as draft from "./draft.js";
import * as entries from "./entries.js";
import * as holes from "./holes.js";
import * as shelf from "./shelf.js";
import { say, tell } from "./words.js";

const bar = document.getElementById("placing");
const line = bar.querySelector("[data-says]");
const choices = bar.querySelector("[data-choices]");
const undoButton = bar.querySelector("[data-undo]");
const stopButton = bar.querySelector("[data-stop]");

const done = [];
const undrawn = new Set();
let entry = null;
let field = null;
let origin = null;
let held = "";
let said = "";

function isPlaced(one) {
  return one.holes.every((f) => holes.read(f.value));
}

function placeable() {
  return entries.all().filter((one) => one.holes.length > 0 && !one.box.hidden);
}

function choice(one) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "button choice";
  button.dataset.place = one.name;
  const state = say(isPlaced(one) ? "placed" : "unplaced");
  button.classList.toggle("placed", isPlaced(one));
  button.setAttribute("aria-pressed", String(one === entry));
  button.setAttribute("aria-label", say("choice", one.title, state));
  button.textContent = one.title;
  return button;
}

function another() {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "button choice another";
  button.dataset.place = "link";
  button.textContent = say("another");
  return button;
}

function sentence() {
  if (field) {
    const now = holes.read(field.value);
    return say(now ? "tap.instead" : "tap", entry.title, holes.labelled(field), now);
  }
  if (held) {
    return say("held", held);
  }
  const open = placeable().filter((one) => one.kind === "part" && !isPlaced(one));
  return open.length > 0 ? say("choose") : say("choose.all");
}

/** Draws the bar and the marks anew; what was done last is said before what to do next. */
function show(first = said, aloud = false) {
  said = first;
  const at = choices.contains(document.activeElement) ? document.activeElement.dataset.place : "";
  line.textContent = `${first} ${sentence()}`.trim();
  const open = placeable().filter((one) => one === entry || !isPlaced(one));
  choices.replaceChildren(...open.map(choice), another());
  if (at) {
    choices.querySelector(`[data-place="${CSS.escape(at)}"]`)?.focus({ preventScroll: true });
  }
  undoButton.disabled = done.length === 0;
  stopButton.hidden = !entry && !held;
  bar.classList.toggle("asks", Boolean(entry));
  mark();
  if (aloud) {
    tell(line.textContent);
  }
}

function mark() {
  const own = [...undrawn].flatMap((name) => entries.find(name)?.holes ?? []);
  holes.mark(own.map((f) => holes.read(f.value)), "tapped");
  const now = field ? holes.read(field.value) : "";
  const rest = entry ? entry.holes.map((f) => holes.read(f.value)) : [];
  holes.mark(rest.filter((hole) => hole && hole !== now), "chosen");
  holes.mark([now || held].filter((hole) => hole), "current");
  holes.name();
}

function choose(one, at = one.holes.find((f) => !holes.read(f.value)) ?? one.holes[0]) {
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
    draft.settle(before);
    entries.number();
  }
}

function begin(name) {
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

function undo() {
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

function back() {
  const to = origin;
  origin = null;
  end();
  (to?.isConnected ? to : choices.querySelector("button")).focus();
}

function clicked(event) {
  const button = event.target.closest("[data-place]");
  if (!button) {
    return;
  }
  begin(button.dataset.place);
  const byKey = event.detail === 0;
  origin = bar.contains(button) ? null : button;
  if (byKey) {
    holes.focus(holes.read(field?.value ?? ""));
  } else if (origin) {
    bar.scrollIntoView({ block: "start" });
  }
}

function pressed(event) {
  const target = event.target.closest?.(".target");
  if (event.key === "Escape" && (entry || held)) {
    if (target || bar.contains(event.target)) {
      back();
    } else {
      end();
    }
    return;
  }
  if (!target || event.altKey || event.ctrlKey || event.metaKey) {
    return;
  }
  if (event.key === "Enter" || event.key === " ") {
    event.preventDefault();
    tap(target.dataset.hole);
  } else if (holes.move(target, event.key)) {
    event.preventDefault();
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

function entered(event) {
  const one = entries.of(event.target);
  if (one?.holes.includes(event.target)) {
    if (field !== event.target) {
      choose(one, event.target);
    }
  } else if (event.target.matches("input")) {
    end(false);
  }
}

// A button at each part, for who comes from there.
function buttons() {
  for (const one of placeable().filter((o) => o.kind === "part")) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "button place";
    button.dataset.place = one.name;
    button.textContent = say("place");
    button.setAttribute("aria-label", say("place.of", one.title));
    one.box.querySelector(".holes").append(button);
  }
}

export function start() {
  buttons();
  bar.hidden = false;
  document.addEventListener("click", clicked);
  document.addEventListener("click", (event) => {
    const target = event.target.closest(".target");
    if (target) {
      tap(target.dataset.hole);
    }
  });
  document.addEventListener("keydown", pressed);
  document.getElementById("build").addEventListener("focusin", entered);
  undoButton.addEventListener("click", undo);
  stopButton.addEventListener("click", back);
  holes.settle();
  show();
}
