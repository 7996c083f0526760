// Placing by finger, mouse and keys.
import * as bar from "./bar.js";
import * as entries from "./entries.js";
import * as holes from "./holes.js";
import * as placing from "./placing.js";
import { say } from "./words.js";

let origin = null;

function back() {
  const to = origin;
  origin = null;
  placing.end();
  (to?.isConnected ? to : bar).focus();
}

function clicked(event) {
  const button = event.target.closest("[data-place]");
  if (!button) {
    return;
  }
  placing.begin(button.dataset.place);
  const byKey = event.detail === 0;
  origin = bar.has(button) ? null : button;
  if (byKey) {
    holes.focus(holes.read(placing.now().field?.value ?? ""));
  } else if (origin) {
    bar.scrollTo();
  }
}

function pressed(event) {
  const target = event.target.closest?.(".target");
  const { entry, held } = placing.now();
  if (event.key === "Escape" && (entry || held)) {
    if (target || bar.has(event.target)) {
      back();
    } else {
      placing.end();
    }
    return;
  }
  if (!target || event.altKey || event.ctrlKey || event.metaKey) {
    return;
  }
  if (event.key === "Enter" || event.key === " ") {
    event.preventDefault();
    placing.tap(target.dataset.hole);
  } else if (holes.move(target, event.key)) {
    event.preventDefault();
  }
}

function entered(event) {
  const one = entries.of(event.target);
  if (one?.holes.includes(event.target)) {
    if (placing.now().field !== event.target) {
      placing.choose(one, event.target);
    }
  } else if (event.target.matches("input")) {
    placing.end(false);
  }
}

// A button at each part, for who comes from there.
function buttons() {
  for (const one of bar.placeable().filter((o) => o.kind === "part")) {
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
  bar.begin(placing.undo, back);
  document.addEventListener("click", clicked);
  document.addEventListener("click", (event) => {
    const target = event.target.closest(".target");
    if (target) {
      placing.tap(target.dataset.hole);
    }
  });
  document.addEventListener("keydown", pressed);
  document.getElementById("build").addEventListener("focusin", entered);
  holes.settle();
  placing.show();
}
