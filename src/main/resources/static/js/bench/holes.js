// The holes of the drawn board: what is in them, how arrow keys move over them, marks on them.
import * as entries from "./entries.js";
import { say } from "./words.js";

const SVG = "http://www.w3.org/2000/svg";
const WRITTEN =
  /^(?:([1-9]):)?(?:([+-][aj])([1-9][0-9]{0,2})?|([a-j])-?([1-9][0-9]{0,2})|([1-9][0-9]{0,2})([a-j]))$/;

/** A hole as the board names it; empty where the text is none. */
export function read(text) {
  const m = WRITTEN.exec(text.trim().toLowerCase().replace("\u2212", "-"));
  if (!m) {
    return "";
  }
  const board = m[1] === undefined || m[1] === "1" ? "" : `${m[1]}:`;
  return board + (m[2] ? m[2] + (m[3] ?? "") : m[4] ? m[4] + m[5] : m[7] + m[6]);
}

function svgs() {
  return [...document.querySelectorAll("#board svg")];
}

function targets(svg) {
  return [...svg.querySelectorAll(".target")];
}

/** The view that fits the screen. */
function shown() {
  return svgs().find((svg) => svg.getClientRects().length > 0) ?? svgs()[0];
}

/** The fields whose lead is in a hole. */
export function fieldsIn(hole) {
  return entries
    .all()
    .flatMap((entry) => entry.holes)
    .filter((field) => read(field.value) === hole);
}

/** What a lead is called by how it looks, in a sentence: long lead. */
export function labelled(field) {
  const label = field.labels[0].textContent.trim();
  return label.charAt(0).toLowerCase() + label.slice(1);
}

/** What a field is about: R1, one end. */
export function named(field) {
  return say("lead", entries.of(field).title, labelled(field));
}

/** Says in each target's name what is in its hole. */
export function name() {
  const taken = new Map();
  for (const field of entries.all().flatMap((entry) => entry.holes)) {
    const hole = read(field.value);
    if (hole) {
      taken.set(hole, [...(taken.get(hole) ?? []), named(field)]);
    }
  }
  for (const target of svgs().flatMap(targets)) {
    const { hole } = target.dataset;
    const what = taken.get(hole)?.join("; ") ?? say("free");
    target.setAttribute("aria-label", `${hole}, ${what}`);
  }
}

function reachable(target) {
  for (const other of targets(target.ownerSVGElement)) {
    other.setAttribute("tabindex", other === target ? "0" : "-1");
  }
}

/** One target of each view can be reached by Tab. */
export function settle(hole = "") {
  for (const svg of svgs()) {
    const all = targets(svg);
    if (all.length > 0) {
      reachable(all.find((target) => target.dataset.hole === hole) ?? all[0]);
    }
  }
}

export function focus(hole = "") {
  const all = targets(shown());
  const at =
    all.find((target) => target.dataset.hole === hole) ??
    all.find((target) => target.getAttribute("tabindex") === "0");
  if (at) {
    reachable(at);
    at.focus();
  }
}

function place(target) {
  return [Number(target.dataset.x), Number(target.dataset.y)];
}

function nearest(from, among, axis) {
  const [x, y] = place(from);
  const steps = among.map((target) => {
    const [tx, ty] = place(target);
    return { target, along: Math.abs(axis === 0 ? tx - x : ty - y), off: Math.abs(axis === 0 ? ty - y : tx - x) };
  });
  steps.sort((a, b) => a.along - b.along || a.off - b.off);
  return steps[0]?.target;
}

function next(target, key) {
  const [x, y] = place(target);
  const all = targets(target.ownerSVGElement);
  const row = all.filter((t) => place(t)[1] === y);
  switch (key) {
    case "ArrowLeft":
      return nearest(target, row.filter((t) => place(t)[0] < x), 0);
    case "ArrowRight":
      return nearest(target, row.filter((t) => place(t)[0] > x), 0);
    case "ArrowUp":
      return nearest(target, all.filter((t) => place(t)[1] < y), 1);
    case "ArrowDown":
      return nearest(target, all.filter((t) => place(t)[1] > y), 1);
    case "Home":
      return row[0];
    case "End":
      return row.at(-1);
    default:
      return undefined;
  }
}

const KEYS = ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown", "Home", "End"];

/** Whether the key moved over the holes. */
export function move(target, key) {
  if (!KEYS.includes(key)) {
    return false;
  }
  const to = next(target, key);
  if (to) {
    reachable(to);
    to.focus();
  }
  return true;
}

/** Marks holes in both views: `style` says how. */
export function mark(holes, style) {
  for (const svg of svgs()) {
    svg.querySelectorAll(`.${style}`).forEach((old) => old.remove());
    const layer = svg.querySelector("[data-targets]");
    for (const target of targets(svg).filter((t) => holes.includes(t.dataset.hole))) {
      const dot = document.createElementNS(SVG, "circle");
      dot.setAttribute("class", style);
      dot.setAttribute("cx", target.getAttribute("cx"));
      dot.setAttribute("cy", target.getAttribute("cy"));
      dot.setAttribute("r", "9");
      dot.setAttribute("aria-hidden", "true");
      layer.before(dot);
    }
  }
}
