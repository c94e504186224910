// Work sheets of one chart: opened in a tab of their own to be printed, or saved.

import { openDialog } from "./dialogs.js";
import { element, make } from "./dom.js";
import { postJson } from "./service.js";
import { save } from "./taking.js";

// `state()` gives {model, source}; `charts` is the chart list in use.
export function createSheets(state, charts) {
  const select = element("sheet-chart");
  const said = (words) => {
    element("sheet-said").textContent = words;
  };

  function open(chart = null) {
    const { model } = state();
    const numbers = [...new Set((model?.notices ?? []).flatMap(({ record }) => record.charts.map((one) => one.chart)))];
    const named = numbers.filter(Boolean).sort((one, other) => one.localeCompare(other, "en", { numeric: true }));
    const kept = chart ?? select.value;
    select.replaceChildren(...named.map((number) => make("option", { value: number }, number)));
    if (named.includes(kept)) select.value = kept;
    said(named.length ? "" : "No chart is named in the bulletin.");
    offerPlot();
    openDialog("sheet-dialog");
  }

  function offerPlot() {
    const canPlot = charts.has(select.value);
    for (const button of document.querySelectorAll("[data-plot]")) button.disabled = !canPlot;
    for (const button of document.querySelectorAll("[data-sheet]")) button.disabled = !select.value;
    element("sheet-plot-words").textContent = canPlot
      ? "To lay over the sheet; print it at its full size, and measure the control line."
      : "Needs the limits and the scale of the chart: load a chart list that has it.";
  }

  async function made(format, isPlot) {
    const { source, isEdited } = state();
    const { text, name, charts: list, file_findings } = source;
    const body = { text, name, charts: list, chart: select.value, format, plot: isPlot, file_findings, edited: isEdited };
    return postJson("/v1/sheet", body);
  }

  async function openToPrint() {
    // Before anything is waited for, else the browser takes it for a window nobody asked for.
    const tab = openTab();
    try {
      const answer = await made("html", false);
      const words = await answer.text();
      if (tab) await handOver(tab, words);
      else save(new Blob([words], { type: "text/html" }), `chart-${select.value}.html`);
      said(tab ? "Opened in a tab of its own." : "The browser opens no tab; the sheet was saved instead.");
    } catch (error) {
      tab?.close();
      throw error;
    }
  }

  async function saveAs(format, isPlot) {
    const answer = await made(format, isPlot);
    const name = `chart-${select.value}-${isPlot ? "plot" : "sheet"}.${format}`;
    save(await answer.blob(), name);
    said(`Saved ${name}.`);
  }

  select.addEventListener("change", offerPlot);
  // A list that comes, or goes, while the window is open counts at once.
  charts.watch(offerPlot);
  element("sheets").addEventListener("click", () => open());
  element("sheet-dialog").addEventListener("click", async ({ target }) => {
    const { sheet, plot } = target.dataset;
    try {
      if (sheet === "html") await openToPrint();
      else if (sheet) await saveAs(sheet, false);
      else if (plot) await saveAs(plot, true);
    } catch (error) {
      said(error.message);
    }
  });
  return { open };
}

function openTab() {
  return window.open("/static/sheet.html", "_blank");
}

// The tab asks for its sheet when it is ready, and gets it.
function handOver(tab, words) {
  return new Promise((done) => {
    const give = (event) => {
      if (event.source !== tab || event.origin !== location.origin) return;
      removeEventListener("message", give);
      tab.postMessage({ sheet: words }, location.origin);
      done();
    };
    addEventListener("message", give);
    tab.postMessage({ ready: "?" }, location.origin);
  });
}
