// Files that a person opens or drops: a bulletin of any kind, or a chart list.

import { element } from "./dom.js";
import { get, post } from "./service.js";
import { showTrouble, tell } from "./trouble.js";

const CHART_LIST = /\.(csv|tsv|geojson|json)$/i;

// `onText({text, name, findings, places})` gets the text of a bulletin, `onCharts(text, name)` that
// of a chart list; `onBusy(words)` is told what is under way.
export function createFiles({ onText, onCharts, onBusy }) {
  async function takeIn(file) {
    onBusy(`Opening ${file.name} …`);
    try {
      const path = `/v1/intake?name=${encodeURIComponent(file.name.slice(-180))}`;
      const answer = await post(path, file, { type: "application/octet-stream" });
      const read = await answer.json();
      onText(read);
    } catch (error) {
      onBusy(null);
      tell(error, `${file.name} was not opened, and your text is as it was.`);
    }
  }

  async function takeAll(files) {
    const lists = files.filter(({ name }) => CHART_LIST.test(name));
    const bulletins = files.filter(({ name }) => !CHART_LIST.test(name));
    if (lists.length > 1 || bulletins.length > 1) {
      showTrouble("Drop one bulletin at a time, and one chart list with it if you like. Nothing was opened.");
      return;
    }
    if (lists.length) await onCharts(await lists[0].text(), lists[0].name);
    if (bulletins.length) await takeIn(bulletins[0]);
  }

  async function takeExample() {
    onBusy("Opening the example …");
    try {
      const answer = await get("/static/example_edition.txt");
      onText({ text: await answer.text(), name: "example_edition.txt", findings: [], places: [] });
    } catch (error) {
      onBusy(null);
      tell(error, "The example was not opened.");
    }
  }

  element("open").addEventListener("click", () => element("file").click());
  element("example").addEventListener("click", takeExample);
  element("file").addEventListener("change", ({ target }) => {
    const files = [...target.files];
    target.value = ""; // so that the same file can be opened again
    takeAll(files);
  });
  watchDrops(takeAll);
  return { takeExample };
}

// Before the editor sees a drop, which would put the bytes of a file into the text.
function watchDrops(onFiles) {
  const shade = element("drop");
  const hasFiles = (event) => event.dataTransfer?.types.includes("Files");
  const options = { capture: true };
  let depth = 0;
  const leave = () => {
    depth = 0;
    shade.hidden = true;
  };
  const watch = (name, act) =>
    document.addEventListener(name, (event) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      event.stopPropagation();
      act(event);
    }, options);
  watch("dragenter", () => {
    depth += 1;
    shade.hidden = false;
  });
  watch("dragover", () => {});
  watch("dragleave", () => {
    depth -= 1;
    if (depth <= 0) leave();
  });
  watch("drop", (event) => {
    leave();
    onFiles([...event.dataTransfer.files]);
  });
}
