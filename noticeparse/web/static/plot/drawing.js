// What an action draws: places with a role, lines and areas, in world coordinates.
//
// The positions of `close`, `between` and `vicinity` are those of a reference: they are drawn as a
// reference and never as the feature.

import { LAST_LATITUDE, circlePoints } from "./view.js";

const REFERENCES = new Set(["close", "between", "vicinity"]);

/** Positions of an action that can be plotted, as longitude and latitude. */
export function positionsOf(action) {
  return [action.geometry, action.destination]
    .flatMap((one) => (one ? [...one.positions, one.offset?.reference] : []))
    .filter((one) => one && isPlottable(one))
    .map(coordinates);
}

function coordinates(position) {
  return [position.lon, position.lat];
}

function isPlottable(position) {
  return Number.isFinite(position.lat) && Math.abs(position.lat) <= LAST_LATITUDE;
}

/** The places and shapes of an action: `{places, shapes}`, each with its role. */
export function drawingOf(action, world) {
  const own = drawn(action.geometry, action.verb === "move" ? "from" : "feature", world);
  if (action.verb !== "move" || !action.destination) return own;
  const there = drawn(action.destination, "to", world);
  const starts = own.places.filter((one) => one.role === "from");
  const ends = there.places.filter((one) => one.role === "to");
  const arrows = ends.map((end, at) => ({
    role: "arrow",
    points: [(starts[at] ?? starts[0])?.at, end.at],
  }));
  return {
    places: [...own.places, ...there.places],
    shapes: [...own.shapes, ...there.shapes, ...arrows.filter((one) => one.points[0])],
  };
}

function drawn(geometry, role, world) {
  const found = { places: [], shapes: [] };
  if (!geometry) return found;
  const usable = geometry.positions.filter(isPlottable);
  const points = usable.map((one) => world.project(coordinates(one)));
  const isReference = REFERENCES.has(geometry.relation);
  const own = isReference ? "reference" : role;
  const isWhole = points.length === geometry.positions.length;
  if (geometry.shape === "line" && points.length > 1 && isWhole) {
    found.shapes.push({ role: own, points });
    found.places.push({ at: middleOf(points), role: own, direction: geometry.direction });
  } else if (geometry.shape === "area" && points.length > 2 && isWhole) {
    found.shapes.push({ role: own, points, isClosed: true });
    found.places.push({ at: centreOf(points), role: own, direction: geometry.direction });
  } else {
    for (const at of points) found.places.push({ at, role: own, direction: geometry.direction });
    if (geometry.radius_nm > 0 && !isReference && usable[0]) {
      found.shapes.push(round(geometry, coordinates(usable[0]), role, world));
    }
  }
  if (geometry.relation === "between" && points.length > 1) {
    found.shapes.push({ role: "between", points });
  }
  const anchor = geometry.offset?.reference;
  if (geometry.relation === "from_reference" && anchor && isPlottable(anchor) && points[0]) {
    found.shapes.push({ role: "bearing", points: [world.project(coordinates(anchor)), points[0]] });
  }
  return found;
}

/** A circle or an arc, true to scale; an arc whose limits are not certain is a dotted circle. */
function round(geometry, centre, role, world) {
  const { arc, radius_nm: radius } = geometry;
  const project = (points) => points.map((one) => world.project(one));
  if (!arc) return { role, points: project(circlePoints(centre, radius)), isClosed: true };
  const isCertain = arc.sense !== null && arc.bearings !== "not_stated";
  if (!isCertain) {
    return { role: "unsure", points: project(circlePoints(centre, radius)), isClosed: true };
  }
  const turn = arc.bearings === "from_seaward" ? 180 : 0;
  const limits = [arc.from_deg + turn, arc.to_deg + turn];
  if (arc.sense === "anticlockwise") limits.reverse();
  return { role, points: project(circlePoints(centre, radius, ...limits)) };
}

/** The point half-way along a line. */
function middleOf(points) {
  const lengths = points.slice(1).map(([x, y], at) => {
    return Math.hypot(x - points[at][0], y - points[at][1]);
  });
  let left = lengths.reduce((sum, one) => sum + one, 0) / 2;
  for (const [at, length] of lengths.entries()) {
    if (left <= length && length > 0) {
      const share = left / length;
      const [[x, y], [toX, toY]] = [points[at], points[at + 1]];
      return [x + (toX - x) * share, y + (toY - y) * share];
    }
    left -= length;
  }
  return points[0];
}

/** The centre of an area. */
function centreOf(points) {
  const [[x0, y0]] = points;
  let [doubled, x, y] = [0, 0, 0];
  points.forEach(([ax, ay], at) => {
    const [bx, by] = points[(at + 1) % points.length];
    const cross = (ax - x0) * (by - y0) - (bx - x0) * (ay - y0);
    doubled += cross;
    x += (ax + bx - 2 * x0) * cross;
    y += (ay + by - 2 * y0) * cross;
  });
  if (doubled === 0) return middleOf(points);
  return [x0 + x / (3 * doubled), y0 + y / (3 * doubled)];
}
