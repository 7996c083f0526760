// A part's entry is one text, "1=b10 2=b14 marked 390R"; on the page it is a field for each lead.

const MARKED = "marked";

function closed(text) {
  return text.replace(/\s+/g, "");
}

/** The text that fields make; `values` is a Map from pin to what its field holds. */
export function compose(kind, values) {
  if (kind === "part") {
    const seats = [...values].filter(([pin, hole]) => pin !== MARKED && closed(hole) !== "");
    const marked = (values.get(MARKED) ?? "").trim();
    // A chip's field may hold its pins one by one, as somebody typed them.
    const words = seats.map(([pin, hole]) =>
      hole.includes("=") ? hole.trim() : `${pin}=${closed(hole)}`,
    );
    return [...words, ...(marked ? [`marked ${marked}`] : [])].join(" ");
  }
  if (kind === "link") {
    return [...values.values()].map(closed).join(" ").trim();
  }
  return [...values.values()].join(" ").trim();
}

// A word without a pin's name goes to the next empty field, and what is over to the last one.
function seats(pins, text) {
  const values = new Map(pins.map((pin) => [pin, ""]));
  let at = 0;
  for (const word of text.replace(/\s*=\s*/g, "=").trim().split(/\s+/)) {
    const [start, hole] = word.split(/=(.*)/s);
    const pin = pins.find((p) => hole !== undefined && p.toLowerCase() === start.toLowerCase());
    if (pin !== undefined && values.get(pin) === "") {
      values.set(pin, hole);
      continue;
    }
    while (at < pins.length - 1 && values.get(pins[at]) !== "") {
      at++;
    }
    values.set(pins[at], `${values.get(pins[at])} ${word}`.trim());
  }
  return values;
}

/** The fields that show a text: a Map from pin to what its field holds. */
export function spread(kind, pins, text) {
  if (kind === "part") {
    const marked = /(?:^|\s)marked\s+(\S.*)$/i.exec(text);
    const holes = marked ? text.slice(0, marked.index) : text;
    const values = seats(pins.filter((pin) => pin !== MARKED), holes);
    return values.set(MARKED, marked ? marked[1].trim() : "");
  }
  if (kind === "link") {
    const [from, ...rest] = text.trim().split(/\s+/);
    return new Map([["from", from], ["to", rest.join(" ")]]);
  }
  return new Map([["", text]]);
}
