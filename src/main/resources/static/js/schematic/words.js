// Sentences that the page has, filled in.
export function fill(text, ...parts) {
  return parts.reduce((said, part, i) => said.replace(`{${i}}`, () => part), text);
}

export function words(element) {
  return element.textContent.replace(/\s+/g, " ").trim();
}

/** A button in place of a text, with the same words. */
export function asButton(text) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "button";
  made.textContent = words(text);
  return made;
}
