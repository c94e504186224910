// Which actions are shown: by words, chart, verb, kind and finding. What is held back is counted.

import { element, make } from "./dom.js";
import { gravest } from "./model.js";

const SEVERITIES = {
  "": "all findings",
  unusable: "not to be used",
  error: "with an error",
  warning: "with a warning",
  info: "with an info",
  any: "with any finding",
  none: "without a finding",
};
const VERBS = ["insert", "amend", "replace", "move", "delete"];
const SELECTS = ["by-chart", "by-verb", "by-kind", "by-severity"];

// `onChange()` when a person shows other actions.
export function createFilters(onChange) {
  const seek = element("seek");
  const selects = Object.fromEntries(SELECTS.map((id) => [id, element(id)]));
  const chosen = () => Object.fromEntries(SELECTS.map((id) => [id, selects[id].value]));
  const isNarrowed = () => seek.value.trim() !== "" || Object.values(chosen()).some(Boolean);

  fill(selects["by-severity"], Object.entries(SEVERITIES));
  offer(null);
  element("filters").addEventListener("input", onChange);
  seek.addEventListener("input", onChange);
  element("filters").addEventListener("submit", (event) => event.preventDefault());
  element("show-all").addEventListener("click", () => {
    clear();
    onChange();
    seek.focus();
  });

  // Offers the charts, verbs and kinds that are there; a choice that is gone is taken back.
  function offer(model) {
    const actions = model?.actions ?? [];
    const charts = countOf(actions, ({ section }) => section.chart ?? "(not named)");
    const kinds = countOf(actions, ({ record }) => record.feature.kind);
    const verbs = countOf(actions, ({ record }) => record.verb);
    const named = (counts, order = [...counts.keys()].sort(byNumber)) =>
      order.filter((one) => counts.has(one)).map((one) => [one, `${one} (${counts.get(one)})`]);
    fill(selects["by-chart"], [["", "all charts"], ...named(charts)]);
    fill(selects["by-verb"], [["", "all verbs"], ...named(verbs, VERBS)]);
    fill(selects["by-kind"], [["", "all kinds"], ...named(kinds)]);
  }

  // A test for one action, made once for all.
  function test() {
    const wanted = chosen();
    const sought = seek.value.trim().toLowerCase().split(/\s+/).filter(Boolean);
    return (action) => {
      const { record, section } = action;
      if (wanted["by-chart"] && (section.chart ?? "(not named)") !== wanted["by-chart"]) return false;
      if (wanted["by-verb"] && record.verb !== wanted["by-verb"]) return false;
      if (wanted["by-kind"] && record.feature.kind !== wanted["by-kind"]) return false;
      if (wanted["by-severity"] && !isOfSeverity(action, wanted["by-severity"])) return false;
      return !sought.length || sought.every((word) => wordsOf(action).includes(word));
    };
  }

  function clear() {
    seek.value = "";
    for (const select of Object.values(selects)) select.value = "";
  }

  return { offer, test, isNarrowed, clear, focus: () => seek.focus() };
}

function isOfSeverity(action, wanted) {
  if (wanted === "unusable") return !action.record.usable;
  if (wanted === "any") return action.findings.length > 0;
  if (wanted === "none") return action.findings.length === 0;
  return action.findings.some(({ record }) => record.severity === wanted);
}

// All words by which an action may be sought, gathered when it is first asked.
function wordsOf(action) {
  if (action.words === undefined) {
    const { record, notice, section } = action;
    const places = [...record.geometry.positions, ...(record.destination?.positions ?? [])];
    action.words = [
      record.verb,
      record.text,
      record.feature.kind,
      ...record.feature.s57,
      record.replacement?.kind ?? "",
      notice.record.id ?? "",
      notice.record.heading ?? "",
      section.chart ?? "",
      ...places.flatMap(({ written, iso6709 }) => [written, iso6709]),
      ...action.findings.map((finding) => `${finding.record.code} ${finding.record.message}`),
      gravest(action.findings) ?? "",
    ]
      .join(" ")
      .toLowerCase();
  }
  return action.words;
}

function countOf(actions, keyOf) {
  const counts = new Map();
  for (const action of actions) counts.set(keyOf(action), (counts.get(keyOf(action)) ?? 0) + 1);
  return counts;
}

function byNumber(one, other) {
  return one.localeCompare(other, "en", { numeric: true });
}

function fill(select, options) {
  const kept = select.value;
  select.replaceChildren(...options.map(([value, words]) => make("option", { value }, words)));
  select.value = options.some(([value]) => value === kept) ? kept : "";
}
