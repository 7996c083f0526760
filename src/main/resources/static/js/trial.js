// Checks the lines while they are typed: the board and the notes are asked for again, never the box.
const form = document.getElementById("build");
const box = document.getElementById("lines");
const gutter = document.getElementById("gutter");
const heard = document.getElementById("heard");
const PAUSE = 350;
const FEWEST = 12;
const MOST = 40;

let pause = 0;
let asked = new AbortController();

function wrongLines() {
  const wrong = document.getElementById("notes").dataset.wrong;
  return new Set(wrong ? wrong.split(" ").map(Number) : []);
}

function number() {
  const wrong = wrongLines();
  const lines = box.value.split("\n").length;
  box.rows = Math.min(MOST, Math.max(FEWEST, lines + 1));
  const rows = Array.from({ length: Math.max(lines, box.rows) }, (_, i) => {
    const row = document.createElement("li");
    row.textContent = String(i + 1);
    row.className = wrong.has(i + 1) ? "bad" : "";
    return row;
  });
  gutter.replaceChildren(...rows);
  gutter.scrollTop = box.scrollTop;
  box.setAttribute("aria-invalid", String(wrong.size > 0));
}

function say() {
  const notes = [...document.querySelectorAll("#notes li")].map((note) => note.textContent.trim());
  const said = notes.join(" ").replace(/\s+/g, " ");
  if (heard.textContent !== said) {
    heard.textContent = said;
  }
}

async function check() {
  asked.abort();
  asked = new AbortController();
  try {
    const answer = await fetch(form.dataset.check, {
      method: "POST",
      headers: { "X-Part": "live" },
      body: new URLSearchParams(new FormData(form)),
      signal: asked.signal,
    });
    if (!answer.ok) {
      return;
    }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const twin = document.querySelector(".twin").open;
    for (const id of ["board", "notes"]) {
      document.getElementById(id).replaceWith(page.getElementById(id));
    }
    document.querySelector(".twin").open = twin;
    number();
    say();
  } catch (problem) {
    // Without a network the lines stay as they are; the next change asks again.
    if (problem.name !== "AbortError" && !(problem instanceof TypeError)) {
      throw problem;
    }
  }
}

function select(line) {
  const lines = box.value.split("\n");
  const start = lines.slice(0, line - 1).reduce((sum, text) => sum + text.length + 1, 0);
  box.focus();
  box.setSelectionRange(start, start + (lines[line - 1] ?? "").length);
}

function add(text) {
  const before = box.value.replace(/\s+$/, "");
  box.value = `${before}${before ? "\n" : ""}${text} `;
  box.focus();
  box.setSelectionRange(box.value.length, box.value.length);
  number();
  check();
}

box.addEventListener("input", () => {
  number();
  clearTimeout(pause);
  pause = setTimeout(check, PAUSE);
});

box.addEventListener("scroll", () => {
  gutter.scrollTop = box.scrollTop;
});

document.addEventListener("click", (event) => {
  const link = event.target.closest("[data-line]");
  const adding = event.target.closest("button[name=add]");
  if (link) {
    event.preventDefault();
    select(Number(link.dataset.line));
  }
  if (adding) {
    event.preventDefault();
    add(adding.value);
  }
});

number();

// Typed before this script was there, or put back by the browser.
if (box.value !== box.defaultValue) {
  check();
}

// A board that is wider than its region begins where there is something to look at.
const wide = document.querySelector(".board-scroll.wide");
const ring = wide?.querySelector(".ring");
if (ring) {
  wide.scrollLeft = ring.cx.baseVal.value - wide.clientWidth / 2;
}
