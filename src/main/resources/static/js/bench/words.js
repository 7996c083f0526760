// The page's texts are sent with it, in its own language.
const words = new Map(
  [...document.querySelectorAll("#words [data-word]")].map((w) => [w.dataset.word, w.textContent]),
);
const heard = document.getElementById("heard");

export function say(key, ...parts) {
  return words.get(key).replace(/\{(\d)\}/g, (_, i) => parts[Number(i)]);
}

/** Tells who listens instead of looking. */
export function tell(text) {
  heard.textContent = text;
}
