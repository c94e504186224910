// The parts of the page: one at a time on a narrow screen, and a key that goes from one to the next.

import { element } from "./dom.js";

const PARTS = ["text", "findings", "actions", "plot"];

// On a narrow screen this part is the one in view; on others all are.
export function showPart(part) {
  document.body.dataset.part = part;
  for (const button of document.querySelectorAll("nav.parts button")) {
    if (button.dataset.part === part) button.setAttribute("aria-current", "true");
    else button.removeAttribute("aria-current");
  }
}

export function watchParts() {
  document.querySelector("nav.parts").addEventListener("click", ({ target }) => {
    if (target.dataset.part) showPart(target.dataset.part);
  });
}

// Moves the focus to the next part that is there, or the one before.
export function stepPart(direction, pane, records) {
  const now = PARTS.findIndex((part) => document.querySelector(`.part-${part}`).contains(document.activeElement));
  let at = now;
  do at = (Math.max(at, direction > 0 ? -1 : 0) + direction + PARTS.length) % PARTS.length;
  while (PARTS[at] === "plot" && element("plot-part").hidden);
  showPart(PARTS[at]);
  if (PARTS[at] === "text") pane.focus();
  else if (PARTS[at] === "actions") records.focusCurrent();
  else if (PARTS[at] === "findings") element("next-finding").focus();
  else element("plot").querySelector("[tabindex], button, svg")?.focus();
}
