// Saves while somebody types. A changed entry is kept on this device first, then sent; what the
// server has not acknowledged is sent again until it has.
import * as entries from "./entries.js";
import { isLayout, say } from "./news.js";
import * as partners from "./partners.js";
import * as shelf from "./shelf.js";
import * as status from "./status.js";
import { Away, askJson, SignedOut } from "./wire.js";

const form = document.getElementById("build");
const PAUSE = 400;
const LONGEST_WAIT = 8000;
const BATCH = 40;

const refused = new Map();
let known = {};
let timer = 0;
let sending = null;
let tries = 0;
let single = false;

/** The session is closed, or the bench is not this student's any more. */
class Refused extends Error {}

function isEntry(name) {
  return !name.startsWith("#");
}

/** Names of the entries that are still to be sent. */
export function waiting() {
  return shelf
    .names()
    .filter((name) => isEntry(name) && refused.get(name) !== shelf.get(name).text);
}

/** Takes up what the fields of an entry say now. */
export function take(entry) {
  const before = shelf.get(entry.name);
  if (!before && !entry.changed) {
    return;
  }
  shelf.put(entry.name, { text: entry.text, base: before?.base ?? entry.base });
  entry.note("");
  status.show(tries === 0 ? "saving" : status.now());
  if (tries === 0) {
    later(PAUSE);
  }
}

function later(wait) {
  clearTimeout(timer);
  timer = setTimeout(flush, wait);
}

/** Sends now what is waiting; ends when the server has answered, or has not. */
export function flush() {
  clearTimeout(timer);
  sending ??= send().finally(() => {
    sending = null;
  });
  return sending;
}

async function send() {
  const begun = performance.now();
  try {
    const back = tries > 0;
    while (waiting().length > 0) {
      await sendBatch(waiting().slice(0, single ? 1 : BATCH));
    }
    if (back) {
      await look();
    }
    tries = 0;
    single = false;
    status.show(refused.size > 0 ? "partly" : "saved");
  } catch (problem) {
    failed(problem, performance.now() - begun);
  }
}

function failed(problem, took) {
  if (problem instanceof SignedOut) {
    status.show("out");
  } else if (problem instanceof Away) {
    status.show("away");
  } else if (problem instanceof Refused) {
    status.show(problem.message);
  } else {
    throw problem;
  }
  // From the start of one try to the next: one that hung has waited already.
  const wait = Math.min(LONGEST_WAIT, 1000 * 2 ** tries);
  tries++;
  later(Math.max(0, wait - took));
}

async function sendBatch(names) {
  const sent = names.map((name) => ({ name, ...shelf.get(name) }));
  const answer = await askJson(form.dataset.entries, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ entries: sent }),
  });
  refuse(answer.status);
  if (answer.ok) {
    acknowledge(sent, answer.json);
  } else if (sent.length > 1) {
    single = true;
  } else {
    const why = (answer.json.errors ?? []).map((error) => error.text).join(" ");
    refused.set(sent[0].name, sent[0].text);
    problems({ ...known, [sent[0].name]: why || answer.json.detail });
  }
}

function refuse(status) {
  if (status === 409 || status === 404) {
    throw new Refused(status === 409 ? "closed" : "gone");
  }
}

function acknowledge(sent, answer) {
  for (const { name, text } of sent) {
    const saved = answer.entries.find((entry) => entry.name === name);
    const newer = shelf.get(name);
    refused.delete(name);
    entries.find(name)?.keep(saved.text, saved.revision);
    if (newer.text === text) {
      shelf.remove(name);
    } else {
      shelf.put(name, { ...newer, base: saved.revision });
    }
  }
  problems(answer.problems);
  say("saved", { replaced: answer.replaced });
  if (sent.some(({ name }) => isLayout(name))) {
    say("layout");
  }
}

function problems(found) {
  known = found;
  say("problems", found);
}

/** Asks what partners have entered since. */
export async function look() {
  const answer = await askJson(form.dataset.entries);
  refuse(answer.status);
  if (answer.ok) {
    partners.receive(answer.json.entries);
    problems(answer.json.problems);
    partners.show();
  }
}

/** Looks now and then, while somebody looks at the page. */
export async function watch() {
  if (document.hidden || sending || tries > 0) {
    return;
  }
  try {
    await look();
  } catch (problem) {
    failed(problem, 0);
  }
}

/** Puts back what was not sent before the page was left, and takes up what is in the fields. */
export function begin() {
  for (const name of shelf.names().filter(isEntry)) {
    const entry = entries.find(name) ?? entries.row(name);
    entry?.show(shelf.get(name).text);
  }
  entries.all().forEach(take);
  if (waiting().length > 0) {
    flush();
  }
}
