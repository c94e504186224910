// The page: makes its parts and leads what one of them tells to the others. Nothing is read or
// worked out here; that is the business of the service.

import { createCharts } from "./charts.js";
import { watchCells } from "./clipboard.js";
import { watchDialogs } from "./dialogs.js";
import { counted, element, make, pause, say } from "./dom.js";
import { createTextPane } from "./editor.js";
import { createFiles } from "./files.js";
import { createFilters } from "./filters.js";
import { createFindings } from "./findings.js";
import { createKeeper, forgetAll, keep, kept } from "./keeping.js";
import { watchKeys } from "./keys.js";
import { actionsAt, foremost, haveSameStretch, moveStretches } from "./model.js";
import { openedFile } from "./opened.js";
import { showPart, stepPart, watchParts } from "./parts.js";
import { createPlotPane } from "./plot_pane.js";
import { createPositionBox } from "./positions.js";
import { released, watchPresses } from "./press.js";
import { watchPrinting } from "./printing.js";
import { createReading } from "./reading.js";
import { createRecords } from "./records.js";
import { createSheets } from "./sheets.js";
import { sayChanged, sayRead, sayReading, sayState, sayUnpacking } from "./state_words.js";
import { asWords } from "./tables.js";
import { createTaking } from "./taking.js";
import { hideTrouble, tell, watchTrouble } from "./trouble.js";
import { welcome } from "./welcome.js";

const MANY = 1000; // actions, beyond which they are laid out in steps

let model = null;
let shown = [];
let name = kept("name");
let wasEdited = kept("edited") === "yes"; // before the page was opened again
let file = null; // what is known of the file that was opened
let plot = { show() {}, select() {} };

const source = () => ({
  text: pane.text(),
  name: name?.slice(0, 200) ?? null,
  charts: charts.text(),
  as_of: element("as-of").value || null,
  region: element("region").value || null,
  file_findings: file?.findingsNow() ?? [],
});
const isEdited = () => wasEdited || pane.isEdited();
const state = () => ({ model, shown, source: source(), isEdited: isEdited() });

watchDialogs();
watchTrouble();
watchPresses();
const pane = createTextPane(element("editor"), {
  onEdit: () => {
    keeper.later();
    reading.changed();
    sayChanged();
  },
  onOther: () => {
    [name, file, wasEdited] = [null, null, false];
    element("file-name").textContent = "not from a file";
  },
  onPlace: pickPlace,
  onSign: (from, to) => pickSign(from, to),
  onLeave: () => {
    pickPlace(pane.place());
    showPart("actions");
    records.focusCurrent();
  },
});
const keeper = createKeeper("text", pane.text, (isKept) => {
  keep("name", isKept ? name : null);
  if (isKept && !keep("file", file?.words() ?? null)) {
    keep("file", null);
    say("What was found in the file itself is too long to be kept: open the file again next time.");
  }
  if (!isKept) keep("file", null);
  keep("edited", isKept && isEdited() ? "yes" : null);
  element("kept").textContent = isKept ? "kept in this browser only" : "too long to be kept";
  if (!isKept) say("This text is too long to be kept by this browser when the page is closed.");
});
const records = createRecords(element("slips"), {
  onPick: (action, isByKey) => pickAction(action, { isToFocus: isByKey }),
  onLeave: goToText,
});
const findings = createFindings({ onPick: pickFinding, placeNow: pane.now });
const filters = createFilters(draw);
const charts = createCharts(() => reading.changed(true));
const reading = createReading({ source, onState: told, onRead: read });
const sheets = createSheets(state, charts);
const taking = createTaking(state);
const positions = createPositionBox(pane.selected);
const files = createFiles({
  onText: opened,
  onCharts: charts.take,
  onBusy: (words) => sayState(words ?? "Your text is as it was."),
});

function goToText() {
  showPart("text");
  pane.focus();
}

function opened(given) {
  hideTrouble();
  name = given.name;
  filters.clear();
  pane.replace(given.text);
  wasEdited = false;
  file = openedFile(given, pane);
  element("file-name").textContent = name ?? "not from a file";
  keeper.now();
  showPart("text");
  pane.focus();
}

function told(what, detail) {
  if (what === "reading") sayReading(detail);
  else if (what === "unpacking") sayUnpacking(detail);
  else {
    sayState("Not read: what stands below is from before.", "stopped");
    tell(detail.error, "");
  }
}

// Shows what was read. A long bulletin is laid out in steps, between which the page stays alive, and
// nothing is built anew under a press; `signal` tells where a newer text has made it stale.
async function read(found, signal) {
  for (const item of found?.findings ?? []) item.page = item.from === null ? null : (file?.pageAt(item.from) ?? null);
  const steps = [
    () => {
      hideTrouble();
      moveStretches([...shown, ...findings.all()], pane.now); // they stand there until drawn anew
      model = found;
      pane.showRead(model);
    },
    () => filters.offer(model),
    () => findings.show(model?.findings ?? []),
    draw,
    () => model && markPlace(pane.place(), false),
    () => (model ? sayRead(model) : sayState("Nothing read yet.")),
  ];
  for (const step of steps) {
    await released();
    signal.throwIfAborted();
    step();
    if (found?.actions.length > MANY) await pause();
  }
}

