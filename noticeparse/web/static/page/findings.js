// The findings as a list, with counts by severity, what each means, and a way to the next one.

import { counted, element, make, say } from "./dom.js";
import { createLazyList } from "./lazy_list.js";
import { get } from "./service.js";

const SEVERITIES = ["error", "warning", "info"];
const BLOCK = 20;
const ITEM_HEIGHT = 84;

// `onPick(item)` when a finding is chosen; `placeNow(place)` is a place in the text as it stands.
export function createFindings({ onPick, placeNow }) {
  const container = element("finding-list");
  const list = createLazyList(container);
  const hidden = new Set();
  let items = [];
  let shown = [];
  let current = null;
  let meanings = null;

  // The catalogue is asked for once, when the first meaning is wanted.
  async function meaningOf(code) {
    meanings ??= get("/v1/findings").then((answer) => answer.json()).then(
      ({ findings }) => new Map(findings.map((entry) => [entry.code, entry])),
    );
    try {
      return (await meanings).get(code) ?? null;
    } catch {
      meanings = null;
      return null;
    }
  }

  function show(found) {
    items = found;
    current = null;
    drawCounts();
    draw();
  }

  function drawCounts() {
    const switches = SEVERITIES.map((severity) => {
      const count = items.filter(({ record }) => record.severity === severity).length;
      const words = severity === "info" ? `${count} info` : counted(count, severity);
      const attributes = { type: "button", class: `severity ${severity}`, "aria-pressed": String(!hidden.has(severity)) };
      const button = make("button", attributes, make("span", { class: "mark", "aria-hidden": "true" }), words);
      button.dataset.severity = severity;
      return button;
    });
    element("severities").replaceChildren(...switches);
  }

  function draw() {
    shown = items.filter(({ record }) => !hidden.has(record.severity));
    const blocks = [];
    for (let at = 0; at < shown.length; at += BLOCK) {
      const piece = shown.slice(at, at + BLOCK);
      blocks.push({
        key: String(at),
        tag: "ol",
        style: "findings",
        height: piece.length * ITEM_HEIGHT,
        build: () => piece.map(itemOf),
      });
    }
    list.show(blocks);
    const without = items.length ? "" : "Nothing to look at was found. That is no proof that the bulletin is free of error.";
    const some = shown.length === items.length ? "" : `${shown.length} of ${items.length} shown`;
    element("finding-count").textContent = items.length ? some : without;
  }

  function itemOf(item) {
    const { record } = item;
    const where = [
      item.line ? `line ${item.line}` : "no one place",
      item.page ? `page ${item.page}` : null,
      record.notice && `notice ${record.notice}`,
      record.chart && `chart ${record.chart}`,
    ].filter(Boolean).join(" · ");
    const more = make("details", { class: "meaning" }, make("summary", {}, "What it means"));
    more.addEventListener("toggle", () => explain(more, record.code), { once: true });
    return make(
      "li",
      { class: `finding ${record.severity}`, "data-finding": item.index, "aria-current": item === current ? "true" : null },
      make("span", { class: "mark", "aria-hidden": "true" }),
      make(
        "div",
        {},
        make(
          "button",
          { type: "button", class: "finding-go" },
          make("b", {}, record.severity),
          ` ${record.message}`,
        ),
        make("p", { class: "facts" }, where),
        record.hint ? make("p", { class: "hint" }, record.hint) : null,
        more,
      ),
    );
  }

  async function explain(more, code) {
    const entry = await meaningOf(code);
    const words = entry ? entry.meaning : "The service does not answer.";
    more.append(make("p", {}, `${words}. `, make("code", {}, code)));
  }

  function choose(item, { isAnnounced = true } = {}) {
    container.querySelectorAll("[aria-current]").forEach((one) => one.removeAttribute("aria-current"));
    current = item;
    const at = shown.indexOf(item);
    if (at < 0) return;
    const box = list.reveal(String(at - (at % BLOCK)));
    const entry = box?.querySelector(`[data-finding="${item.index}"]`);
    entry?.setAttribute("aria-current", "true");
    entry?.scrollIntoView({ block: "nearest" });
    const { severity, message, hint } = item.record;
    if (isAnnounced) say(`Finding ${at + 1} of ${shown.length}: ${severity}: ${message}. ${hint ?? ""}`);
  }

  // The finding after the current one, or the first after the cursor, errors before warnings before
  // infos; round at the end.
  function step(direction, cursor) {
    if (!shown.length) {
      say("No finding is shown.");
      return;
    }
    const ranked = SEVERITIES.flatMap((one) => shown.filter(({ record }) => record.severity === one));
    const at = ranked.indexOf(current);
    const from = at >= 0 ? at + direction : fromCursor(ranked, direction, cursor);
    onPick(ranked[(from + ranked.length) % ranked.length]);
  }

  // Among the gravest that there are: what is lighter comes when they have been seen.
  function fromCursor(ranked, direction, cursor) {
    const gravest = ranked.filter(({ record }) => record.severity === ranked[0].record.severity);
    const after = gravest.findIndex((item) => item.from !== null && placeNow(item.from) >= cursor);
    if (direction > 0) return after < 0 ? 0 : after;
    return (after < 0 ? gravest.length : after) - 1;
  }

  element("severities").addEventListener("click", (event) => {
    const severity = event.target.closest("button")?.dataset.severity;
    if (!severity) return;
    if (!hidden.delete(severity)) hidden.add(severity);
    drawCounts();
    element("severities").querySelector(`[data-severity=${severity}]`).focus();
    draw();
  });
  container.addEventListener("click", (event) => {
    const entry = event.target.closest(".finding");
    if (!entry || event.target.closest("details") || !getSelection().isCollapsed) return;
    onPick(shown.find(({ index }) => String(index) === entry.dataset.finding));
  });
  drawCounts();

  return { show, choose, step, all: () => items };
}
