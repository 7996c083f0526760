// Waiting for another try: a while, or until the network or the reader is back.
export function pause(time) {
  return new Promise((go) => {
    const back = new AbortController();
    const end = () => {
      clearTimeout(timer);
      back.abort();
      go();
    };
    const timer = setTimeout(end, time);
    addEventListener("online", end, back);
    document.addEventListener("visibilitychange", () => document.hidden || end(), back);
  });
}
