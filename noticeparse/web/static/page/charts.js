// The chart list: taken in, kept in this browser, told; and its charts as frames of the plot.

import { openDialog } from "./dialogs.js";
import { counted, element, make } from "./dom.js";
import { keep, kept } from "./keeping.js";
import { get, post } from "./service.js";

// `onChange()` when another list is in use, or none; `watch(told)` lets others know of it too.
export function createCharts(onChange) {
  let text = kept("charts");
  let name = kept("charts-name");
  let list = null;
  const watchers = [];

  async function load() {
    if (text === null) return;
    try {
      list = await read(text);
    } catch (error) {
      tellRefused(name, error);
    }
    tellUse();
  }

  // A list is used only where every row of it could be read: else some charts would not be held
  // against anything, in silence.
  async function take(wanted, wantedName) {
    openDialog("charts-dialog");
    try {
      const found = await read(wanted);
      [text, name, list] = [wanted, wantedName, found];
      keep("charts", text);
      keep("charts-name", name);
      tellUse();
      onChange();
    } catch (error) {
      tellRefused(wantedName, error);
    }
  }

  function drop() {
    [text, name, list] = [null, null, null];
    keep("charts", null);
    keep("charts-name", null);
    tellUse();
    onChange();
  }

  function tellUse() {
    for (const told of watchers) told();
    element("charts-drop").hidden = text === null;
    element("charts").classList.toggle("in-use", list !== null);
    if (!list) {
      element("charts-answer").replaceChildren(make("p", {}, "No chart list is in use."));
      return;
    }
    const rows = list.charts.map((chart) =>
      make("li", {}, make("b", {}, chart.panel ? `${chart.number}, ${chart.panel}` : chart.number), ` ${chart.title ?? ""} 1:${chart.scale}`),
    );
    const words = `${name ?? "The list"} is in use: ${counted(list.charts.length, "row")}.`;
    element("charts-answer").replaceChildren(make("p", {}, words), make("ul", { class: "chart-rows", tabindex: "0", "aria-label": "Charts of the list" }, rows));
  }

  function tellRefused(refused, error) {
    const lines = (error.errors ?? []).slice(0, 12).map(({ detail }) => make("li", {}, detail));
    element("charts-answer").replaceChildren(
      make("p", { class: "refused", role: "alert" }, `${refused ?? "The list"} is not used. ${error.message}`),
      make("ul", {}, lines),
    );
  }

  element("charts").addEventListener("click", () => openDialog("charts-dialog"));
  element("charts-open").addEventListener("click", () => element("chart-file").click());
  element("charts-drop").addEventListener("click", drop);
  element("charts-example").addEventListener("click", async () => {
    const answer = await get("/static/example_charts.csv");
    await take(await answer.text(), "example_charts.csv (invented)");
  });
  element("chart-file").addEventListener("change", async ({ target }) => {
    const [file] = target.files;
    target.value = "";
    if (file) await take(await file.text(), file.name);
  });
  tellUse();

  return {
    load,
    take,
    watch: (told) => watchers.push(told),
    text: () => (list ? text : null),
    has: (chart) => Boolean(list?.charts.some(({ number }) => number === chart)),
    frames: () =>
      (list?.charts ?? []).map(({ number, panel, title, south, west, north, east }) => ({
        number, panel, title, south, west, north, east,
      })),
  };
}

async function read(text) {
  const answer = await post("/v1/chart-list", text, { type: "text/plain; charset=utf-8" });
  return answer.json();
}
