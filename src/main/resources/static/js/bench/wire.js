// Asks the server, and says how that ended: an answer, or why there is none.
const form = document.getElementById("build");
const meta = document.querySelector("meta[name=csrf]");
const PATIENCE = 8000;
let out = false;

/** No answer from our server: no network, a server that is away, a gate of the network in between. */
export class Away extends Error {}

/** Nobody, or somebody else, is signed in. */
export class SignedOut extends Error {}

async function fetched(path, options) {
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), PATIENCE);
  try {
    const answer = await fetch(path, { ...options, signal: patience.signal });
    return { answer, body: await answer.text() };
  } catch {
    throw new Away();
  } finally {
    clearTimeout(timer);
  }
}

// After signing in again, in another tab, this page goes on with the new token.
async function renew() {
  const { body } = await fetched(location.pathname, {});
  const fresh = page(body);
  const token = fresh.querySelector("meta[name=csrf]")?.content;
  if (!token || fresh.getElementById("build")?.dataset.person !== form.dataset.person) {
    throw new SignedOut();
  }
  out = false;
  meta.content = token;
  for (const field of document.querySelectorAll("input[name=_csrf]")) {
    field.value = token;
  }
}

/**
 * The answer's status, whether it led elsewhere, and its body.
 *
 * @throws Away, SignedOut
 */
export async function ask(path, options = {}) {
  if (out) {
    await renew();
  }
  const headers = { ...options.headers, "X-CSRF-TOKEN": meta.content };
  const { answer, body } = await fetched(path, { ...options, headers });
  if (answer.status === 401 || answer.status === 403) {
    out = true;
    throw new SignedOut();
  }
  if (answer.status >= 500 || answer.status === 429) {
    throw new Away();
  }
  return { status: answer.status, ok: answer.ok, moved: answer.redirected, url: answer.url, body };
}

/** The same for a document; what is none does not come from our server. */
export async function askJson(path, options) {
  const answer = await ask(path, options);
  try {
    return { ...answer, json: JSON.parse(answer.body) };
  } catch {
    throw new Away();
  }
}

export function page(body) {
  return new DOMParser().parseFromString(body, "text/html");
}
