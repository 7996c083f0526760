// The look is kept in a cookie so that the server can send the page in it: no flash of the other.
const page = document.documentElement;
const group = document.querySelector(".themes");
const buttons = group.querySelectorAll("[data-theme-choice]");

function show(choice) {
  page.dataset.theme = choice;
  for (const button of buttons) {
    button.setAttribute("aria-pressed", String(button.dataset.themeChoice === choice));
  }
}

for (const button of buttons) {
  button.addEventListener("click", () => {
    const choice = button.dataset.themeChoice;
    document.cookie = `theme=${choice}; path=/; max-age=31536000; samesite=lax`;
    show(choice);
  });
}

show(page.dataset.theme);
group.hidden = false;
