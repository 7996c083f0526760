// What the form's buttons ask for.
import * as draft from "./draft.js";
import * as entries from "./entries.js";
import * as errand from "./errand.js";
import * as shelf from "./shelf.js";

const form = document.getElementById("build");
const LINE = "#line";

function madeUp() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

function act(button, path, part, more = {}) {
  errand.note("");
  errand.carryOut({
    path,
    part,
    button: button.getAttribute("formaction") ? `[formaction="${path}"]` : `#${button.id}`,
    key: madeUp(),
    at: Date.now(),
    ...more,
  });
}

function takeOut(name) {
  const entry = entries.find(name);
  entry.show("");
  draft.take(entry);
  entry.settle();
}

function takeTheirs(button) {
  const entry = entries.find(button.value);
  entry.show(form.elements.namedItem(`theirs:${button.value}`).value);
  draft.take(entry);
  button.closest(".was").remove();
}

function submitted(button) {
  const path = button?.getAttribute("formaction");
  if (path) {
    const part = /\/help/.test(path) ? "help" : path.endsWith("/gate") ? "gate" : "handing";
    act(button, path, part);
  } else if (button?.name === "out") {
    takeOut(button.value);
  } else if (button?.name === "back") {
    takeTheirs(button);
  } else if (button?.value === "line" || document.activeElement?.id === "line") {
    act(document.getElementById("line-add"), form.getAttribute("action"), "typed");
  } else {
    draft.flush();
  }
}

export function begin() {
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    submitted(event.submitter);
  });
  document.addEventListener("click", (event) => {
    if (event.target.closest("#take-back")) {
      errand.takeBack();
    }
  });
  form.addEventListener("input", (event) => {
    if (event.target.id === "line") {
      shelf.put(LINE, event.target.value);
    }
  });
  const line = document.getElementById("line");
  if (line) {
    line.value ||= shelf.get(LINE) ?? "";
  }
  errand.goOn();
}
