// The page on paper: the whole text and all records shown, which the screen builds piece by piece.

import { counted, element, make } from "./dom.js";
import { chartHead, noticeHead, remarkOf } from "./heads.js";
import { slipOf } from "./slip.js";

// `state()` gives {model, shown, source}.
export function watchPrinting(state) {
  addEventListener("beforeprint", () => {
    const paper = element("paper");
    paper.replaceChildren(...contents(state()));
    paper.hidden = false;
  });
  addEventListener("afterprint", () => {
    element("paper").hidden = true;
    element("paper").replaceChildren();
  });
}

function contents({ model, shown, source }) {
  const caution = element("caution").cloneNode(true);
  caution.removeAttribute("id");
  const text = make("pre", {}, source.text);
  const head = make("h2", {}, source.name ?? "Bulletin");
  if (!model) return [head, caution, text];
  const chosen = new Set(shown);
  const notices = model.notices.filter(({ actions }) => actions.some((one) => chosen.has(one)) || !actions.length);
  return [
    head,
    caution,
    make("h3", {}, `Needs a look: ${counted(model.findings.length, "finding")}`),
    make("ol", { class: "findings" }, model.findings.map(findingOf)),
    make("h3", {}, `Actions: ${shown.length} of ${model.actions.length}`),
    ...notices.map((notice) => noticeOf(notice, chosen)),
    make("h3", {}, "Text"),
    text,
  ];
}

function findingOf({ record }) {
  const where = record.span ? `line ${record.span.line}` : "no one place";
  return make("li", {}, make("b", {}, `${record.severity}, ${where}: `), `${record.message}. ${record.hint ?? ""}`);
}

function noticeOf(notice, chosen) {
  const sections = notice.sections.map((section) => {
    const actions = section.actions.filter((action) => chosen.has(action));
    return make("section", { class: "chart" }, chartHead(section), make("ol", { class: "slips" }, actions.map(slipOf)));
  });
  return make("section", { class: "notice" }, noticeHead(notice), sections, notice.record.remarks.map(remarkOf));
}
