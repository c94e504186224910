// Windows over the page: opened and closed by buttons, by Escape too; focus goes back by itself.

import { element } from "./dom.js";
import { onTokenNeeded } from "./service.js";

export function openDialog(id) {
  const dialog = element(id);
  if (!dialog.open) dialog.showModal();
  return dialog;
}

export function watchDialogs() {
  for (const dialog of document.querySelectorAll("dialog")) {
    dialog.addEventListener("submit", (event) => event.preventDefault());
    dialog.addEventListener("click", (event) => {
      if (event.target.closest("[data-close]") || event.target === dialog) dialog.close();
    });
  }
  onTokenNeeded(askForToken);
}

let question = null;

// The token that a person types, or null; asked once for all requests that wait for it.
function askForToken(wasWrong) {
  question ??= new Promise((answer) => {
    element("token-words").textContent = wasWrong
      ? "That is not the token of this service. Whoever started it has it."
      : "Whoever started the service has it. It is kept until this window is closed.";
    const dialog = openDialog("token-dialog");
    const done = new AbortController();
    const end = (token) => {
      done.abort();
      question = null;
      dialog.close();
      element("token").value = "";
      answer(token);
    };
    const { signal } = done;
    element("token-form").addEventListener("submit", () => end(element("token").value.trim() || null), { signal });
    // The browser tells of a closing late: also of that of the question before, when this one is open.
    dialog.addEventListener("close", () => dialog.open || end(null), { signal });
  });
  return question;
}
