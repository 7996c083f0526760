// A card's picture leads here with its code behind the "#", where no server sees it: fill it in,
// take it out of the address, and leave the sending to whoever holds the card.
const code = document.getElementById("code");

function fill() {
  const shown = location.hash.slice(1);
  if (shown === "" || shown === "work") {
    return;
  }
  history.replaceState(null, "", location.pathname);
  code.value = shown;
  code.form.querySelector("button").focus();
}

addEventListener("hashchange", fill);
fill();
