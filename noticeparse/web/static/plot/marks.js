// The marks of actions: one option of a list each, with its symbols, lines and name.

import { pathOf, px, svg } from "./dom.js";
import { drawingOf } from "./drawing.js";
import { VERBS, groupOf, symbol } from "./symbols.js";

const REFERENCES = ["close", "between", "vicinity"];
/** From so many symbols in sight on they are smaller. */
const SIZES = [[800, 0.55], [150, 0.8], [0, 1]];
const CROWDED = 0.6;
const MARGIN = 24;

/** The marks of those actions that have a place: `{action, places, shapes, option, stack}`. */
export function marksOf(actions, world) {
  const found = actions
    .map((action) => ({ action, ...drawingOf(action, world) }))
    .filter((one) => one.places.length || one.shapes.length);
  found.forEach(draw);
  stack(found);
  return found;
}

function draw(mark, at) {
  const { action } = mark;
  const group = groupOf(action.kind, action.geometry.shape);
  const name = nameOf(action);
  const state = { role: "option", "aria-label": name, "aria-selected": "false", "data-at": at };
  mark.option = svg("g", { ...state, tabindex: at ? "-1" : "0" }, svg("title", {}, name));
  for (const place of mark.places) {
    const { role, direction } = place;
    place.drawn = symbol({ group, verb: action.verb, role, isUsable: action.usable, direction });
    mark.option.append(place.drawn);
  }
  for (const shape of mark.shapes) {
    const names = ["shape", `is-${action.verb}`, `is-${shape.role}`];
    if (shape.isClosed) names.push("is-closed");
    if (!action.usable) names.push("is-unusable");
    shape.drawn = svg("path", { class: names.join(" "), "data-at": at });
  }
}

/** Tell marks of the very same place of each other, and write how many they are. */
function stack(marks) {
  const stacks = new Map();
  for (const mark of marks) {
    for (const place of mark.places) {
      const key = place.at.map((one) => one.toFixed(9)).join(" ");
      if (!stacks.has(key)) stacks.set(key, []);
      stacks.get(key).push({ mark, place });
    }
  }
  for (const entries of stacks.values()) {
    const owners = [...new Set(entries.map((one) => one.mark))];
    if (owners.length === 1) continue;
    for (const owner of owners) {
      if (owners.length > (owner.stack?.length ?? 0)) owner.stack = owners;
    }
    const count = svg("text", { class: "count halo", x: 10, y: 14 }, owners.length);
    entries.at(-1).place.drawn.append(count);
  }
}

/**
 * Put all marks where the view has them; where they crowd they are smaller and without badges.
 * Gives the screen positions that are in sight.
 */
export function placeMarks(view, marks, group) {
  const places = marks.flatMap((one) => one.places);
  for (const place of places) {
    const at = view.screen(place.at);
    place.screen = view.sees(at, -MARGIN) ? at : null;
  }
  const seen = places.filter((one) => one.screen);
  const size = SIZES.find(([least]) => seen.length >= least)[1];
  group.classList.toggle("is-crowded", size < CROWDED);
  for (const { drawn, screen: [x, y] } of seen) {
    drawn.setAttribute("transform", `translate(${px(x)} ${px(y)}) scale(${size})`);
  }
  for (const place of places) {
    const isSeen = place.screen !== null;
    if (isSeen !== place.isSeen) place.drawn.classList.toggle("is-away", !isSeen);
    place.isSeen = isSeen;
  }
  drawShapes(view, marks);
  return seen.map((one) => one.screen);
}

function drawShapes(view, marks) {
  for (const { shapes } of marks) {
    for (const shape of shapes) {
      const points = shape.points.map((one) => view.screen(one));
      const d = shape.role === "arrow" ? arrow(points) : pathOf(points, shape.isClosed);
      shape.drawn.setAttribute("d", d);
    }
  }
}

/** Ring a mark as the selected one, or not any more. */
export function showChoice({ places, shapes, option }, isSelected) {
  option.setAttribute("aria-selected", isSelected);
  for (const { drawn } of places) {
    if (isSelected) drawn.prepend(svg("circle", { class: "choice", r: 16 }));
    else drawn.querySelector(".choice")?.remove();
  }
  for (const { drawn } of shapes) drawn.classList.toggle("is-selected", isSelected);
}

/** The words beside a mark; those of a reference say how the feature lies to it. */
export function labelOf({ action }) {
  const words = action.label || `${action.verb} ${action.kind.replaceAll("_", " ")}`;
  const { relation, direction } = action.destination ?? action.geometry;
  if (!REFERENCES.includes(relation)) return words;
  return `${direction ? `${relation} ${direction}` : relation}: ${words}`;
}

function nameOf(action) {
  const { verb, kind, label, notice, chart, usable, geometry, destination } = action;
  const isNear = [geometry, destination].some((one) => REFERENCES.includes(one?.relation));
  return [
    `${VERBS[verb].name}: ${label || kind.replaceAll("_", " ")}`,
    notice ? `notice ${notice}` : null,
    chart ? `chart ${chart}` : null,
    isNear ? "the mark is its reference only" : null,
    usable ? null : "not to be used, an error was found",
  ].filter(Boolean).join(", ");
}

/** A line that stops short of both symbols, with a head. */
function arrow([[x, y], [toX, toY]]) {
  const length = Math.hypot(toX - x, toY - y);
  if (length < 4) return "";
  const gap = Math.min(11, length / 3);
  const [ex, ey] = [(toX - x) / length, (toY - y) / length];
  const [ax, ay, bx, by] = [x + ex * gap, y + ey * gap, toX - ex * gap, toY - ey * gap];
  const side = (way) =>
    `M${px(bx)} ${px(by)}L${px(bx - ex * 7 - way * ey * 4)} ${px(by - ey * 7 + way * ex * 4)}`;
  return `M${px(ax)} ${px(ay)}L${px(bx)} ${px(by)}${side(1)}${side(-1)}`;
}
