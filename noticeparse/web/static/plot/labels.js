// Labels beside the symbols: as many as fit without one lying on another or on a symbol.

import { px, svg } from "./dom.js";

const CELL = 64;
const LONGEST = 34;
const HIGH = 13;
const WIDE = 6.1;
const MOST = 250;

/** The places that are taken already, on the screen. */
class Taken {
  constructor() {
    this._cells = new Map();
  }

  add(box) {
    for (const key of keys(box)) {
      if (!this._cells.has(key)) this._cells.set(key, []);
      this._cells.get(key).push(box);
    }
  }

  hits(box) {
    return keys(box).some((key) =>
      (this._cells.get(key) ?? []).some(
        (one) => one.x < box.x2 && box.x < one.x2 && one.y < box.y2 && box.y < one.y2,
      ));
  }
}

function keys({ x, y, x2, y2 }) {
  const found = [];
  for (let column = Math.floor(x / CELL); column <= Math.floor(x2 / CELL); column++) {
    for (let row = Math.floor(y / CELL); row <= Math.floor(y2 / CELL); row++) {
      found.push(`${column} ${row}`);
    }
  }
  return found;
}

function boxOf([x, y], width, height) {
  return { x, y, x2: x + width, y2: y + height };
}

/** Where a label may stand: right, left, below, above, and farther off. */
function spots([x, y], width) {
  return [
    [x + 17, y - 4], [x - width - 13, y - 4], [x + 12, y + 8], [x - width - 8, y + 8],
    [x - width / 2, y + 14], [x - width / 2, y - 27],
  ];
}

/**
 * Draw labels for `wanted`, `{at, words, isFirst}` in order of importance, where they fit.
 * `symbols` are the screen positions of all symbols, `boxes` what else is taken.
 */
export function drawLabels(view, wanted, symbols, boxes, group) {
  const taken = new Taken();
  for (const [x, y] of symbols) taken.add({ x: x - 9, y: y - 9, x2: x + 13, y2: y + 9 });
  for (const one of boxes) taken.add(one);
  const made = [];
  for (const { at, words, isFirst } of wanted) {
    if (made.length >= MOST) break;
    const short = words.length > LONGEST ? `${words.slice(0, LONGEST - 1).trimEnd()}…` : words;
    const width = short.length * WIDE;
    const fits = ([x, y]) => view.sees([x, y]) && view.sees([x + width, y + HIGH]);
    const choices = spots(at, width);
    const spot =
      choices.find((one) => fits(one) && !taken.hits(boxOf(one, width, HIGH))) ??
      (isFirst ? choices.find(fits) : undefined);
    if (!spot) continue;
    taken.add(boxOf(spot, width, HIGH));
    const name = isFirst ? "halo is-selected" : "halo";
    made.push(svg("text", { x: px(spot[0]), y: px(spot[1] + HIGH - 3), class: name }, short));
  }
  group.replaceChildren(...made);
}
