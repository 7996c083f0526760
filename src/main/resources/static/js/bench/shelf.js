// What is kept on this device until the server has it: in the browser's storage, where it outlives a
// reload or a crash, else in memory. One record for each entry, so that two tabs do not undo
// each other's. Whose it is stands in the key: the next person at this device does not send it.
const form = document.getElementById("build");
const start = `holewise.draft.${form.dataset.bench}.${form.dataset.person}.`;
const memory = new Map();
let outlives = true;

/** Whether everything kept would outlive the page. */
export function isSafe() {
  return outlives;
}

export function names() {
  return [...memory.keys()];
}

export function get(name) {
  return memory.get(name);
}

export function put(name, value) {
  memory.set(name, value);
  try {
    localStorage.setItem(start + name, JSON.stringify(value));
  } catch {
    outlives = false;
  }
}

export function remove(name) {
  memory.delete(name);
  try {
    localStorage.removeItem(start + name);
  } catch {
    // There was nothing to remove.
  }
  outlives ||= memory.size === 0;
}

try {
  for (const key of Object.keys(localStorage).filter((k) => k.startsWith(start))) {
    memory.set(key.slice(start.length), JSON.parse(localStorage.getItem(key)));
  }
} catch {
  outlives = false;
}