// The actions that are shown, and how many that is.
function draw() {
  if (!model) {
    shown = [];
    element("slips").replaceChildren(welcome(files.takeExample));
    element("action-count").textContent = "";
  } else {
    const isNarrowed = filters.isNarrowed();
    const found = records.show(model, { isShown: filters.test(), isNarrowed });
    shown = found.actions;
    const all = `${counted(model.actions.length, "action")} in ${counted(model.notices.length, "notice")}`;
    element("action-count").textContent = isNarrowed ? `${shown.length} of ${all} shown` : `all ${all}`;
    element("show-all").hidden = !isNarrowed;
    if (isNarrowed && !shown.length) element("slips").replaceChildren(make("p", { class: "nothing" }, "No action is like that."));
  }
  plot.show(shown, charts.frames());
}

function pickAction(action, { isToFocus = false } = {}) {
  if (!action) return;
  pane.select(action.from, action.to);
  pane.showCurrent([action]);
  records.choose(action, { isToFocus });
  plot.select(action.path);
}

function pickPlace(place) {
  if (model) markPlace(place, true);
}

function markPlace(place, isToScroll) {
  const at = actionsAt(model, place);
  const first = foremost(at, records);
  pane.showCurrent(first ? [first] : []);
  records.choose(first ?? null, { isToScroll });
  plot.select(first?.path ?? null);
  const other = at.filter((action) => action !== first && haveSameStretch(action, first)).length;
  if (isToScroll && other) say(`This action stands for ${other + 1} charts.`);
}

function pickSign(from, to) {
  const action = model?.actions.find((one) => pane.now(one.from) >= from && pane.now(one.from) <= to);
  if (!action) return;
  pickAction(action);
  showPart("actions");
}

function pickFinding(item) {
  if (!item) return;
  findings.choose(item);
  const [action] = item.actions;
  pane.showCurrent(action ? [action] : []);
  records.choose(action ?? null);
  plot.select(action?.path ?? null);
  if (item.from === null) return;
  pane.select(item.from, item.to);
  goToText();
}

function clearAll() {
  [name, file, wasEdited] = [null, null, false];
  filters.clear();
  pane.replace("");
  element("file-name").textContent = "nothing opened";
  keeper.now();
  say("The text is cleared, here and in what this browser keeps. Ctrl+Z brings it back.");
  pane.focus();
}

function watchSkips() {
  document.querySelector(".skips").addEventListener("click", (event) => {
    const wanted = event.target.hash?.slice(1);
    event.preventDefault();
    if (wanted === "editor") goToText();
    else if (wanted === "slips") {
      showPart("actions");
      records.focusCurrent();
    } else if (wanted) {
      showPart("findings");
      element(wanted).focus();
    }
  });
}

function watchButtons() {
  element("clear").addEventListener("click", clearAll);
  element("again").addEventListener("click", () => reading.changed(true));
  element("next-finding").addEventListener("click", () => findings.step(1, pane.place()));
  element("previous-finding").addEventListener("click", () => findings.step(-1, pane.place()));
  element("stay").addEventListener("click", () => element("stay-dialog").showModal());
  element("address").textContent = location.origin;
  element("forget").addEventListener("click", () => {
    clearAll();
    forgetAll();
    location.reload();
  });
  element("print").addEventListener("click", () => {
    element("take-dialog").close();
    print();
  });
  for (const id of ["region", "as-of"]) {
    element(id).value = kept(id) ?? "";
    element(id).addEventListener("change", ({ target }) => {
      keep(id, target.value || null);
      reading.changed(true);
    });
  }
  element("slips").addEventListener("click", ({ target }) => {
    if (target.closest("[data-sheet-of]")) sheets.open(target.closest("[data-sheet-of]").dataset.sheetOf);
    if (target.closest("[data-go]")) {
      pickAction(records.actionAt(target.closest(".slip").dataset.path));
      goToText();
    }
  });
}

async function begin() {
  watchButtons();
  watchSkips();
  watchParts();
  watchPrinting(state);
  watchCells((path) => asWords(records.actionAt(path)));
  watchKeys({
    nextFinding: () => findings.step(1, pane.place()),
    previousFinding: () => findings.step(-1, pane.place()),
    nextPart: () => stepPart(1, pane, records),
    previousPart: () => stepPart(-1, pane, records),
    position: positions.open,
    take: taking.open,
    sheets: () => sheets.open(),
    search: () => {
      showPart("actions");
      filters.focus();
    },
  });
  draw();
  const text = kept("text");
  if (text) {
    const known = kept("file");
    pane.replace(text);
    file = known ? openedFile({ text, ...JSON.parse(known) }, pane) : null;
  }
  element("file-name").textContent = name ?? (text ? "not from a file" : "nothing opened");
  plot = await createPlotPane((path) => pickAction(records.actionAt(path)));
  await charts.load();
  if (text) reading.changed(true);
  document.body.dataset.ready = "true";
}

begin();
