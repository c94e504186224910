// One action as a slip: what to do, to what, where, and what is doubtful in it.

import { make } from "./dom.js";
import { signOf } from "./signs.js";
import { changeRows, featureRows, placeRows, positionRemarks } from "./values.js";

const MOST_POSITIONS = 6; // of a line or area; the others are folded, and counted

// The slip of an action, `<li>`; its parts that can be copied are `.cell`s.
export function slipOf(action) {
  const { verb, usable, label, feature } = action.record;
  const lettered = label ? `(${label}) ` : "";
  const slip = make("li", {
    class: usable ? "slip" : "slip unusable",
    tabindex: "-1",
    "data-path": action.path,
    "aria-label": spoken(action),
  });
  slip.append(
    make(
      "div",
      { class: "slip-verb" },
      signOf(verb),
      make("b", {}, verb),
      usable ? null : make("strong", { class: "stamp" }, "not to be used"),
    ),
    make(
      "div",
      { class: "slip-body" },
      headOf(feature, lettered),
      rowsOf(featureRows(feature)),
      ...ownParts(action.record),
      ...placeOf(action.record.geometry, action.record.sheet?.positions, verb === "move" ? "from" : null),
      ...(verb === "move" ? placeOf(action.record.destination, action.record.sheet?.destination, "to") : []),
      findingsOf(action.findings),
    ),
    make(
      "div",
      { class: "slip-acts" },
      make("button", { type: "button", class: "act", "data-copy-action": true }, "Copy action"),
      make("button", { type: "button", class: "act go", "data-go": true }, "In the text"),
    ),
  );
  return slip;
}

function spoken({ record, notice, section, findings }) {
  const at = record.geometry.positions[0]?.written ?? "no position";
  const { chart } = section;
  return [
    `${record.verb} ${record.feature.text}`,
    at,
    `chart ${chart ?? "not named"}`,
    notice.record.id ? `notice ${notice.record.id}` : "a notice without a number",
    record.usable ? null : "not to be used",
    findings.length ? `${findings.length} to look at` : null,
  ].filter(Boolean).join(", ");
}

function ownParts(record) {
  if (record.verb === "amend") return [rowsOf(changeRows(record.changes))];
  if (record.verb !== "replace") return [];
  return [
    make("p", { class: "by" }, "by"),
    headOf(record.replacement, ""),
    rowsOf(featureRows(record.replacement)),
  ];
}

function headOf(feature, lettered) {
  const words = `${lettered}${feature.text || "no words for a feature"}`;
  return make("div", { class: "slip-head" }, cell("p", "what", words, "feature"), kindOf(feature));
}

function kindOf(feature) {
  const isKnown = feature.kind !== "unknown";
  return make(
    "p",
    { class: "kind" },
    isKnown ? cell("span", "code", feature.kind, "kind") : make("span", { class: "doubt" }, "kind not known"),
    feature.s57.length ? cell("span", "code", feature.s57.join(" "), "object classes") : null,
  );
}

function rowsOf(rows) {
  if (!rows.length) return null;
  return make(
    "dl",
    { class: "rows" },
    rows.map(([name, value, isDoubtful]) => [
      make("dt", {}, name),
      cell("dd", isDoubtful ? "doubt" : "", value, name),
    ]),
  );
}

function placeOf(geometry, places, side) {
  const shown = geometry.positions.map((position, at) => positionOf(position, places?.[at], side));
  const rows = rowsOf(placeRows(geometry));
  if (shown.length <= MOST_POSITIONS) return [rows, ...shown];
  const folded = make(
    "details",
    {},
    make("summary", {}, `all ${shown.length} positions (2 shown above)`),
    shown.slice(2),
  );
  return [rows, ...shown.slice(0, 2), folded];
}

function positionOf(position, place, side) {
  const { remarks, isDoubtful } = positionRemarks(position, place);
  return make(
    "p",
    { class: isDoubtful ? "position doubtful" : "position" },
    side ? make("span", { class: "side" }, side) : null,
    position.label ? make("span", { class: "letter" }, `(${position.label})`) : null,
    cell("span", "written", position.written, "position as written"),
    cell("span", "code", position.iso6709, "position, ISO 6709"),
    make("span", { class: isDoubtful ? "remark doubt" : "remark" }, remarks.join(" · ")),
  );
}

export function findingsOf(findings) {
  if (!findings.length) return null;
  return make(
    "ul",
    { class: "slip-findings" },
    findings.map(({ record }) =>
      make(
        "li",
        { class: `finding-line ${record.severity}` },
        make("b", {}, record.severity),
        ` ${record.message}`,
        record.hint ? make("span", { class: "hint" }, ` ${record.hint}`) : null,
      ),
    ),
  );
}

// A piece of a record with a button that copies it.
export function cell(tag, style, words, name) {
  return make(
    tag,
    { class: `cell ${style}`.trim() },
    make("span", { class: "cell-words" }, words),
    make("button", { type: "button", class: "copy", "data-copy-cell": true, "aria-label": `Copy ${name}`, title: `Copy ${name}` }),
  );
}
