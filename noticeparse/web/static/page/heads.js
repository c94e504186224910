// The heads of notices and of their charts, and the words of a notice that are no action.

import { make } from "./dom.js";
import { cell, findingsOf } from "./slip.js";
import { noticeName, plainWords } from "./values.js";

const STATUSES = {
  permanent: null,
  temporary: "temporary: in pencil, until it ends or is cancelled",
  preliminary: "preliminary",
  radio_warning: "radio warning: changes no chart",
};

// The head of a notice: number, status, heading, source, validity, what it cancels.
export function noticeHead(notice) {
  const { record } = notice;
  const name = record.id ?? (record.series ? "radio warning" : "notice without a number");
  return make(
    "header",
    { class: "notice-head" },
    make(
      "h3",
      {},
      cell("span", record.id ? "number" : "number doubt", name, "notice number"),
      record.original_information ? make("span", { class: "star", title: "original information" }, " ★") : null,
      record.heading ? make("span", { class: "heading" }, record.heading) : null,
    ),
    facts([
      [STATUSES[record.status], record.status !== "permanent"],
      [record.series],
      [record.authority && `source: ${record.authority}`],
      [record.valid && `valid ${validity(record.valid)}`],
      [record.cancels.length ? `cancels ${record.cancels.map(noticeName).join(", ")}` : null],
      [record.charts.length ? null : "names no chart", true],
    ]),
    findingsOf(notice.findings),
  );
}

// From when to when, as dates, with the words it was read from.
function validity(valid) {
  const from = valid.from ? `from ${valid.from} ` : "";
  const until = valid.until ? `until ${valid.until} ` : "";
  return `${from}${until}(${valid.written})`;
}

// The head of a chart's section: chart, edition, datum, and the notice that must be on it before.
export function chartHead(section) {
  const { record } = section;
  const after = noticeName(record.previous) ?? record.previous_written;
  return make(
    "header",
    { class: "chart-head" },
    make(
      "h4",
      {},
      "Chart ",
      record.chart ? cell("span", "number", record.chart, "chart number") : make("span", { class: "doubt" }, "not named"),
    ),
    facts([
      [record.international],
      [record.panel],
      [record.edition && `edition ${record.edition}`],
      [record.edition_date],
      [after ? `after ${after}` : "notice before: not told", !record.previous],
      [record.datum ? record.datum.name : "datum not told", !record.datum],
      [record.depth_unit && `depths in ${plainWords(record.depth_unit)}`],
    ]),
    record.chart
      ? make("button", { type: "button", class: "quiet", "data-sheet-of": record.chart }, `Sheet of ${record.chart}…`)
      : null,
    findingsOf(section.findings),
  );
}

// A paragraph of a notice that is no action; its positions and dates were read all the same.
export function remarkOf(remark) {
  return make(
    "div",
    { class: "remark-block" },
    make("p", {}, make("b", {}, "Words "), remark.text),
    remark.positions.map((position) =>
      make("p", { class: "position" }, cell("span", "written", position.written, "position"), cell("span", "code", position.iso6709, "position, ISO 6709")),
    ),
    remark.dates.length ? make("p", { class: "facts" }, `dates: ${remark.dates.join(", ")}`) : null,
  );
}

function facts(all) {
  const told = all.filter(([words]) => words);
  if (!told.length) return null;
  return make(
    "ul",
    { class: "facts" },
    told.map(([words, isDoubtful]) => make("li", { class: isDoubtful ? "doubt" : null }, words)),
  );
}
