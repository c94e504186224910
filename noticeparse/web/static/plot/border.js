// The border of the plot as on a chart: graticule, degrees and minutes, scale bar, north, frames.

import { pathOf, px, svg } from "./dom.js";

/** Steps of the graticule in minutes of arc. */
const STEPS = [
  0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800, 3600,
];
const BAND = 5;
/** A frame that is narrower on the screen has no number. */
const NARROWEST = 24;
const APART = { lon: 74, lat: 64 };
const MILES = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000];
const LONGEST_BAR = 130;

/** `47°12'S`, with as many decimals of a minute as the step needs. */
export function angle(minutes, letters, step) {
  const decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
  const scale = 10 ** decimals;
  const all = Math.round(Math.abs(minutes) * scale);
  const degrees = Math.floor(all / (60 * scale));
  const rest = ((all - degrees * 60 * scale) / scale).toFixed(decimals);
  const width = letters === "NS" ? 2 : 3;
  const padded = rest.padStart(decimals ? 3 + decimals : 2, "0");
  const isBetween = all === 0 || (letters === "EW" && all === 10800 * scale);
  const letter = isBetween ? "" : letters[minutes < 0 ? 1 : 0];
  return `${String(degrees).padStart(width, "0")}°${padded}'${letter}`;
}

/** Draw the graticule and the border with its figures into two groups. */
export function drawBorder(view, grid, border) {
  const { left, top, width, height } = view.box;
  const [first, north] = view.at([left, top]);
  const [last, south] = view.at([left + width, top + height]);
  // Beyond half the globe to either side the same meridians would come again.
  const [west, east] = [Math.max(first, -Math.PI), Math.min(last, Math.PI)];
  const { world } = view;
  const lons = ticks(world.longitude(west) * 60, world.longitude(east) * 60, width / APART.lon);
  const lats = ticks(world.latitude(south) * 60, world.latitude(north) * 60, height / APART.lat);
  const xs = lons.at.map((one) => [one, view.screen([world.x(one / 60), 0])[0]]);
  const ys = lats.at.map((one) => [one, view.screen([0, world.y(one / 60)])[1]]);
  const lines = [
    ...xs.map(([, x]) => `M${px(x)} ${top}V${top + height}`),
    ...ys.map(([, y]) => `M${left} ${px(y)}H${left + width}`),
  ];
  grid.replaceChildren(svg("path", { d: lines.join("") }));
  border.replaceChildren(
    svg("rect", { class: "neat", x: left, y: top, width, height }),
    svg("path", { class: "ladder", d: ladders(view, lons, lats) }),
    ...xs.filter(([, x]) => x > left + 28 && x < left + width - 28).map(([minutes, x]) =>
      figure(angle(east180(minutes), "EW", lons.step), x, top + height + BAND + 13, "middle")),
    ...ys.filter(([, y]) => y > top + 6 && y < top + height - 2).map(([minutes, y]) =>
      figure(angle(minutes, "NS", lats.step), left - BAND - 4, y + 3.5, "end")),
  );
}

/** Longitude in minutes within 180 degrees of Greenwich. */
function east180(minutes) {
  return ((((minutes + 10800) % 21600) + 21600) % 21600) - 10800;
}

function ticks(from, to, most) {
  const step = STEPS.find((one) => (to - from) / one <= most) ?? STEPS.at(-1);
  const at = [];
  for (let n = Math.ceil(from / step); n * step <= to; n++) at.push(n * step);
  return { step, at, from, to };
}

/** Bands filled in turn along the four sides, as on the border of a chart. */
function ladders(view, lons, lats) {
  const { left, top, width, height } = view.box;
  const { world } = view;
  const bands = [];
  for (const [from, to] of turns(lons)) {
    const start = Math.max(left, view.screen([world.x(from / 60), 0])[0]);
    const end = Math.min(left + width, view.screen([world.x(to / 60), 0])[0]);
    for (const y of [top - BAND, top + height]) bands.push(box(start, y, end - start, BAND));
  }
  for (const [from, to] of turns(lats)) {
    const start = Math.max(top, view.screen([0, world.y(to / 60)])[1]);
    const end = Math.min(top + height, view.screen([0, world.y(from / 60)])[1]);
    for (const x of [left - BAND, left + width]) bands.push(box(x, start, BAND, end - start));
  }
  return bands.join("");
}

