// The actions as text to be taken elsewhere: a table parted by tabs, and JSON.

import { noticeName, valueWords } from "./values.js";

const COLUMNS = {
  notice: ({ notice }) => notice.record.id,
  chart: ({ section }) => section.chart,
  panel: ({ section }) => section.panel,
  after: ({ section }) => noticeName(section.previous) ?? section.previous_written,
  datum: ({ section }) => section.datum?.name,
  use: ({ record }) => (record.usable ? "yes" : "NOT TO BE USED"),
  verb: ({ record }) => record.verb,
  label: ({ record }) => record.label,
  feature: ({ record }) => record.feature.text,
  kind: ({ record }) => record.feature.kind,
  changes: ({ record }) => changesOf(record),
  relation: ({ record }) => relationOf(record.geometry),
  "position as written": ({ record }) => joined(record.geometry, "written"),
  "position ISO 6709": ({ record }) => (record.usable ? joined(record.geometry, "iso6709") : ""),
  "to as written": ({ record }) => joined(record.destination, "written"),
  "to ISO 6709": ({ record }) => (record.usable ? joined(record.destination, "iso6709") : ""),
  findings: ({ findings }) => findings.map(({ record }) => `${record.severity} ${record.code}`).join("; "),
  line: ({ record }) => record.span.line,
};

function relationOf({ relation, direction }) {
  return direction ? `${relation} ${direction}` : relation;
}

function joined(geometry, key) {
  return (geometry?.positions ?? []).map((position) => position[key]).join("; ");
}

function changesOf(record) {
  if (record.verb === "replace") return `by ${record.replacement.text}`;
  return (record.changes ?? []).map(({ property, new: wanted }) => `${property}: ${valueWords(wanted)}`).join("; ");
}

const ISO = /^[+-][\d.]+[+-][\d.]+\//;

// A cell of the table. What a spreadsheet would work out has an apostrophe put before it; a position
// in ISO 6709 ends with a stroke, so that it is no sum.
function cellOf(value) {
  const words = String(value ?? "").replace(/[\t\r\n]+/g, " ");
  return /^[=+\-@]/.test(words) && !ISO.test(words) ? `'${words}` : words;
}

// A table for a spreadsheet: a row of names, a row for each action, the caution last.
export function asTable(actions, caution) {
  const rows = actions.map((action) => Object.values(COLUMNS).map((valueOf) => cellOf(valueOf(action))));
  return [Object.keys(COLUMNS), ...rows, [caution]].map((row) => row.join("\t")).join("\n");
}

// The records of the actions as JSON, each with its place in the bulletin.
export function asJson(actions, bulletin) {
  const { schema_version: version, generator, caution, source } = bulletin;
  const records = actions.map(({ path, notice, section, record }) => ({
    path,
    notice: notice.record.id,
    chart: section.chart,
    action: record,
  }));
  return JSON.stringify({ schema_version: version, generator, caution, source, actions: records }, null, 2);
}

// One action on a few lines.
export function asWords({ record, notice, section, findings }) {
  const lines = [
    `Notice ${notice.record.id ?? "without a number"}, chart ${section.chart ?? "not named"}`,
    record.text,
    record.usable ? `ISO 6709: ${joined(record.geometry, "iso6709")}` : "NOT TO BE USED",
    record.usable && record.destination ? `to: ${joined(record.destination, "iso6709")}` : null,
    ...findings.map((finding) => `${finding.record.severity}: ${finding.record.message}`),
  ];
  return lines.filter(Boolean).join("\n");
}
