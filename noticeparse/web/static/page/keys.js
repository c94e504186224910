// The keys of the page, in one table that acts and is shown.

import { openDialog } from "./dialogs.js";
import { element, make } from "./dom.js";

const IN_THE_LISTS = [
  ["↑ ↓ Home End", "in the actions: the action before, after, first, last"],
  ["Enter", "on an action: go to its text"],
  ["Ctrl+Enter", "in the text: go to the action under the cursor"],
  ["Ctrl+F", "in the text: search it"],
  ["Ctrl+Z · Ctrl+Y", "in the text: undo, redo; also after another bulletin was opened"],
  ["Esc", "from an action back to the text; out of a window"],
  ["Tab", "always goes on: the text holds it back nowhere"],
];

// `acts` holds what each key does.
export function watchKeys(acts) {
  const table = [
    ["F8", "next finding", acts.nextFinding],
    ["Shift+F8", "finding before", acts.previousFinding],
    ["F9", "next part of the page: text, findings, actions", acts.nextPart],
    ["Shift+F9", "part before", acts.previousPart],
    ["Alt+P", "type a position and get all forms", acts.position],
    ["Alt+T", "take away: copy or save", acts.take],
    ["Alt+W", "work sheets of a chart", acts.sheets],
    ["Alt+S", "search the actions", acts.search],
  ];
  const byName = new Map(table.map(([name, , act]) => [name, act]));
  addEventListener("keydown", (event) => {
    const act = byName.get(nameOf(event));
    if (!act || document.querySelector("dialog[open]")) return;
    event.preventDefault();
    act();
  });
  const rows = [...table, ...IN_THE_LISTS];
  element("key-list").replaceChildren(
    ...rows.flatMap(([name, words]) => [make("dt", {}, make("kbd", {}, name)), make("dd", {}, words)]),
  );
  element("keys").addEventListener("click", () => openDialog("keys-dialog"));
}

function nameOf({ key, altKey, shiftKey, ctrlKey, metaKey }) {
  if (ctrlKey || metaKey) return "";
  const letter = key.length === 1 ? key.toUpperCase() : key;
  return `${altKey ? "Alt+" : ""}${shiftKey ? "Shift+" : ""}${letter}`;
}
