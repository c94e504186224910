// The symbols of the plot: the shape tells the group of the kind, badge and outline tell the verb.
//
// No symbol rests on colour alone. The shapes are this project's own and no chart symbols, so that
// nobody takes the plot for a chart.

import { svg } from "./dom.js";

/** By group: its name, and the outline of its symbol round 0, 0. */
export const GROUPS = {
  danger: { name: "Danger", outline: "M0 -9L8.5 7H-8.5Z" },
  light: {
    name: "Light",
    outline: "M0 -10L2.3 -2.3L10 0L2.3 2.3L0 10L-2.3 2.3L-10 0L-2.3 -2.3Z",
  },
  mark: { name: "Buoy or beacon", outline: "M-3.5 -8H3.5L8 7H-8Z" },
  depth: { name: "Depth", outline: "M-8 -7H8V1L0 9L-8 1Z" },
  line: { name: "Line", outline: "M-10 -3H-5V-1.5H5V-3H10V3H5V1.5H-5V3H-10Z" },
  area: { name: "Area", outline: "M-8 0L-4 -7.5H4L8 0L4 7.5H-4Z" },
  other: { name: "Other", outline: "M7 0A7 7 0 1 1 -7 0A7 7 0 1 1 7 0Z" },
};

/** By verb: its name, and the strokes of its badge, in a circle of radius 5 round 0, 0. */
export const VERBS = {
  insert: { name: "Insert", badge: "M-3 0H3M0 -3V3" },
  amend: { name: "Amend", badge: "M-3.2 .9Q-1.6 -2.4 0 0T3.2 -.9" },
  replace: { name: "Replace", badge: "M-3 -1.4H2.6L1 -3M3 1.4H-2.6L-1 3" },
  move: { name: "Move", badge: "M-3.2 0H3L.6 -2.4M3 0L.6 2.4" },
  delete: { name: "Delete", badge: "M-3 0H3" },
};

const DEPTHS = new Set(
  `sounding drying_height depth_no_bottom depth_contour depth_area shoal swept_area dredged_area
  reported_depth`.split(/\s+/),
);
const DANGERS = new Set(
  `reef stump wellhead diffuser fish_haven ground_tackle boom wave_energy_device tidal_turbine
  ice_boom crib breakers overfalls tide_rips eddies wave_turbulence`.split(/\s+/),
);
const LINES = new Set(
  `oil_barrier cable_submarine cable_power cable_disused cable_overhead pipe_overhead tss_line
  tss_boundary deep_water_centreline leading_line clearing_line transit radar_line
  archipelagic_axis coastline fence railway baseline slope pipeline pipeline_disused outfall intake
  buried_pipeline recommended_track ferry_route maritime_limit maritime_boundary`.split(/\s+/),
);
const MARK = /^(light_)?(buoy|beacon)(_|$)|^(daymark|topmark|cairn|measured_distance)$/;
const LIGHT = /(^|_)(lights?|floodlight|lighthouse)(_|$)/;
const DANGER = /^(wreck|rock|obstruction|foul)(_|$)/;

/** The group of a kind of feature; its shape tells where the kind does not. */
export function groupOf(kind, shape) {
  if (MARK.test(kind)) return "mark";
  if (LIGHT.test(kind)) return "light";
  if (DEPTHS.has(kind)) return "depth";
  if (DANGER.test(kind) || DANGERS.has(kind)) return "danger";
  if (LINES.has(kind) || shape === "line" || shape === "arc") return "line";
  return shape === "area" || shape === "circle" ? "area" : "other";
}

const STRIKE = "M-11 9L11 -9";
const QUESTION = "M-2.6 -2.4A2.6 2.6 0 1 1 .9 .2Q0 .7 0 2M0 4.2V4.6";
const RING = "M6 0A6 6 0 1 1 -6 0A6 6 0 1 1 6 0Z";
const TICKS = "M0 -10V-4M0 10V4M-10 0H-4M10 0H4";
const COMPASS = "N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW".split(" ");

/** A symbol round 0, 0. `role` is feature, from, to or reference; `direction` a compass point. */
export function symbol({ group, verb, role, isUsable, direction }) {
  const names = ["symbol", `is-${verb}`, `is-${role}`];
  if (!isUsable) names.push("is-unusable");
  const made = svg("g", { class: names.join(" ") });
  if (role === "reference") {
    made.append(stroke("ring", RING), stroke("ticks", TICKS));
    const at = COMPASS.indexOf(direction);
    if (at >= 0) {
      const pointer = stroke("pointer", "M0 -11V-18M-3 -15L0 -19L3 -15");
      pointer.setAttribute("transform", `rotate(${at * 22.5})`);
      made.append(pointer);
    }
  } else {
    made.append(svg("path", { class: "body", d: GROUPS[group].outline }));
    if (verb === "replace") {
      const inner = { class: "inner", d: GROUPS[group].outline, transform: "scale(.55)" };
      made.append(svg("path", inner));
    }
    if (verb === "amend" && isUsable) made.append(svg("path", { class: "dot", d: dotOf(group) }));
    if (verb === "delete") made.append(stroke("strike", STRIKE));
  }
  if (!isUsable) made.append(stroke("question", QUESTION));
  // On the side that the pointer leaves free.
  const isEast = role === "reference" && direction?.includes("E");
  if (role !== "from") made.append(badge(verb, isEast ? -9 : 9));
  return made;
}

function badge(verb, x) {
  return svg(
    "g",
    { class: "badge", transform: `translate(${x} -9)` },
    svg("circle", { r: 5 }),
    stroke("sign", VERBS[verb].badge),
  );
}

function stroke(name, d) {
  return svg("path", { class: name, d });
}

/** A mark in the middle of a symbol: what it stands for is there, one thing about it changes. */
function dotOf(group) {
  if (group === "light") return "M-2 0A2 2 0 1 1 2 0A2 2 0 1 1 -2 0Z";
  return "M-3 1A3 3 0 1 1 3 1A3 3 0 1 1 -3 1Z";
}
