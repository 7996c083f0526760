// The working page: saves as one types, places by tap, hands in over a network that comes and goes.
import * as acts from "./bench/acts.js";
import * as board from "./bench/board.js";
import * as draft from "./bench/draft.js";
import * as entries from "./bench/entries.js";
import * as holes from "./bench/holes.js";
import { news } from "./bench/news.js";
import * as partners from "./bench/partners.js";
import * as placing from "./bench/placing.js";
import * as status from "./bench/status.js";
import { say, tell } from "./bench/words.js";

const form = document.getElementById("build");
const LOOK = 10_000;
const LOOK_ALONE = 30_000;
let problems = {};

function takeTheirs(entry, text) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "button";
  button.textContent = say("theirs.take", text.by);
  button.addEventListener("click", () => {
    entry.show(text.text);
    draft.take(entry);
    placing.typed(entry);
    entry.fields[0].focus();
  });
  return button;
}

function replaced(text) {
  const entry = entries.find(text.name);
  const said = text.text ? say("theirs", text.by, text.text) : say("theirs.out", text.by);
  entry?.note(said, takeTheirs(entry, text));
  tell(`${entry?.title}: ${said}`);
}

// Half an entry is not wrong yet while somebody is at it.
function showProblem(entry) {
  const text = problems[entry.name] ?? "";
  if (!text || !entry.focused) {
    entry.problem(text, holes.read);
  }
}

news.addEventListener("problems", (event) => {
  problems = event.detail;
  entries.all().forEach(showProblem);
});
news.addEventListener("saved", (event) => event.detail.replaced.forEach(replaced));
news.addEventListener("theirs", (event) => {
  const { entry, by } = event.detail;
  entry.note(by ? say("by", by) : "");
  entries.number();
});

form.addEventListener("input", (event) => {
  const entry = entries.of(event.target);
  if (entry) {
    draft.take(entry);
    if (entry.holes.length > 0) {
      placing.typed(entry);
    }
  }
});
form.addEventListener("focusout", (event) => {
  const entry = entries.of(event.target);
  if (entry && !entry.box.contains(event.relatedTarget)) {
    setTimeout(() => {
      partners.settle(entry);
      showProblem(entry);
    });
  }
});
addEventListener("online", draft.flush);
document.addEventListener("visibilitychange", () => document.hidden || draft.flush().then(draft.watch));
addEventListener("pageshow", (event) => event.persisted && draft.flush().then(draft.watch));
setInterval(draft.watch, "shared" in form.dataset ? LOOK : LOOK_ALONE);

document.documentElement.classList.add("scripted");
status.show("saved");
document.querySelectorAll(".scripted-only").forEach((part) => {
  part.hidden = false;
});
board.begin();
draft.begin();
acts.begin();
