// Asks for the tiles every few seconds while somebody looks; swaps them only when they changed.
const live = document.getElementById("live");
const reach = document.getElementById("reach");
const told = document.getElementById("told");
const EVERY = 4000;
const PATIENCE = 10000;

let etag = live.dataset.etag;
let heard = new Date();
let waiting = 0;
let asking = false;

// A bench and why it needs somebody: the same need at the same bench is no news.
function needs() {
  const tiles = [...live.querySelectorAll("[data-need]")];
  return new Map(tiles.map((tile) => [tile.dataset.need, tile]));
}

function tell(before) {
  const news = [...needs()].filter(([need]) => !before.has(need));
  const said = news.map(([need, tile]) => {
    const bench = tile.querySelector("h2").textContent.trim();
    return `${bench}: ${tile.querySelector(".why").textContent.trim()}`;
  });
  if (said.length > 0) {
    told.textContent = said.join(". ").replace(/\s+/g, " ");
  }
}

function swap(text) {
  const page = new DOMParser().parseFromString(text, "text/html");
  const fresh = page.getElementById("tiles");
  const before = needs();
  const focused = live.contains(document.activeElement) ? document.activeElement.id : "";
  document.getElementById("tiles").replaceWith(fresh);
  if (focused) {
    document.getElementById(focused)?.focus({ preventScroll: true });
  }
  tell(before);
}

function complain(words) {
  if (reach.hidden || reach.textContent !== words) {
    reach.textContent = words;
    reach.hidden = false;
  }
}

function clock(time) {
  return time.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", second: "2-digit" });
}

async function ask() {
  const answer = await fetch(live.dataset.tiles, {
    headers: { "If-None-Match": etag },
    cache: "no-store",
    redirect: "manual",
    signal: AbortSignal.timeout(PATIENCE),
  });
  if (answer.status === 200) {
    etag = answer.headers.get("ETag") ?? "";
    swap(await answer.text());
  } else if (answer.status !== 304) {
    throw new Error(answer.type === "opaqueredirect" || answer.status < 500 ? "gone" : "lost");
  }
}

async function poll() {
  clearTimeout(waiting);
  if (asking || document.hidden) {
    return;
  }
  asking = true;
  try {
    await ask();
    heard = new Date();
    reach.hidden = true;
  } catch (problem) {
    complain(problem.message === "gone" ? reach.dataset.gone : reach.dataset.lost.replace("{time}", clock(heard)));
  } finally {
    asking = false;
    waiting = setTimeout(poll, EVERY);
  }
}

document.addEventListener("visibilitychange", poll);
waiting = setTimeout(poll, EVERY);
