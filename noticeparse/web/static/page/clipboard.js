// Copies words, and says that it did.

import { make, say } from "./dom.js";

// Puts words on the clipboard; true where that was possible. A page that is not served from this
// machine itself may only do it in the old way.
export async function copy(words, what = "Copied") {
  const isDone = (await byClipboard(words)) || bySelection(words);
  say(isDone ? `${what}.` : "This browser does not let the page copy.");
  return isDone;
}

async function byClipboard(words) {
  try {
    await navigator.clipboard.writeText(words);
    return true;
  } catch {
    return false;
  }
}

function bySelection(words) {
  const dialog = document.querySelector("dialog[open]");
  const field = make("textarea", { class: "unseen", "aria-hidden": "true", tabindex: "-1" });
  const focused = document.activeElement;
  field.value = words;
  (dialog ?? document.body).append(field);
  field.select();
  const isDone = document.execCommand("copy");
  field.remove();
  focused?.focus();
  return isDone;
}

// Makes the copy buttons work that stand in cells, wherever in the page; `wordsOf(path)` gives the
// words of a whole action.
export function watchCells(wordsOf) {
  document.addEventListener("click", async (event) => {
    const button = event.target.closest("[data-copy-cell], [data-copy-action]");
    if (!button) return;
    const words =
      button.dataset.copyAction === undefined
        ? button.parentElement.querySelector(".cell-words").textContent
        : wordsOf(button.closest(".slip").dataset.path);
    const isDone = await copy(words, `Copied ${words.slice(0, 80)}`);
    button.classList.toggle("done", isDone);
    setTimeout(() => button.classList.remove("done"), 1200);
  });
}