function turns({ step, from, to }) {
  const part = step / 2;
  const found = [];
  for (let n = Math.floor(from / part); n * part < to; n++) {
    if (n % 2 === 0) found.push([n * part, (n + 1) * part]);
  }
  return found;
}

function box(x, y, width, height) {
  if (width <= 0 || height <= 0) return "";
  return `M${px(x)} ${px(y)}h${px(width)}v${px(height)}h${px(-width)}Z`;
}

function figure(words, x, y, anchor) {
  return svg("text", { x: px(x), y: px(y), "text-anchor": anchor }, words);
}

/**
 * Draw the frames of charts, panels dashed, and their numbers in the corner that is in sight; gives
 * the boxes of the numbers.
 */
export function drawFrames(view, frames, group, numbers) {
  const { left, top, width, height } = view.box;
  const taken = [];
  const written = [];
  const made = frames.flatMap((frame) => {
    const { world } = view;
    const west = ((((frame.west - world.middle + 180) % 360) + 360) % 360) - 180;
    const wide = (((frame.east - frame.west) % 360) + 360) % 360 || 360;
    const [x, y] = view.screen([(west * Math.PI) / 180, world.y(frame.north)]);
    const [toX, toY] = view.screen([((west + wide) * Math.PI) / 180, world.y(frame.south)]);
    const [x1, y1] = [Math.max(x, left - 9), Math.max(y, top - 9)];
    const [x2, y2] = [Math.min(toX, left + width + 9), Math.min(toY, top + height + 9)];
    if (x2 <= x1 || y2 <= y1) return [];
    const name = frame.panel ? `${frame.number} ${frame.panel}` : `${frame.number}`;
    // Above the frame, where there is room, so that it hides nothing within.
    const at = [Math.max(x1, left) + 4, y - 4 > top + 11 ? y - 4 : Math.max(y1, top) + 13];
    const isTaken = (one) => Math.abs(one.x - at[0]) < 70 && Math.abs(one.y + 11 - at[1]) < 13;
    while (taken.some(isTaken)) at[1] += 13;
    if (at[1] < top + height && x2 - x1 >= NARROWEST) {
      taken.push({ x: at[0], y: at[1] - 11, x2: at[0] + name.length * 7, y2: at[1] + 2 });
      written.push(figure(name, at[0], at[1], "start"));
      written.at(-1).setAttribute("class", "halo");
    }
    const d = pathOf([[x1, y1], [x2, y1], [x2, y2], [x1, y2]], true);
    const title = svg("title", {}, frame.title ? `${name}, ${frame.title}` : name);
    return [svg("path", { class: frame.panel ? "frame is-panel" : "frame", d }, title)];
  });
  group.replaceChildren(...made);
  numbers.replaceChildren(...written);
  return taken;
}

/**
 * Draw the scale bar, in nautical miles at the middle latitude, and the arrow of north; gives the
 * boxes that they take.
 */
export function drawScale(view, group) {
  const { left, top, width, height } = view.box;
  const perMile = view.pixelsPerMile();
  const fits = MILES.filter((one) => one * perMile <= Math.min(LONGEST_BAR, width / 2.5));
  const miles = fits.at(-1) ?? MILES[0];
  const length = miles * perMile;
  const [x, y] = [left + 12, top + height - 14];
  const latitude = angle(Math.round(view.world.latitude(view.middle[1]) * 60), "NS", 1);
  const name = miles === 1 ? "1 nautical mile" : `${miles} nautical miles`;
  const north = `translate(${px(left + width - 20)} ${px(top + 24)})`;
  const words = figure(name, x, y - 8, "start");
  words.setAttribute("class", "halo");
  group.replaceChildren(
    svg("title", {}, `${name}, true at ${latitude}`),
    svg("path", { class: "bar", d: `M${x} ${y - 4}v8m0 -4h${px(length)}m0 -4v8` }),
    svg("path", { class: "half-bar", d: `M${x} ${y - 2}h${px(length / 2)}v4h${px(-length / 2)}Z` }),
    words,
    svg("g", { transform: north, class: "north" },
      svg("path", { d: "M0 -14L5 8L0 4L-5 8Z" }),
      svg("text", { y: 20, "text-anchor": "middle" }, "N")),
  );
  return [
    { x, y: y - 20, x2: x + Math.max(length, name.length * 6.2), y2: y + 6 },
    { x: left + width - 28, y: top + 8, x2: left + width - 12, y2: top + 48 },
  ];
}
