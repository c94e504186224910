// The plot of the positions of a bulletin, for orientation only: `createPlot`.
//
// In come actions and chart frames as records have them, out goes the path of the action that a
// person picks. Nothing is read or judged here; what each action draws is told in plot/drawing.js.

import { drawBorder, drawFrames, drawScale } from "./plot/border.js";
import { legend, toolbar } from "./plot/controls.js";
import { html, svg } from "./plot/dom.js";
import { positionsOf } from "./plot/drawing.js";
import { drawLabels } from "./plot/labels.js";
import { labelOf, marksOf, placeMarks, showChoice } from "./plot/marks.js";
import { bindMoves } from "./plot/moves.js";
import { View, longitudeSpan, worldOf } from "./plot/view.js";

const NOTE = "For orientation only, not for navigation.";
const STEP = 80;
const NEARER = 1.5;
const MARGIN = { left: 62, top: 12, right: 12, bottom: 26 };

let count = 0;

/**
 * A plot in `element`. `show({actions, frames})` draws; `select(path)` marks an action, brings it
 * into sight and gives whether it is there; `destroy()` empties the element again.
 */
export function createPlot(element, { onSelect = () => {} } = {}) {
  addStyle();
  const plot = new Plot(element, onSelect);
  return {
    show: (wish) => plot.show(wish),
    select: (path) => plot.select(path),
    destroy: () => plot.destroy(),
  };
}

function addStyle() {
  const href = new URL("plot.css", import.meta.url).href;
  if ([...document.styleSheets].some((one) => one.href === href)) return;
  if (document.head.querySelector(`link[href="${href}"]`)) return;
  document.head.append(html("link", { rel: "stylesheet", href }));
}

class Plot {
  constructor(element, onSelect) {
    this._element = element;
    this._onSelect = onSelect;
    this._view = new View();
    this._marks = [];
    this._frames = [];
    this._selected = null;
    this._hasLabels = true;
    this._isAll = true;
    this._build();
    this._watcher = new ResizeObserver(() => this._measure());
    this._watcher.observe(this._surface);
  }

  _build() {
    const group = (name, more = {}) => svg("g", { class: name, ...more });
    const hidden = { "aria-hidden": "true" };
    const clip = `plot-window-${++count}`;
    this._window = svg("rect");
    this._sea = svg("rect", { class: "sea", ...hidden });
    const names = "graticule frames shapes marks numbers labels border scale".split(" ");
    const list = { role: "listbox", "aria-label": "Actions on the plot" };
    const layers = names.map((name) => group(name, name === "marks" ? list : hidden));
    this._layers = Object.fromEntries(names.map((name, at) => [name, layers[at]]));
    const inside = svg("g", { "clip-path": `url(#${clip})` }, ...layers.slice(0, 6));
    this._surface = svg(
      "svg",
      {
        class: "plot-surface", tabindex: "0", role: "group",
        "aria-label": `Plot of the positions, north up. ${NOTE}`,
      },
      svg("defs", {}, svg("clipPath", { id: clip }, this._window)),
      this._sea, inside, ...layers.slice(6),
    );
    this._told = html("p", { class: "plot-told", role: "status" });
    this._tools = toolbar((name) => this._act(name));
    this._root = html(
      "div",
      { class: "plot" },
      html("div", { class: "plot-head" }, html("p", { class: "plot-note" }, NOTE), this._tools),
      this._surface, this._told, legend(),
    );
    this._element.append(this._root);
    this._release = bindMoves(this._surface, {
      act: (name) => this._act(name),
      pan: (right, down) => this._change(() => this._view.pan(right, down)),
      zoom: (factor, at) => this._change(() => this._view.zoom(factor, at)),
      pick: (target) => this._pickFrom(target),
      step: (wish) => this._step(wish),
    });
  }

  /**
   * Draw actions and frames anew. What is selected is kept, and so is a view that a person has
   * chosen, as long as anything is in sight there; else the view shows all.
   */
  show({ actions = [], frames = [] }) {
    const path = this._selected?.action.path;
    const focused = this._marks.find((one) => one.option === document.activeElement);
    const before = this._isAll ? null : this._view.place();
    this._frames = frames;
    const places = actions.flatMap(positionsOf);
    const corners = frames.flatMap((one) => [[one.west, one.south], [one.east, one.north]]);
    const shown = places.length ? places : corners;
    const span = shown.length ? longitudeSpan(shown.map(([lon]) => lon)) : { west: -1, width: 2 };
    this._view.world = worldOf(span.west + span.width / 2);
    const { world } = this._view;
    this._marks = marksOf(actions, world);
    this._layers.marks.replaceChildren(...this._marks.map((one) => one.option));
    const drawn = this._marks.flatMap((mark) => mark.shapes.map((one) => one.drawn));
    this._layers.shapes.replaceChildren(...drawn);
    const points = this._marks.flatMap((mark) => [
      ...mark.places.map((one) => one.at), ...mark.shapes.flatMap((one) => one.points),
    ]);
    const all = points.length ? points : shown.map((one) => world.project(one));
    this._view.setAll(all.length ? all : [[-0.01, -0.01], [0.01, 0.01]]);
    this._tell(actions.length);
    if (before) this._view.go(before);
    const isInSight = points.some((one) => this._view.sees(this._view.screen(one)));
    this._isAll = !before || !isInSight;
    this._selected = null;
    this._measure();
    const again = (wanted) => this._marks.find((one) => one.action.path === wanted);
    if (path) this._mark(again(path) ?? null);
    const target = focused && (again(focused.action.path)?.option ?? this._surface);
    target?.focus({ preventScroll: true });
  }

