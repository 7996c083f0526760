// Carries out what a button asked for. Everything typed is sent first; then the act, again and again
// with the same key, until the server has answered.
import * as draft from "./draft.js";
import * as shelf from "./shelf.js";
import * as status from "./status.js";
import { swap } from "./parts.js";
import { pause } from "./pause.js";
import { ask, Away, page, SignedOut } from "./wire.js";
import { say, tell } from "./words.js";

const form = document.getElementById("build");
const HAND_IN = "#hand-in";
const LONGEST_WAIT = 8000;
const STALE = 12 * 60 * 60 * 1000;
const PARTS = ["said", "live", "gate", "readings-gate", "handing", "help", "attempts"];

let doing = null;

function body(act) {
  const fields = new URLSearchParams(new FormData(form));
  fields.delete("_csrf");
  fields.set("key", act.key);
  return fields.toString();
}

function isHandIn(act) {
  return act.path.endsWith("/hand-ins");
}

/** Shows on its button what becomes of an act, and a way to take a hand-in back. */
function label(act, key) {
  const button = document.querySelector(act.button);
  if (button) {
    button.dataset.text ??= button.textContent;
    button.textContent = key ? say(key) : button.dataset.text;
    button.setAttribute("aria-disabled", String(key !== ""));
  }
  const back = document.getElementById("take-back");
  if (back) {
    back.hidden = !isHandIn(act) || key === "" || key === "doing";
  }
}

function waits(act) {
  const key = shelf.isSafe() ? "act.kept" : "act.open";
  label(act, isHandIn(act) ? key : "act.later");
}

async function sent(act) {
  await draft.flush();
  if (draft.waiting().length > 0 && !["closed", "gone"].includes(status.now())) {
    throw new Away();
  }
  act.body ??= body(act);
  if (isHandIn(act)) {
    shelf.put(HAND_IN, act);
  }
  const headers = { "Content-Type": "application/x-www-form-urlencoded" };
  return ask(act.path, { method: "POST", headers, body: act.body });
}

async function answered(act) {
  for (let wait = 1000; doing === act; wait = Math.min(LONGEST_WAIT, 2 * wait)) {
    try {
      return await sent(act);
    } catch (problem) {
      if (!(problem instanceof Away || problem instanceof SignedOut)) {
        throw problem;
      }
      if (doing === act) {
        if (draft.waiting().length === 0) {
          status.show(problem instanceof SignedOut ? "out" : "away");
        }
        waits(act);
        await pause(wait);
      }
    }
  }
  return null;
}

/** What there is to say of the buttons. */
export function note(text) {
  document.getElementById("act-says").textContent = text;
  tell(text);
}

export async function carryOut(act) {
  if (doing) {
    if (doing.path !== act.path) {
      note(say("act.busy"));
    }
    return;
  }
  doing = act;
  label(act, "doing");
  try {
    const answer = await answered(act);
    if (answer && doing === act) {
      await finish(act, answer);
    }
  } finally {
    if (doing === act) {
      doing = null;
    }
  }
}

async function finish(act, answer) {
  if (isHandIn(act)) {
    shelf.remove(HAND_IN);
    if (answer.ok) {
      await draft.flush();
      location.assign(answer.url);
      return;
    }
  }
  label(act, "");
  const fresh = page(answer.body);
  if (!fresh.getElementById("gate")) {
    location.reload();
    return;
  }
  swap(fresh, [...PARTS, act.part]);
  if (act.part === "typed") {
    shelf.remove("#line");
  }
  draft.flush();
  draft.look().catch(() => {});
  const summary = document.getElementById("summary");
  if (summary) {
    summary.focus();
  } else {
    const heard = document.querySelector(`#${act.part} [data-says]`);
    tell(heard ? heard.textContent.replace(/\s+/g, " ").trim() : "");
  }
}

/** Takes back what waits, if it has not arrived already. */
export function takeBack() {
  const act = doing;
  doing = null;
  shelf.remove(HAND_IN);
  label(act, "");
  note(say(act.body ? "act.back.late" : "act.back"));
}

/** Goes on with a hand-in that the page was left with, unless that was long ago. */
export function goOn() {
  const before = shelf.get(HAND_IN);
  if (before && Date.now() - before.at < STALE) {
    carryOut(before);
  } else if (before) {
    shelf.remove(HAND_IN);
  }
}
