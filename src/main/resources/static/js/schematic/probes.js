// Where the leads of the meter go for a reading: on the drawing, on the board, and where there is
// room beside the reading on the drawing again.
import { boards, seat } from "./board.js";
import { asButton, fill } from "./words.js";

let open = null;

function of(figure, reading) {
  const touches = figure.querySelector("template.touches").content;
  return [...touches.querySelectorAll("[data-of]")].find((one) => one.dataset.of === reading);
}

// A lead that is not on the board yet has no place there.
function put(board, touches) {
  const marks = document.importNode(touches, true);
  for (const touch of [...marks.children]) {
    const at = seat(board, touch.dataset.at);
    if (at) {
      touch.setAttribute("transform", `translate(${at.x} ${at.y})`);
    } else {
      touch.remove();
    }
  }
  const targets = board.querySelector(".targets") ?? board.querySelector(".reach")?.parentNode;
  board.insertBefore(marks, targets ?? null);
}

function legend(figure, touches) {
  const all = [...touches.children];
  const kinds = ["red", "meter", "either"].filter((kind) => all.some((touch) => touch.classList.contains(kind)));
  return kinds.map((kind) => figure.dataset[kind]);
}

function places(figure, touches) {
  const [board] = boards();
  if (!board) {
    return [];
  }
  const all = [...touches.children].map((touch) => ({ ...touch.dataset, seat: seat(board, touch.dataset.at) }));
  const named = ({ letter, name, seat: at }) => fill(figure.dataset.seat, letter || name, at.hole);
  const seated = all.filter((touch) => touch.seat).map(named);
  const others = all.filter((touch) => !touch.seat).map((touch) => touch.name);
  return [
    ...(seated.length ? [fill(figure.dataset.board, seated.join(", "))] : []),
    ...(others.length ? [fill(figure.dataset.unplaced, others.join(", "))] : []),
  ];
}

/** Puts the marks of the reading that is open on the board as it is now. */
export function draw() {
  boards().forEach((board) => board.querySelectorAll(".probing").forEach((old) => old.remove()));
  if (open) {
    const { figure, touches, says } = open;
    boards().forEach((board) => put(board, touches));
    says.textContent = [...legend(figure, touches), ...places(figure, touches)].join(" ");
  }
}

function drawing(figure, text) {
  const original = figure.querySelector(".schematic-scroll");
  if (!original || text.closest(".readouts")) {
    return [];
  }
  const scroll = original.cloneNode(true);
  const picture = scroll.querySelector(".schematic");
  picture.removeAttribute("aria-labelledby");
  picture.setAttribute("aria-label", text.dataset.name);
  picture.querySelectorAll("title, desc").forEach((one) => one.remove());
  picture.querySelectorAll(".marked").forEach((one) => one.classList.remove("marked"));
  picture.classList.remove("choosable");
  if (scroll.hasAttribute("aria-label")) {
    scroll.setAttribute("aria-label", text.dataset.name);
  }
  return [scroll];
}

function showOn(figure, reading) {
  figure.querySelectorAll("[data-probing]").forEach((one) => {
    one.classList.toggle("shown", one.dataset.probing === reading);
  });
}

function close() {
  if (open) {
    showOn(open.figure, "");
  }
  open?.made.setAttribute("aria-expanded", "false");
  open?.box.remove();
  open = null;
}

function toggle(figure, made, text) {
  const again = open?.made === made;
  close();
  if (!again) {
    showOn(figure, text.dataset.where);
    const box = document.createElement("div");
    const says = document.createElement("p");
    box.className = "where-shown";
    says.className = "small";
    box.append(...drawing(figure, text), says);
    made.after(box);
    made.setAttribute("aria-expanded", "true");
    open = { figure, made, box, says, touches: of(figure, text.dataset.where) };
    box.querySelector(".probing.shown")?.scrollIntoView({ block: "nearest", inline: "center" });
  }
  draw();
}

/** A button at each reading that is taken at a lead. */
export function offer(figure) {
  document.querySelectorAll(".where-probes").forEach((text) => {
    if (!of(figure, text.dataset.where)) {
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
