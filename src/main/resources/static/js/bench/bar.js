// The bar above the board: what to do next, and what there is to place.
import * as entries from "./entries.js";
import * as holes from "./holes.js";
import { say } from "./words.js";

const bar = document.getElementById("placing");
const line = bar.querySelector("[data-says]");
const choices = bar.querySelector("[data-choices]");
const undoButton = bar.querySelector("[data-undo]");
const stopButton = bar.querySelector("[data-stop]");

function isPlaced(one) {
  return one.holes.every((f) => holes.read(f.value));
}

/** The entries that have holes. */
export function placeable() {
  return entries.all().filter((one) => one.holes.length > 0 && !one.box.hidden);
}

function choice(one, entry) {
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

function sentence({ entry, field, held }) {
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

/** Draws it for what is being placed; what was done last is said before what to do next. */
export function draw(now, done) {
  const { entry, held, undoable } = now;
  const at = choices.contains(document.activeElement) ? document.activeElement.dataset.place : "";
  line.textContent = `${done} ${sentence(now)}`.trim();
  const open = placeable().filter((one) => one === entry || !isPlaced(one));
  choices.replaceChildren(...open.map((one) => choice(one, entry)), another());
  if (at) {
    choices.querySelector(`[data-place="${CSS.escape(at)}"]`)?.focus({ preventScroll: true });
  }
  undoButton.disabled = !undoable;
  stopButton.hidden = !entry && !held;
  bar.classList.toggle("asks", Boolean(entry));
  return line.textContent;
}

export function has(element) {
  return bar.contains(element);
}

export function focus() {
  choices.querySelector("button").focus();
}

export function scrollTo() {
  bar.scrollIntoView({ block: "start" });
}

export function begin(undo, stop) {
  bar.hidden = false;
  undoButton.addEventListener("click", undo);
  stopButton.addEventListener("click", stop);
}
