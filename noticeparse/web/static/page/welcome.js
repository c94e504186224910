// What stands in place of the actions while there is no text.

import { make } from "./dom.js";

// `takeExample()` opens the example.
export function welcome(takeExample) {
  const example = make("button", { type: "button", class: "chief" }, "Try the example");
  example.addEventListener("click", takeExample);
  return make(
    "div",
    { class: "welcome" },
    make("p", { class: "lead" }, "Paste a bulletin into the text, or drop a file anywhere on this page."),
    make("p", {}, "Every action in it stands here then: what to insert, amend, replace, move or delete, on which chart and where. What could not be read for certain is told, and never guessed."),
    make("p", {}, "All of it is worked out on this machine. Nothing is sent anywhere."),
    make("p", {}, example),
  );
}
