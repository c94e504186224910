// What went wrong, in plain words, over the page until it is closed or something works again.

import { element } from "./dom.js";

export function showTrouble(words, details = []) {
  element("trouble-words").replaceChildren(
    words,
    ...details.flatMap((detail) => [document.createElement("br"), detail]),
  );
  element("trouble").hidden = false;
}

export function hideTrouble() {
  element("trouble").hidden = true;
}

export function watchTrouble() {
  element("trouble-close").addEventListener("click", hideTrouble);
}

// Tells of an error; what is no Trouble of the service is a fault of the page.
export function tell(error, what) {
  if (error.name === "AbortError") return;
  const words = error.kind ? error.message : `The page failed: ${error.message}.`;
  showTrouble(`${what} ${words}`.trim(), (error.errors ?? []).slice(0, 8).map((one) => one.detail));
}
