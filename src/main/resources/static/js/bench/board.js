// Draws the board again when the build on it has changed, and leaves the reader where they were.
import * as hands from "./hands.js";
import * as holes from "./holes.js";
import { news } from "./news.js";
import * as placing from "./placing.js";
import { drawn, swap } from "./parts.js";
import { ask, page } from "./wire.js";

const form = document.getElementById("build");
const PARTS = ["live", "gate", "readings-gate", "handing"];
let asking = false;
let again = false;
let left = null;

async function draw() {
  again = asking;
  if (asking) {
    return;
  }
  asking = true;
  try {
    const answer = await ask(form.dataset.board);
    if (answer.ok) {
      swap(page(answer.body), PARTS);
    }
  } catch {
    // The marks stay until a later save draws the board.
  } finally {
    asking = false;
  }
  if (again) {
    draw();
  }
}

function leave() {
  const at = document.activeElement?.closest?.(".target");
  left = {
    hole: at?.dataset.hole ?? document.querySelector("#board .target[tabindex='0']")?.dataset.hole,
    focused: Boolean(at),
    open: document.querySelector("#board .twin")?.open,
    scrolls: [...document.querySelectorAll("#board .board-scroll")].map((box) => [box.scrollLeft, box.scrollTop]),
    top: scrollY,
  };
}

function come() {
  document.querySelectorAll("#board .board-scroll").forEach((box, i) => {
    [box.scrollLeft, box.scrollTop] = left.scrolls[i] ?? [0, 0];
  });
  document.querySelector("#board .twin").open = left.open;
  holes.settle(left.hole);
  placing.drawn();
  if (left.focused) {
    holes.focus(left.hole);
  }
  scrollTo(scrollX, left.top);
}

export function begin() {
  drawn.addEventListener("before", (event) => event.detail === "live" && leave());
  drawn.addEventListener("after", (event) => event.detail === "live" && come());
  news.addEventListener("layout", draw);
  if ("open" in form.dataset) {
    hands.start();
    draw();
  }
}
