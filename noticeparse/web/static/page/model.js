// What was read, laid out for the page: notices, actions and findings in the order of the text,
// with their stretches in the units of the editor.

import { offsetsOf } from "./offsets.js";

const ACTION = /^\/notices\/\d+\/charts\/\d+\/actions\/\d+/;
const RANKS = { error: 3, warning: 2, info: 1 };

// An empty model; `add` takes the lines of the answer, notices first, the bulletin last.
export function createModel(text) {
  const offsets = offsetsOf(text);
  const model = { notices: [], actions: [], findings: [], byPath: new Map(), bulletin: null };

  function stretch(span) {
    if (!span) return { from: null, to: null };
    return { from: offsets.toUnits(span.start), to: offsets.toUnits(span.end) };
  }

  function addNotice(record) {
    const index = model.notices.length;
    const notice = { index, record, sections: [], actions: [], findings: [], ...stretch(record.span) };
    record.charts.forEach((section, place) => {
      const actions = section.actions.map((action, number) => {
        const path = `/notices/${index}/charts/${place}/actions/${number}`;
        return { path, record: action, section, notice, findings: [], ...stretch(action.span) };
      });
      notice.sections.push({ record: section, actions, findings: [] });
      for (const action of actions) {
        model.byPath.set(action.path, action);
        model.actions.push(action);
        notice.actions.push(action);
      }
    });
    model.notices.push(notice);
  }

  function addBulletin(record) {
    model.bulletin = record;
    record.findings.forEach((finding, index) => {
      const line = finding.span?.line ?? null;
      const item = { index, record: finding, line, actions: [], ...stretch(finding.span) };
      model.findings.push(item);
      attach(item);
    });
  }

  function attach(item) {
    const owners = new Set();
    for (const path of item.record.paths) {
      const action = model.byPath.get(ACTION.exec(path)?.[0]);
      if (action) item.actions.push(action);
      owners.add(action ?? ownerOf(path));
    }
    owners.delete(undefined);
    for (const owner of owners) owner.findings.push(item);
  }

  function ownerOf(path) {
    const [, , notice, , chart] = path.split("/");
    const found = model.notices[notice];
    return chart === undefined || path.split("/")[3] !== "charts" ? found : found?.sections[chart];
  }

  model.add = (record) => (record.record === "notice" ? addNotice(record) : addBulletin(record));
  return model;
}

// The gravest severity among findings, or null.
export function gravest(findings) {
  let found = null;
  for (const { record } of findings) {
    if (!found || RANKS[record.severity] > RANKS[found]) found = record.severity;
  }
  return found;
}

// The actions whose stretch holds a place of the text; those that begin last come first.
export function actionsAt(model, place) {
  const found = model.actions.filter(({ from, to }) => from <= place && place <= to);
  return found.sort((one, other) => one.to - one.from - (other.to - other.from));
}

// The one of the actions at a place that stands for them: the first that is shown, and of those that
// share its stretch, one for each chart, the one that is current.
export function foremost(at, records) {
  const shown = at.filter(({ path }) => records.actionAt(path));
  const first = shown[0] ?? at[0];
  return shown.find((action) => records.isCurrent(action.path) && haveSameStretch(action, first)) ?? first;
}

// Leads the stretches of actions and findings to other places of the text: `placeOf(place)` each.
export function moveStretches(all, placeOf) {
  for (const one of all) if (one.from !== null) [one.from, one.to] = [placeOf(one.from), placeOf(one.to)];
}

export function haveSameStretch(one, other) {
  return one.from === other.from && one.to === other.to;
}
