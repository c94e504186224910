// Light or dark, before anything is drawn: a plain script, so that the page never flashes.

(() => {
  const key = "noticeparse.theme";
  const names = { "": "auto", light: "light", dark: "dark" };
  const order = ["", "light", "dark"];

  function kept() {
    try {
      const theme = localStorage.getItem(key) ?? "";
      return order.includes(theme) ? theme : "";
    } catch {
      return "";
    }
  }

  function show(theme) {
    document.documentElement.dataset.theme = theme;
    const words = document.getElementById("theme-name");
    if (words) words.textContent = names[theme];
  }

  show(kept());
  addEventListener("DOMContentLoaded", () => {
    show(kept());
    document.getElementById("theme").addEventListener("click", () => {
      const now = document.documentElement.dataset.theme;
      const next = order[(order.indexOf(now) + 1) % order.length];
      try {
        localStorage.setItem(key, next);
      } catch {
        // A browser that keeps nothing still shows it.
      }
      show(next);
    });
  });
})();
