// The actions by notice and chart: builds the blocks that are shown, and knows the current slip.

import { make } from "./dom.js";
import { chartHead, noticeHead, remarkOf } from "./heads.js";
import { createLazyList } from "./lazy_list.js";
import { slipOf } from "./slip.js";

const MOST_IN_BLOCK = 24; // actions; a longer notice goes on in a further block
const SLIP_HEIGHT = 110; // pixels, as a guess
const HEAD_HEIGHT = 70;

// `onPick(action)` when a person chooses a slip, `onLeave()` when they go back to the text.
export function createRecords(container, { onPick, onLeave }) {
  const list = createLazyList(container);
  let shown = []; // the actions on show, in order
  let blockOf = new Map(); // an action's path to the key of its block
  let byPath = new Map();
  let current = null; // path

  function show(model, { isShown, isNarrowed }) {
    shown = model.actions.filter(isShown);
    byPath = new Map(shown.map((action) => [action.path, action]));
    blockOf = new Map();
    const chosen = new Set(shown);
    const hadFocus = container.contains(document.activeElement);
    const blocks = model.notices.flatMap((notice) => blocksOf(notice, chosen, isNarrowed));
    for (const { key, actions } of blocks) for (const { path } of actions) blockOf.set(path, key);
    if (!byPath.has(current)) current = null;
    list.show(blocks.map(asBlock));
    if (!current) offerFirst();
    if (hadFocus && !container.contains(document.activeElement)) focusCurrent();
    return { actions: shown, notices: new Set(shown.map(({ notice }) => notice)).size };
  }

  function asBlock({ key, notice, actions, isFirst, isLast, sections }) {
    return {
      key,
      tag: "section",
      style: "notice",
      label: `Notice ${notice.record.id ?? "without a number"}${isFirst ? "" : ", further actions"}`,
      height: HEAD_HEIGHT * (1 + sections.length) + SLIP_HEIGHT * actions.length,
      build: () => [
        isFirst ? noticeHead(notice) : make("p", { class: "goes-on" }, `${notice.record.id ?? "The notice"} goes on`),
        ...sections.map(({ section, actions: own }) => chartOf(section, own)),
        ...(isLast ? notice.record.remarks.map(remarkOf) : []),
      ],
    };
  }

  function chartOf(section, actions) {
    const slips = actions.map(slipOf);
    for (const slip of slips) if (slip.dataset.path === current) markSlip(slip, true);
    return make("section", { class: "chart" }, chartHead(section), make("ol", { class: "slips" }, slips));
  }

  function slipAt(path) {
    const box = list.reveal(blockOf.get(path));
    return box?.querySelector(`[data-path="${path}"]`) ?? null;
  }

  // Marks a slip as the current one, and brings it into view.
  function choose(action, { isToFocus = false, isToScroll = true } = {}) {
    container.querySelectorAll("[aria-current]").forEach((slip) => markSlip(slip, false));
    container.querySelectorAll('.slip[tabindex="0"]').forEach((slip) => slip.setAttribute("tabindex", "-1"));
    current = action && byPath.has(action.path) ? action.path : null;
    const slip = current && slipAt(current);
    if (!slip) {
      offerFirst();
      return;
    }
    markSlip(slip, true);
    if (isToScroll) slip.scrollIntoView({ block: "nearest" });
    if (isToFocus) slip.focus({ preventScroll: true });
  }

  // One slip is always a stop of the Tab key.
  function offerFirst() {
    if (shown.length) slipAt(shown[0].path)?.setAttribute("tabindex", "0");
  }

  function markSlip(slip, isCurrent) {
    slip.classList.toggle("current", isCurrent);
    if (isCurrent) {
      slip.setAttribute("aria-current", "true");
      slip.setAttribute("tabindex", "0");
    } else slip.removeAttribute("aria-current");
  }

  function focusCurrent() {
    const path = current ?? shown[0]?.path;
    if (path) slipAt(path)?.focus({ preventScroll: true });
    else container.focus();
  }

  container.addEventListener("click", (event) => {
    const slip = event.target.closest(".slip");
    if (slip && !event.target.closest("button, summary") && getSelection().isCollapsed) {
      onPick(byPath.get(slip.dataset.path));
    }
  });
  container.addEventListener("keydown", (event) => {
    if (event.target !== container && !event.target.matches(".slip")) return;
    const step = { ArrowDown: 1, ArrowUp: -1, Home: -Infinity, End: Infinity }[event.key];
    const at = shown.findIndex(({ path }) => path === event.target.dataset.path);
    if (step !== undefined && shown.length) {
      event.preventDefault();
      onPick(shown[Math.max(0, Math.min(shown.length - 1, at + step))], true);
    } else if (event.key === "Enter" && at >= 0) {
      onPick(shown[at], true);
      onLeave();
      event.preventDefault();
    } else if (event.key === "Escape") onLeave();
  });

  return {
    show,
    choose,
    focusCurrent,
    actionAt: (path) => byPath.get(path),
    isCurrent: (path) => path === current,
    all: () => shown,
  };
}

// The blocks of a notice: its actions that are shown, in pieces of a size that builds at once.
function blocksOf(notice, chosen, isNarrowed) {
  const blocks = [];
  let block = null;
  const begin = () => {
    const key = `${notice.index}.${blocks.length}`;
    block = { key, notice, actions: [], sections: [], isFirst: !blocks.length, isLast: false };
    blocks.push(block);
  };
  for (const section of notice.sections) {
    const actions = section.actions.filter((action) => chosen.has(action));
    if (!actions.length && isNarrowed) continue;
    for (let at = 0; at < Math.max(1, actions.length); at += MOST_IN_BLOCK) {
      const piece = actions.slice(at, at + MOST_IN_BLOCK);
      if (!block || block.actions.length + piece.length > MOST_IN_BLOCK) begin();
      block.actions.push(...piece);
      block.sections.push({ section, actions: piece });
    }
  }
  if (!block && !isNarrowed) begin();
  if (block) block.isLast = true;
  return blocks;
}
