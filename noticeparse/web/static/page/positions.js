// The position box: one position as written in, all forms out, or why there is none.

import { openDialog } from "./dialogs.js";
import { element, make } from "./dom.js";
import { postJson } from "./service.js";
import { cell } from "./slip.js";

const WAIT = 120;
const LONGEST = 80; // characters of a selection that may be a position

// `selected()` gives the words that are chosen in the text.
export function createPositionBox(selected) {
  const field = element("position-text");
  const answer = element("position-answer");
  let timer = 0;
  let underWay = null;

  function open() {
    const words = selected().trim();
    if (words && words.length < LONGEST && !words.includes("\n")) field.value = words;
    openDialog("position-dialog");
    field.select();
    changed();
  }

  function changed() {
    clearTimeout(timer);
    underWay?.abort();
    timer = setTimeout(ask, WAIT);
  }

  async function ask() {
    const text = field.value.trim();
    if (!text) {
      answer.replaceChildren();
      return;
    }
    underWay = new AbortController();
    const { signal } = underWay;
    try {
      const found = await postJson("/v1/position-forms", { texts: [text] }, { signal });
      const [result] = (await found.json()).results;
      if (!signal.aborted) answer.replaceChildren(...(result.error ? refusalOf(result.error) : formsOf(result)));
    } catch (error) {
      if (!signal.aborted) answer.replaceChildren(make("p", { class: "refused" }, error.message));
    }
  }

  field.addEventListener("input", changed);
  element("position-form").addEventListener("submit", changed);
  element("position").addEventListener("click", open);
  return { open };
}

function formsOf({ position, forms }) {
  const rows = forms.map(({ name, text, exact, rounded_to: digit }) => [
    make("dt", {}, name),
    make(
      "dd",
      {},
      cell("span", "code", text, name),
      exact ? null : make("span", { class: "doubt rounded" }, `rounded to ${digit}`),
    ),
  ]);
  return [
    make("dl", { class: "rows forms" }, rows),
    make("p", { class: "small" }, `Known to ± ${position.resolution_m} m, by the figures written. No datum is shifted.`),
  ];
}

function refusalOf(finding) {
  return [
    make("p", { class: "refused" }, make("b", {}, "Refused: "), `${finding.message}.`),
    finding.hint ? make("p", { class: "hint" }, finding.hint) : "",
  ];
}
