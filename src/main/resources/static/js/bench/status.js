// One line that says in words where what was typed is.
import * as shelf from "./shelf.js";
import { say, tell } from "./words.js";

const form = document.getElementById("build");
const line = document.getElementById("saving");
const QUIET = ["saved", "saving"];
let kind = "saved";
let since = "";

export function now() {
  return kind;
}

function clock() {
  return new Date().toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
}

function kept() {
  if (!shelf.names().some((name) => !name.startsWith("#"))) {
    return "";
  }
  return ` ${say(shelf.isSafe() ? "kept" : "kept.open")}`;
}

function door() {
  const link = document.createElement("a");
  link.href = form.dataset.door;
  link.textContent = say("door");
  if (!shelf.isSafe()) {
    link.target = "_blank";
  }
  return link;
}

function text() {
  switch (kind) {
    case "away":
      return say("away", since) + kept() + ` ${say("away.then")}`;
    case "out":
      return say("out") + kept();
    case "closed":
    case "gone":
      return say(kind) + kept() + ` ${say("teacher")}`;
    default:
      return say(kind);
  }
}

/** Saved and saving are only shown, since they come and go with every word; the rest is told, too. */
export function show(next) {
  if (next !== kind) {
    since = clock();
  }
  const before = kind;
  kind = next;
  const said = text();
  line.replaceChildren(said, ...(kind === "out" ? [" ", door()] : []));
  line.dataset.state = kind;
  if (before !== kind && !(QUIET.includes(before) && QUIET.includes(kind))) {
    tell(said);
  }
}
