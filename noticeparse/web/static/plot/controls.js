// What stands round the plot: its note, its buttons and its legend.

import { html, svg } from "./dom.js";
import { GROUPS, VERBS, symbol } from "./symbols.js";

const BUTTONS = [
  ["west", "Pan west", "M3 -5L-4 0L3 5Z"],
  ["north", "Pan north", "M-5 3L0 -4L5 3Z"],
  ["south", "Pan south", "M-5 -3L0 4L5 -3Z"],
  ["east", "Pan east", "M-3 -5L4 0L-3 5Z"],
  ["out", "Zoom out", "M-5 -1H5V1H-5Z"],
  ["in", "Zoom in", "M-5 -1H-1V-5H1V-1H5V1H1V5H-1V1H-5Z"],
];

const HINTS =
  "A figure at a symbol: so many actions in that very place, one after the other with each click. "
  + "Where very many symbols crowd they have no badges: come nearer to see them. "
  + "Dotted circle: an arc whose limits are not certain. Keys: arrows to pan, + and −, 0 for all; "
  + "Tab to the symbols, there arrows to go from one to the next and Enter to open it.";

/** The row of buttons; `act(name)` is called with what a person wants. */
export function toolbar(act) {
  const row = html("div", { class: "plot-tools", role: "group", "aria-label": "View of the plot" });
  for (const [name, words, d] of BUTTONS) {
    const box = { viewBox: "-8 -8 16 16", "aria-hidden": "true" };
    const told = { "aria-label": words, title: words, class: "is-picture" };
    row.append(button(name, told, svg("svg", box, svg("path", { d })), act));
  }
  row.append(
    button("all", { title: "Show all positions" }, "All", act),
    button("labels", { "aria-pressed": "true", title: "Labels beside the symbols" }, "Labels", act),
  );
  return row;
}

function button(name, attributes, content, act) {
  const made = html("button", { type: "button", "data-act": name, ...attributes }, content);
  made.addEventListener("click", () => act(name));
  return made;
}

/** What shapes, badges and outlines mean. */
export function legend() {
  const shape = (group) => sample({ group, verb: "insert", role: "feature", isUsable: true }, true);
  const verb = (name) => sample({ group: "other", verb: name, role: "feature", isUsable: true });
  const kinds = Object.entries(GROUPS).map(([group, { name }]) => entry(shape(group), name));
  const verbs = Object.entries(VERBS).map(([name, told]) => entry(verb(name), told.name));
  verbs.splice(
    3, 1,
    entry(sample({ group: "other", verb: "move", role: "from", isUsable: true }), "Move, from"),
    entry(verb("move"), "Move, to"),
  );
  const other = [
    entry(
      sample({
        group: "other", verb: "insert", role: "reference", isUsable: true, direction: "NE",
      }),
      "Reference only: the feature lies near it (here north-east), or between two",
    ),
    entry(
      sample({ group: "other", verb: "insert", role: "feature", isUsable: false }),
      "Not to be used: an error was found, read the notice",
    ),
  ];
  return html(
    "details",
    { class: "plot-legend" },
    html("summary", {}, "Legend and keys"),
    part("Kinds, by shape", kinds),
    part("Verbs, by badge and outline", verbs),
    part("Held back", other),
    html("p", {}, HINTS),
  );
}

function part(title, entries) {
  const words = html("p", { class: "plot-legend-title", "aria-hidden": "true" }, title);
  return html("div", {}, words, html("ul", { "aria-label": title }, ...entries));
}

function entry(picture, words) {
  return html("li", {}, picture, html("span", {}, words));
}

function sample(wish, isPlain = false) {
  const made = symbol(wish);
  if (isPlain) made.querySelector(".badge")?.remove();
  if (isPlain) made.classList.add("is-plain");
  return svg("svg", { viewBox: "-16 -20 32 32", "aria-hidden": "true", class: "sample" }, made);
}
