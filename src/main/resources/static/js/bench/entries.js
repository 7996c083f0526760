// The entries of the page: each a box with its fields, what is kept of it, and a word on it.
import { compose, spread } from "./texts.js";
import { say } from "./words.js";

const form = document.getElementById("build");

export class Entry {
  constructor(box) {
    this.box = box;
    this.name = box.dataset.entry;
    this.kind = this.name.split(":")[0];
    this.by = "";
  }

  get fields() {
    return [...this.box.querySelectorAll("input:not([type=hidden])")];
  }

  /** The fields of holes, in the order in which they are placed. */
  get holes() {
    return this.fields.filter((field) => field.dataset.pin && field.dataset.pin !== "marked");
  }

  get title() {
    return this.box.dataset.title;
  }

  get text() {
    return compose(this.kind, new Map(this.fields.map((f) => [f.dataset.pin ?? "", f.value])));
  }

  get kept() {
    return this.#hidden("was").value;
  }

  get base() {
    return Number(this.#hidden("base").value);
  }

  /** Whether the fields say something else than what is kept. */
  get changed() {
    return this.text !== compose(this.kind, this.#spread(this.kept));
  }

  get focused() {
    return this.box.contains(document.activeElement);
  }

  keep(text, revision) {
    this.#hidden("was").value = text;
    this.#hidden("base").value = String(revision);
  }

  show(text) {
    const values = this.#spread(text);
    for (const field of this.fields) {
      field.value = values.get(field.dataset.pin ?? "") ?? "";
    }
    this.settle();
  }

  /** Rows for links and extra readings are there only while something is in them. */
  settle() {
    const made = this.kind === "link" || this.kind === "extra";
    this.box.hidden = made && this.text === "" && !this.focused && !("open" in this.box.dataset);
  }

  problem(text, isHole) {
    const place = this.box.querySelector("[data-problem]");
    if (place.textContent === text) {
      return;
    }
    place.textContent = text;
    const unread = this.holes.filter((field) => field.value !== "" && !isHole(field.value));
    const wrong = unread.length > 0 ? unread : this.fields.filter((f) => f.dataset.pin !== "marked");
    for (const field of this.fields) {
      const is = text !== "" && wrong.includes(field);
      field.toggleAttribute("aria-invalid", is);
      if (is) {
        field.setAttribute("aria-invalid", "true");
      }
    }
    this.#describe(place, text !== "");
  }

  /** A word on who wrote last, with a button where there is a way back. */
  note(text, button = null) {
    let place = this.box.querySelector("[data-note]");
    if (!place) {
      place = document.createElement("p");
      place.dataset.note = "";
      place.className = "small from";
      this.box.append(place);
    }
    place.replaceChildren(text, ...(button ? [" ", button] : []));
    place.hidden = text === "";
  }

  #describe(place, on) {
    for (const field of this.fields) {
      const ids = (field.getAttribute("aria-describedby") ?? "").split(" ");
      const others = ids.filter((id) => id !== "" && id !== place.id);
      const all = on ? [...others, place.id] : others;
      field.toggleAttribute("aria-describedby", all.length > 0);
      if (all.length > 0) {
        field.setAttribute("aria-describedby", all.join(" "));
      }
    }
  }

  #spread(text) {
    return spread(this.kind, this.fields.map((field) => field.dataset.pin ?? ""), text);
  }

  #hidden(what) {
    return this.box.querySelector(`input[name="${what}:${this.name}"]`);
  }
}

const entries = new Map();

function gather() {
  for (const box of form.querySelectorAll("[data-entry]")) {
    if (!entries.has(box.dataset.entry)) {
      entries.set(box.dataset.entry, new Entry(box));
    }
  }
}

export function all() {
  return [...entries.values()];
}

export function find(name) {
  return entries.get(name);
}

export function of(element) {
  const box = element.closest?.("[data-entry]");
  return box ? entries.get(box.dataset.entry) : undefined;
}

// Attributes of a row name its entry; a template's entry is called "new".
function renamed(row, from, to) {
  for (const element of [row, ...row.querySelectorAll("*")]) {
    for (const attribute of element.attributes) {
      attribute.value = attribute.value.replaceAll(from, to);
    }
  }
  return row;
}

/** A row for a link or extra reading that the page was sent without. */
export function row(name) {
  const kind = name.split(":")[0];
  const template = document.getElementById(`${kind}-row`);
  if (!entries.has(name) && template) {
    const copy = template.content.firstElementChild.cloneNode(true);
    document.getElementById(`${kind}s`).append(renamed(copy, `${kind}:new`, name));
    gather();
    number();
  }
  return entries.get(name);
}

/** Links are numbered as they stand. */
export function number() {
  const links = all().filter((entry) => entry.kind === "link" && !entry.box.hidden);
  links.forEach((entry, i) => {
    entry.box.dataset.title = say("link", i + 1);
    entry.box.querySelector("legend").textContent = entry.title;
  });
}

/** A name for a link, different from what anybody else makes up. */
export function madeUp() {
  const bytes = crypto.getRandomValues(new Uint8Array(10));
  return `j${[...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("")}`;
}

// The empty row for a link that a page without a script needs.
for (const spare of form.querySelectorAll("[data-spare]")) {
  if ([...spare.querySelectorAll("input:not([type=hidden])")].every((field) => field.value === "")) {
    spare.remove();
  }
}
gather();
