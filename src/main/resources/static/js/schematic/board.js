// The board beside its schematic: what can be chosen on it, by finger, mouse and keys, and marks on it.
const SVG = "http://www.w3.org/2000/svg";
const ONWARD = ["ArrowRight", "ArrowDown"];
const BACK = ["ArrowLeft", "ArrowUp"];

export function boards() {
  return [...document.querySelectorAll(".board")];
}

/** The pins that a shape stands for, as they were entered. */
export function pinsOf(shape) {
  return (shape.dataset.pins ?? shape.dataset.pin ?? "").split(" ").filter((pin) => pin);
}

function shown(pin) {
  return pin.replace(".", " ").replace("-", "\u2212");
}

/** A lead's hole, as the board names it, with its place; nothing where it is not on the board. */
export function seat(board, pin) {
  const lead = [...board.querySelectorAll(".lead-end")].find((one) => one.dataset.pin === pin);
  const end = lead?.querySelector(".end");
  return end && { hole: lead.dataset.hole, x: end.cx.baseVal.value, y: end.cy.baseVal.value };
}

// What is in each hole that is used, leads before links.
function uses(board) {
  const leads = [...board.querySelectorAll(".lead-end")].map((lead) => {
    return { end: lead.querySelector(".end"), hole: lead.dataset.hole, pins: pinsOf(lead), name: shown(lead.dataset.pin) };
  });
  const links = [...board.querySelectorAll(".link-run .end")].map((end) => {
    const run = end.closest(".link-run");
    return { end, hole: end.dataset.hole, pins: pinsOf(run), name: `L${run.dataset.link}` };
  });
  const places = new Map();
  for (const use of [...leads, ...links].filter((one) => one.pins.length > 0)) {
    const at = `${use.end.cx.baseVal.value} ${use.end.cy.baseVal.value}`;
    places.set(at, [...(places.get(at) ?? []), use]);
  }
  return [...places.values()];
}

function reach(group) {
  const [first] = group;
  const made = document.createElementNS(SVG, "circle");
  const set = (name, value) => made.setAttribute(name, value);
  set("class", "reach");
  set("r", "12");
  set("cx", first.end.getAttribute("cx"));
  set("cy", first.end.getAttribute("cy"));
  set("role", "button");
  set("tabindex", "-1");
  set("aria-pressed", "false");
  set("aria-label", `${first.hole}, ${group.map((use) => use.name).join("; ")}`);
  set("data-pins", group.flatMap((use) => use.pins).join(" "));
  return made;
}

function reaches(board) {
  return [...board.querySelectorAll(".reach")];
}

// Along the columns, one after the other.
function inOrder(board, made) {
  const { width, height } = board.viewBox.baseVal;
  const place = (one) => [one.cx.baseVal.value, one.cy.baseVal.value];
  return made.sort((a, b) => {
    const [ax, ay] = place(a);
    const [bx, by] = place(b);
    return width > height ? ax - bx || ay - by : ay - by || ax - bx;
  });
}

function makeReachable(board) {
  const made = inOrder(board, uses(board).map(reach));
  board.classList.add("reachable");
  if (made.length === 0) {
    return;
  }
  [...board.children].filter((one) => !["title", "desc"].includes(one.tagName)).forEach((one) => one.setAttribute("aria-hidden", "true"));
  board.setAttribute("role", "group");
  const layer = document.createElementNS(SVG, "g");
  layer.append(...made);
  made[0].setAttribute("tabindex", "0");
  board.append(layer);
}

/** Makes what was drawn since the last call ready; answers whether there was any. */
export function offer() {
  const fresh = boards().filter((board) => !board.classList.contains("known"));
  fresh.forEach((board) => board.classList.add("known"));
  // Holes that are tapped to place parts stay as they are.
  fresh.filter((board) => !board.querySelector(".targets")).forEach(makeReachable);
  return fresh.length > 0;
}

function to(from, other) {
  if (other) {
    from.setAttribute("tabindex", "-1");
    other.setAttribute("tabindex", "0");
    other.focus();
  }
}

function step(from, key) {
  const all = reaches(from.ownerSVGElement);
  const at = all.indexOf(from);
  if (ONWARD.includes(key)) {
    return all[at + 1];
  }
  return BACK.includes(key) ? all[at - 1] : key === "Home" ? all[0] : all.at(-1);
}

/** Keys on a hole: arrows go on to the next one that is used, Enter and space choose. */
export function pressed(event) {
  const from = event.target.closest?.(".reach");
  if (!from || event.altKey || event.ctrlKey || event.metaKey) {
    return;
  }
  if (event.key === "Enter" || event.key === " ") {
    from.dispatchEvent(new MouseEvent("click", { bubbles: true }));
  } else if ([...ONWARD, ...BACK, "Home", "End"].includes(event.key)) {
    to(from, step(from, event.key));
  } else {
    return;
  }
  event.preventDefault();
}

/** Marks the leads on some pins, of a net its strips and links as well; answers their holes. */
export function mark(pins, net) {
  const holds = (shape) => pinsOf(shape).some((pin) => pins.includes(pin));
  const kinds = net ? ".lead-end, .link-run, .metal" : ".lead-end";
  const shapes = boards().flatMap((board) => [...board.querySelectorAll(kinds)]).filter(holds);
  shapes.forEach((shape) => shape.classList.add("marked"));
  boards()
    .flatMap(reaches)
    .forEach((one) => one.setAttribute("aria-pressed", String(net && holds(one))));
  return [...new Set(shapes.map((shape) => shape.dataset.hole).filter((hole) => hole))];
}

/** Says under the board what is chosen; who listens hears it from the schematic. */
export function say(text) {
  document.querySelectorAll("#board .caption").forEach((caption) => {
    caption.querySelector(".board-says")?.remove();
    if (text) {
      const says = document.createElement("p");
      says.className = "board-says small";
      says.textContent = text;
      caption.prepend(says);
    }
  });
}
