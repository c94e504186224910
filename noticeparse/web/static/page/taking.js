// Takes the records away: copied as table, JSON or GeoJSON, or saved as a file in any format.

import { copy } from "./clipboard.js";
import { openDialog } from "./dialogs.js";
import { counted, element } from "./dom.js";
import { postJson } from "./service.js";
import { asJson, asTable } from "./tables.js";
import { tell } from "./trouble.js";

const ENDINGS = { json: "json", jsonl: "jsonl", geojson: "geojson", csv: "csv", text: "txt" };
const BYTE_ORDER_MARK = "\ufeff"; // by which a spreadsheet knows UTF-8

// `state()` gives {model, shown, source}: what was read, the actions shown, what to send for it.
export function createTaking(state) {
  const said = (words) => {
    element("take-said").textContent = words;
  };

  function open() {
    const { model, shown } = state();
    const all = model?.actions.length ?? 0;
    element("take-shown").textContent = `the ${counted(shown.length, "action")} shown`;
    element("take-all").textContent = `all ${counted(all, "action")}`;
    const bad = shown.filter(({ record }) => !record.usable).length;
    said(bad ? `${counted(bad, "action")} among them not to be used: marked as such, and without a figure for the place.` : "");
    for (const button of document.querySelectorAll("[data-copy], [data-save]")) button.disabled = !model;
    openDialog("take-dialog");
  }

  async function copyAs(format) {
    const { model, shown } = state();
    const isAll = document.querySelector("[name=extent]:checked").value === "all";
    const actions = isAll ? model.actions : shown;
    const words = await wordsFor(format, model, actions, isAll);
    const isDone = await copy(words, `Copied ${counted(actions.length, "action")}`);
    said(isDone ? `Copied: ${counted(actions.length, "action")}, ${format}.` : "This browser does not let the page copy.");
  }

  async function wordsFor(format, model, actions, isAll) {
    if (format === "table") return asTable(actions, model.bulletin.caution);
    if (format === "json") return isAll ? fetched("json") : asJson(actions, model.bulletin);
    const whole = await fetched("geojson");
    if (isAll) return whole;
    const wanted = new Set(actions.map(({ path }) => path));
    const collection = JSON.parse(whole);
    const features = collection.features.filter(({ properties }) => wanted.has(properties.path));
    const { type, schema_version: version, generator, caution } = collection;
    return JSON.stringify({ type, schema_version: version, generator, caution, features });
  }

  async function fetched(format) {
    const answer = await postJson("/v1/parse", { ...state().source, format });
    return answer.text();
  }

  async function saveAs(format, isMarked) {
    const words = await fetched(format);
    const { name } = state().source;
    const stem = (name ?? "bulletin").replace(/\.[a-z0-9]{1,5}$/i, "").replace(/[^\w.() -]+/g, "_");
    const file = `${stem}.${ENDINGS[format]}`;
    save(new Blob([isMarked ? BYTE_ORDER_MARK : "", words]), file);
    said(`Saved ${file}.`);
  }

  element("take").addEventListener("click", open);
  element("take-dialog").addEventListener("click", async ({ target }) => {
    const { copy: copied, save: saved, mark } = target.dataset;
    try {
      if (copied) await copyAs(copied);
      else if (saved) await saveAs(saved, mark === "yes");
    } catch (error) {
      said("");
      element("take-dialog").close();
      tell(error, "Nothing was taken away.");
    }
  });
  return { open };
}

// Hands a file to the browser, which puts it where it puts what is saved.
export function save(blob, name) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}
