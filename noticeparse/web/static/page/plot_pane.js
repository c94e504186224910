// The plot of what is shown, where its module is served.

import { counted, element } from "./dom.js";
import { keep, kept } from "./keeping.js";

const MODULE = "/static/plot.js";
const WIDE = matchMedia("(min-width: 1600px)");

// `onSelect(path)` when a symbol is picked.
export async function createPlotPane(onSelect) {
  let createPlot = null;
  try {
    ({ createPlot } = await import(MODULE));
  } catch {
    return { show() {}, select() {} };
  }
  const part = element("plot-part");
  const button = element("plot-switch");
  let plot = null;
  let waiting = null;

  function isOpen() {
    return kept("plot") === null ? WIDE.matches : kept("plot") === "open";
  }

  function draw() {
    const open = isOpen();
    part.hidden = !open;
    element("desk").classList.toggle("with-plot", open);
    button.setAttribute("aria-pressed", String(open));
    if (!open) return;
    plot ??= createPlot(element("plot"), { onSelect });
    if (waiting) plot.show(waiting);
    waiting = null;
  }

  function show(actions, frames) {
    waiting = { actions: actions.map(asPlotted), frames };
    const without = actions.filter(({ record }) => record.geometry.shape === "unlocated").length;
    element("plot-count").textContent = without
      ? `${counted(without, "action")} without a position`
      : counted(actions.length, "action");
    if (isOpen()) draw();
  }

  button.hidden = false;
  element("plot-tab").hidden = false;
  button.addEventListener("click", () => {
    keep("plot", isOpen() ? "closed" : "open");
    draw();
  });
  element("plot-tab").addEventListener("click", () => {
    keep("plot", "open");
    draw();
  });
  WIDE.addEventListener("change", draw);
  draw();
  return { show, select: (path) => plot?.select(path) };
}

function asPlotted({ path, notice, section, record }) {
  return {
    path,
    notice: notice.record.id,
    chart: section.chart,
    verb: record.verb,
    kind: record.feature.kind,
    label: record.label ? `(${record.label}) ${record.feature.text}` : record.feature.text,
    usable: record.usable,
    geometry: record.geometry,
    destination: record.destination ?? null,
  };
}
