// What is chosen in the lists of a schematic, in its drawing or on the board is outlined in all of them.
const figures = [...document.querySelectorAll("[data-schematic]")];
let chosen = null;

function fill(text, ...parts) {
  return parts.reduce((said, part, i) => said.replace(`{${i}}`, () => part), text);
}

function words(element) {
  return element.textContent.replace(/\s+/g, " ").trim();
}

// A page of many schematics has the same refs in each; else the board belongs to its schematic.
function place(figure) {
  return figures.length > 1 ? figure : document;
}

function button(figure, kind, name) {
  return [...figure.querySelectorAll(`button[data-choose-${kind}]`)].find(
    (one) => one.getAttribute(`data-choose-${kind}`) === name,
  );
}

function all(figure, kind, name) {
  return [...place(figure).querySelectorAll(`[data-${kind}]`)].filter(
    (one) => one.getAttribute(`data-${kind}`) === name && !one.closest(".where-shown"),
  );
}

function leads(figure, pins) {
  return [...place(figure).querySelectorAll(".board [data-pin]")].filter((lead) =>
    pins.includes(lead.dataset.pin),
  );
}

function sentence(figure, kind, name, holes) {
  const what = words(button(figure, kind, name).closest("li").querySelector(".what"));
  const said = fill(kind === "net" ? figure.dataset.netSays : figure.dataset.partSays, name, what);
  return holes.length ? `${said} ${fill(figure.dataset.board, holes.join(", "))}` : said;
}

function show() {
  document.querySelectorAll(".marked[data-ref], .marked[data-net], .marked[data-pin]").forEach((one) => one.classList.remove("marked"));
  document.querySelectorAll("button[data-choose-ref], button[data-choose-net]").forEach((one) => one.setAttribute("aria-pressed", "false"));
  if (!chosen) {
    return [];
  }
  const { figure, kind, name } = chosen;
  const pressed = button(figure, kind, name);
  const ends = leads(figure, pressed.dataset.pins.split(" "));
  pressed.setAttribute("aria-pressed", "true");
  [...all(figure, kind, name), ...ends].forEach((one) => one.classList.add("marked"));
  return [...new Set(ends.map((end) => end.dataset.hole))];
}

function choose(figure, kind, name) {
  const again = chosen?.figure === figure && chosen.kind === kind && chosen.name === name;
  const before = chosen?.figure;
  chosen = again ? null : { figure, kind, name };
  const holes = show();
  before?.querySelector("[data-says-chosen]").replaceChildren();
  if (chosen) {
    figure.querySelector("[data-says-chosen]").textContent = sentence(figure, kind, name, holes);
  }
}

function asButton(text) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "button";
  made.textContent = words(text);
  return made;
}

function offer(figure, kind) {
  figure.querySelectorAll(`[data-choose-${kind}]`).forEach((text) => {
    const made = asButton(text);
    made.setAttribute(`data-choose-${kind}`, text.getAttribute(`data-choose-${kind}`));
    made.dataset.pins = text.dataset.pins;
    made.setAttribute("aria-pressed", "false");
    made.addEventListener("click", () => choose(figure, kind, made.getAttribute(`data-choose-${kind}`)));
    text.replaceWith(made);
  });
}

// The drawing again, beside the reading, with the leads of the meter on it.
function probes(figure, reading) {
  const box = document.createElement("div");
  const scroll = figure.querySelector(".schematic-scroll").cloneNode(true);
  const drawing = scroll.querySelector(".schematic");
  drawing.removeAttribute("aria-labelledby");
  drawing.querySelectorAll("title, desc").forEach((text) => text.remove());
  drawing.querySelectorAll(".marked").forEach((one) => one.classList.remove("marked"));
  drawing.classList.remove("choosable");
  const probing = [...drawing.querySelectorAll("[data-probing]")].find((one) => one.dataset.probing === reading);
  probing.classList.add("shown");
  const kinds = ["red", "meter", "either"].filter((kind) => probing.querySelector(`.${kind}`));
  const says = document.createElement("p");
  says.className = "small";
  says.textContent = kinds.map((kind) => figure.dataset[kind]).join(" ");
  box.className = "where-shown";
  box.append(scroll, says);
  return { box, scroll, drawing };
}

function toggle(figure, made, text) {
  const open = made.nextElementSibling;
  if (open) {
    open.remove();
  } else {
    const { box, scroll, drawing } = probes(figure, text.dataset.where);
    drawing.setAttribute("aria-label", text.dataset.name);
    if (scroll.hasAttribute("aria-label")) {
      scroll.setAttribute("aria-label", text.dataset.name);
    }
    made.after(box);
    drawing.querySelector(".probing.shown").scrollIntoView({ block: "nearest", inline: "center" });
  }
  made.setAttribute("aria-expanded", String(!open));
}

function offerProbes(figure) {
  document.querySelectorAll(".where-probes").forEach((text) => {
    const known = [...figure.querySelectorAll("[data-probing]")].some((one) => one.dataset.probing === text.dataset.where);
    if (!known) {
      return;
    }
    const made = asButton(text);
    made.setAttribute("aria-label", text.dataset.name);
    made.setAttribute("aria-expanded", "false");
    made.addEventListener("click", () => toggle(figure, made, text));
    text.replaceChildren(made);
    text.hidden = false;
  });
}

function choosesShape(event) {
  const shape = event.target.closest?.(".schematic.choosable [data-ref], .schematic.choosable [data-net], .board [data-ref]");
  if (!shape) {
    return;
  }
  const kind = shape.hasAttribute("data-ref") ? "ref" : "net";
  const name = shape.getAttribute(`data-${kind}`);
  const figure = shape.closest("[data-schematic]") ?? figures[0];
  if (button(figure, kind, name)) {
    choose(figure, kind, name);
  }
}

figures.forEach((figure) => {
  offer(figure, "ref");
  offer(figure, "net");
  figure.querySelectorAll(".schematic").forEach((drawing) => drawing.classList.add("choosable"));
  figure.querySelectorAll("[data-with-script]").forEach((one) => {
    one.hidden = false;
  });
});
document.addEventListener("click", choosesShape);
if (figures.length === 1) {
  offerProbes(figures[0]);
  // The board is drawn anew while one works; what was chosen stays outlined.
  const watch = new MutationObserver(() => chosen && show());
  watch.observe(document.getElementById("work"), { childList: true, subtree: true });
}
