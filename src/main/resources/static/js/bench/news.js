// What becomes of entries, for whoever shows it: saved, problems, theirs (a partner's text is shown),
// layout (the board is out of date).
export const news = new EventTarget();

export function say(type, detail = {}) {
  news.dispatchEvent(new CustomEvent(type, { detail }));
}

/** Whether an entry is drawn on the board. */
export function isLayout(name) {
  return /^(part|link):/.test(name);
}