  _tell(number) {
    const left = number - this._marks.length;
    const words = `${this._marks.length} of ${number} action${number === 1 ? "" : "s"} on the plot`;
    this._told.textContent = left ? `${words}; ${left} without a position to plot.` : `${words}.`;
  }

  _measure() {
    const { width, height } = this._surface.getBoundingClientRect();
    if (!width || !height) return;
    const box = {
      left: MARGIN.left, top: MARGIN.top,
      width: Math.max(40, width - MARGIN.left - MARGIN.right),
      height: Math.max(40, height - MARGIN.top - MARGIN.bottom),
    };
    this._view.box = box;
    for (const one of [this._window, this._sea]) {
      const { left: x, top: y, ...size } = box;
      for (const [name, value] of Object.entries({ x, y, ...size })) one.setAttribute(name, value);
    }
    if (this._isAll) this._view.showAll();
    this._draw();
  }

  _change(alter) {
    this._isAll = false;
    alter();
    this._ask();
  }

  _ask() {
    this._asked ??= requestAnimationFrame(() => {
      this._asked = undefined;
      this._draw();
    });
  }

  _draw() {
    const view = this._view;
    drawBorder(view, this._layers.graticule, this._layers.border);
    const taken = [
      ...drawFrames(view, this._frames, this._layers.frames, this._layers.numbers),
      ...drawScale(view, this._layers.scale),
    ];
    const seen = placeMarks(view, this._marks, this._layers.marks);
    drawLabels(view, this._labels(), seen, taken, this._layers.labels);
  }

  /** The labels that are wished for, the selected action's first, each wording once in a place. */
  _labels() {
    const chosen = this._selected ? [this._selected] : [];
    const known = new Set();
    const wanted = [];
    for (const mark of this._hasLabels ? [...chosen, ...this._marks] : chosen) {
      const place = mark.places.findLast(
        (one) => one.screen && one.role !== "from" && this._view.sees(one.screen),
      );
      const words = labelOf(mark);
      const key = place && `${place.at} ${words}`;
      if (!place || known.has(key)) continue;
      known.add(key);
      wanted.push({ at: place.screen, words, isFirst: mark === this._selected });
    }
    return wanted;
  }

  _act(name) {
    const moves = { west: [STEP, 0], east: [-STEP, 0], north: [0, STEP], south: [0, -STEP] };
    if (name in moves) this._change(() => this._view.pan(...moves[name]));
    if (name === "in") this._change(() => this._view.zoom(NEARER));
    if (name === "out") this._change(() => this._view.zoom(1 / NEARER));
    if (name === "all") {
      this._isAll = true;
      this._view.showAll();
      this._ask();
    }
    if (name === "labels") {
      this._hasLabels = !this._hasLabels;
      this._tools.querySelector("[data-act=labels]").setAttribute("aria-pressed", this._hasLabels);
      this._ask();
    }
  }

  _pickFrom(target) {
    const at = target.closest("[data-at]")?.dataset.at;
    if (at === undefined) return;
    const mark = this._marks[at];
    const stack = mark.stack ?? [mark];
    const next = stack[(stack.indexOf(this._selected) + 1) % stack.length];
    this._choose(stack.includes(this._selected) ? next : mark);
  }

  _choose(mark) {
    this._mark(mark);
    this._onSelect(mark.action.path);
  }

  _step(wish) {
    const at = this._marks.findIndex((one) => one.option === document.activeElement);
    if (at < 0) return false;
    if (wish === "choose") this._choose(this._marks[at]);
    const to = { next: at + 1, before: at - 1, first: 0, last: this._marks.length - 1 }[wish];
    const mark = this._marks[to];
    if (mark) {
      this._bringIntoSight(mark);
      this._makeStop(mark);
      mark.option.focus({ preventScroll: true });
    }
    return true;
  }

  /** Mark the action of a path, or none; gives whether it is on the plot. */
  select(path) {
    const mark = this._marks.find((one) => one.action.path === path) ?? null;
    this._mark(mark);
    if (mark) {
      this._bringIntoSight(mark);
      this._surface.scrollIntoView({ block: "nearest", inline: "nearest" });
    }
    return mark !== null;
  }

  _mark(mark) {
    if (this._selected) showChoice(this._selected, false);
    this._selected = mark;
    if (mark) {
      showChoice(mark, true);
      this._makeStop(mark);
    }
    this._ask();
  }

  _makeStop(mark) {
    for (const one of this._layers.marks.querySelectorAll('[tabindex="0"]')) {
      one.setAttribute("tabindex", "-1");
    }
    mark.option.setAttribute("tabindex", "0");
  }

  _bringIntoSight(mark) {
    const places = mark.places.length ? mark.places.map((one) => one.at) : mark.shapes[0].points;
    if (places.some((one) => this._view.sees(this._view.screen(one), 24))) return;
    this._change(() => { [this._view.middle] = places; });
  }

  destroy() {
    this._watcher.disconnect();
    this._release();
    if (this._asked) cancelAnimationFrame(this._asked);
    this._root.remove();
  }
}
