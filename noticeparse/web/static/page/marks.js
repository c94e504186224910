// What the editor shows of the records: findings underlined, the current action, and beside the
// text a sign for each line on which an action begins.

import * as cm from "/static/vendor/codemirror/codemirror.js";
import { make } from "./dom.js";
import { signOf } from "./signs.js";

const setFindings = cm.StateEffect.define();
const setSigns = cm.StateEffect.define();
const setCurrent = cm.StateEffect.define();
const SEVERITIES = ["info", "warning", "error"];
const CURRENT = cm.Decoration.mark({ class: "np-current" });

class Sign extends cm.GutterMarker {
  constructor(verb, isUsable, count) {
    super();
    Object.assign(this, { verb, isUsable, count });
  }

  eq(other) {
    return this.verb === other.verb && this.isUsable === other.isUsable && this.count === other.count;
  }

  toDOM() {
    const words = `${this.verb}${this.isUsable ? "" : ", not to be used"}`;
    const title = this.count > 1 ? `${words}, on ${this.count} charts` : words;
    return make("span", { class: this.isUsable ? "np-sign" : "np-sign np-bad", title }, signOf(this.verb));
  }
}

function held(effect, start, provide) {
  return cm.StateField.define({
    create: () => start,
    update(value, transaction) {
      const mapped = value.map(transaction.changes);
      return transaction.effects.reduce((one, now) => (now.is(effect) ? now.value : one), mapped);
    },
    provide,
  });
}

// The extension, and the effects that set what it shows.
export function marks(onSign) {
  const asDecorations = (field) => cm.EditorView.decorations.from(field);
  const findings = held(setFindings, cm.Decoration.none, asDecorations);
  const current = held(setCurrent, cm.Decoration.none, asDecorations);
  const signs = held(setSigns, cm.RangeSet.empty);
  const beside = cm.gutter({
    class: "np-signs",
    markers: (view) => view.state.field(signs),
    initialSpacer: () => new Sign("insert", true, 1),
    domEventHandlers: {
      click(view, line) {
        let isFound = false;
        view.state.field(signs).between(line.from, line.to, () => {
          isFound = true;
        });
        if (isFound) onSign(line.from, line.to);
        return isFound;
      },
    },
  });
  const told = cm.hoverTooltip((view, place, side) => tipOf(view.state.field(findings), place, side));
  return {
    extension: [findings, current, signs, beside, told],
    read: (state, model) => [
      setFindings.of(model ? underlined(model, state.doc.length) : cm.Decoration.none),
      setSigns.of(model ? signed(model, state.doc) : cm.RangeSet.empty),
      setCurrent.of(cm.Decoration.none),
    ],
    current: (stretches) =>
      setCurrent.of(
        cm.Decoration.set(
          stretches.filter(([from, to]) => from < to).map(([from, to]) => CURRENT.range(from, to)),
          true,
        ),
      ),
  };
}

function underlined(model, length) {
  const ranges = [];
  for (const severity of SEVERITIES) {
    for (const finding of model.findings) {
      if (finding.record.severity !== severity || finding.from === null) continue;
      const to = Math.min(length, Math.max(finding.to, finding.from + 1));
      const mark = cm.Decoration.mark({ class: `np-found np-${severity}`, finding: finding.record });
      if (finding.from < to) ranges.push(mark.range(finding.from, to));
    }
  }
  return cm.Decoration.set(ranges, true);
}

function signed(model, doc) {
  const byLine = new Map();
  for (const action of model.actions) {
    const line = doc.lineAt(Math.min(action.from, doc.length)).from;
    const known = byLine.get(line);
    const { verb, usable } = action.record;
    if (known) byLine.set(line, new Sign(known.verb, known.isUsable && usable, known.count + 1));
    else byLine.set(line, new Sign(verb, usable, 1));
  }
  return cm.RangeSet.of([...byLine].map(([line, sign]) => sign.range(line)), true);
}

function tipOf(findings, place, side) {
  const found = [];
  findings.between(place, place, (from, to, mark) => {
    if ((from === place && side < 0) || (to === place && side > 0)) return;
    found.push({ from, to, record: mark.spec.finding });
  });
  if (!found.length) return null;
  const create = () => ({
    dom: make(
      "div",
      { class: "np-tip" },
      found.map(({ record }) =>
        make(
          "p",
          { class: `np-tip-${record.severity}` },
          make("strong", {}, `${record.severity}: `),
          `${record.message}. `,
          record.hint ? make("span", {}, record.hint) : null,
        ),
      ),
    ),
  });
  return { pos: found[0].from, end: found[0].to, above: true, create };
}
