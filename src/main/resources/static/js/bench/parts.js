// Parts of the page that an answer of the server brings anew, by their ids.
export const drawn = new EventTarget();

function focusWithin(part) {
  const at = document.activeElement;
  if (!part.contains(at)) {
    return null;
  }
  const path = at.getAttribute("formaction");
  return at.id ? `#${CSS.escape(at.id)}` : path && `[formaction="${path}"]`;
}

/** Puts the parts of another page in place of this one's; where the focus was, it stays. */
export function swap(page, ids) {
  for (const id of ids) {
    const old = document.getElementById(id);
    const fresh = page.getElementById(id);
    if (old && fresh) {
      drawn.dispatchEvent(new CustomEvent("before", { detail: id }));
      const focus = focusWithin(old);
      old.replaceWith(fresh);
      if (focus) {
        document.querySelector(focus)?.focus({ preventScroll: true });
      }
      drawn.dispatchEvent(new CustomEvent("after", { detail: id }));
    }
  }
}
