// What is chosen in the lists of a schematic, in its drawing or on the board is outlined in all of them.
import * as board from "./schematic/board.js";
import * as probes from "./schematic/probes.js";
import { asButton, fill, words } from "./schematic/words.js";

const figures = [...document.querySelectorAll("[data-schematic]")];
let chosen = null;

// A page of many schematics has the same refs in each; else the board belongs to its schematic.
function place(figure) {
  return figures.length > 1 ? figure : document;
}

function buttons(figure, kind) {
  return [...figure.querySelectorAll(`button[data-choose-${kind}]`)];
}

function named(button, kind) {
  return button.getAttribute(`data-choose-${kind}`);
}

function button(figure, kind, name) {
  return buttons(figure, kind).find((one) => named(one, kind) === name);
}

function all(figure, kind, name) {
  return [...place(figure).querySelectorAll(`[data-${kind}]`)].filter(
    (one) => one.getAttribute(`data-${kind}`) === name && !one.closest(".where-shown"),
  );
}

function sentence(holes) {
  const { figure, kind, name } = chosen;
  const what = words(button(figure, kind, name).closest("li").querySelector(".what"));
  const said = fill(kind === "net" ? figure.dataset.netSays : figure.dataset.partSays, name, what);
  return holes.length ? `${said} ${fill(figure.dataset.board, holes.join(", "))}` : said;
}

/** Outlines what is chosen; answers the sentence about it. */
function show() {
  document.querySelectorAll(".marked:is([data-ref], [data-net], [data-pin], [data-pins])").forEach((one) => one.classList.remove("marked"));
  document.querySelectorAll("button:is([data-choose-ref], [data-choose-net])").forEach((one) => one.setAttribute("aria-pressed", "false"));
  if (!chosen) {
    board.mark([], false);
    board.say("");
    return "";
  }
  const { figure, kind, name } = chosen;
  const pressed = button(figure, kind, name);
  pressed.setAttribute("aria-pressed", "true");
  all(figure, kind, name).forEach((one) => one.classList.add("marked"));
  const holes = figures.length > 1 ? [] : board.mark(board.pinsOf(pressed), kind === "net");
  const said = sentence(holes);
  board.say(said);
  return said;
}

function choose(figure, kind, name) {
  const again = chosen?.figure === figure && chosen.kind === kind && chosen.name === name;
  const before = chosen?.figure;
  chosen = again ? null : { figure, kind, name };
  const said = show();
  before?.querySelector("[data-says-chosen]").replaceChildren();
  figure.querySelector("[data-says-chosen]").textContent = said;
}

function offer(figure, kind) {
  figure.querySelectorAll(`[data-choose-${kind}]`).forEach((text) => {
    const made = asButton(text);
    made.setAttribute(`data-choose-${kind}`, named(text, kind));
    made.dataset.pins = text.dataset.pins;
    made.setAttribute("aria-pressed", "false");
    made.addEventListener("click", () => choose(figure, kind, named(made, kind)));
    text.replaceWith(made);
  });
}

// Of the net of the first pin there; a lead that is on no net stands for its part.
function choosePins(figure, pins) {
  const on = (pin) => buttons(figure, "net").find((one) => board.pinsOf(one).includes(pin));
  const net = pins.map(on).find((one) => one);
  const part = button(figure, "ref", pins[0]?.split(".")[0]);
  if (net) {
    choose(figure, "net", named(net, "net"));
  } else if (part) {
    choose(figure, "ref", named(part, "ref"));
  }
}

function choosesShape(event) {
  const shape = event.target.closest?.(
    ".schematic.choosable :is([data-ref], [data-net]), .board [data-ref], .board.reachable :is([data-pin], [data-pins])",
  );
  if (!shape) {
    return;
  }
  const figure = shape.closest("[data-schematic]") ?? figures[0];
  const kind = shape.hasAttribute("data-ref") ? "ref" : "net";
  const name = shape.getAttribute(`data-${kind}`);
  if (!name) {
    choosePins(figure, board.pinsOf(shape));
  } else if (button(figure, kind, name)) {
    choose(figure, kind, name);
  }
}

// The board is drawn anew while one works; what was chosen stays outlined.
function redrawn() {
  if (board.offer()) {
    probes.draw();
    show();
  }
}

// Says so where a drawing is wider than there is room for.
function tellMore(figure) {
  const box = figure.querySelector(".schematic-scroll");
  const more = figure.querySelector("[data-more]");
  if (box && more) {
    new ResizeObserver(() => {
      more.hidden = box.scrollWidth <= box.clientWidth + 1;
    }).observe(box);
  }
}

figures.forEach((figure) => {
  tellMore(figure);
  offer(figure, "ref");
  offer(figure, "net");
  figure.querySelectorAll(".schematic").forEach((drawing) => drawing.classList.add("choosable"));
  figure.querySelectorAll("[data-with-script]").forEach((one) => {
    one.hidden = false;
  });
});
document.addEventListener("click", choosesShape);
if (figures.length === 1) {
  probes.offer(figures[0]);
  redrawn();
  document.addEventListener("keydown", board.pressed);
  new MutationObserver(redrawn).observe(document.getElementById("work"), { childList: true, subtree: true });
}
