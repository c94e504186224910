// The view of the plot: Mercator of the shown part of the sea, north up, and what it shows.
//
// World coordinates are those of Mercator on a sphere of radius 1, turned so that the middle of all
// positions is the middle meridian: what lies across the 180th meridian is drawn in one piece.

import { geoMercator, geoRotation } from "/static/vendor/d3-geo/d3-geo.js";

/** Nearer to the poles nothing is plotted. */
export const LAST_LATITUDE = 85;
const MINUTE = Math.PI / 10800;
const CLOSEST = 8e6;
const NARROWEST = 0.5;

/** Degrees east of west that hold all longitudes, the widest empty stretch left out. */
export function longitudeSpan(longitudes) {
  const sorted = [...new Set(longitudes.map((one) => wrapped(one, 0)))].sort((a, b) => a - b);
  let widest = sorted[0] + 360 - sorted.at(-1);
  let west = sorted[0];
  for (let at = 1; at < sorted.length; at++) {
    const gap = sorted[at] - sorted[at - 1];
    if (gap > widest) [widest, west] = [gap, sorted[at]];
  }
  return { west, width: 360 - widest };
}

function wrapped(degrees, from) {
  return ((((degrees - from) % 360) + 360) % 360) + from;
}

/** A projection whose middle meridian is `middle`; screen positions come from `View`. */
export function worldOf(middle) {
  const project = geoMercator().rotate([-middle, 0]).scale(1).translate([0, 0]).precision(0);
  return {
    middle,
    project: ([lon, lat]) => project([lon, lat]),
    longitude: (x) => middle + (x * 180) / Math.PI,
    latitude: (y) => (Math.atan(Math.sinh(-y)) * 180) / Math.PI,
    x: (lon) => ((lon - middle) * Math.PI) / 180,
    y: (lat) => -Math.asinh(Math.tan((lat * Math.PI) / 180)),
  };
}

/** The points of a circle, or of its part from one true bearing clockwise to another, degrees. */
export function circlePoints([lon, lat], radiusNm, from = 0, to = 360) {
  const turn = geoRotation([-lon, -lat]);
  const radius = radiusNm * MINUTE;
  const sweep = ((to - from) % 360 + 360) % 360 || 360;
  const steps = Math.max(2, Math.ceil(sweep / 4));
  return Array.from({ length: steps + 1 }, (_, at) => {
    const bearing = ((from + (sweep * at) / steps) * Math.PI) / 180;
    const north = Math.asin(Math.sin(radius) * Math.cos(bearing));
    const east = Math.atan2(Math.sin(radius) * Math.sin(bearing), Math.cos(radius));
    return turn.invert([(east * 180) / Math.PI, (north * 180) / Math.PI]);
  });
}

/** What is shown: the middle in world coordinates, and pixels per radian. */
export class View {
  constructor() {
    this.world = worldOf(0);
    this.middle = [0, 0];
    this.scale = 200;
    this.box = { left: 0, top: 0, width: 400, height: 300 };
    this.all = { west: -0.5, north: -0.5, east: 0.5, south: 0.5 };
  }

  /** The screen position of a world position. */
  screen([x, y]) {
    const { left, top, width, height } = this.box;
    return [
      left + width / 2 + (x - this.middle[0]) * this.scale,
      top + height / 2 + (y - this.middle[1]) * this.scale,
    ];
  }

  /** The world position at a screen position. */
  at([x, y]) {
    const { left, top, width, height } = this.box;
    return [
      this.middle[0] + (x - left - width / 2) / this.scale,
      this.middle[1] + (y - top - height / 2) / this.scale,
    ];
  }

  /** Take world positions for all that there is to show. */
  setAll(points) {
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    this.all = { west: least(xs), east: greatest(xs), north: least(ys), south: greatest(ys) };
  }

  /** Show all, with some sea round it. */
  showAll() {
    const { west, north, east, south } = this.all;
    this.middle = [(west + east) / 2, (north + south) / 2];
    const narrowest = (NARROWEST * MINUTE) / this._shrinking();
    const margin = Math.min(44, this.box.width / 8, this.box.height / 8);
    this.scale = Math.min(
      (this.box.width - 2 * margin) / Math.max(east - west, narrowest),
      (this.box.height - 2 * margin) / Math.max(south - north, narrowest),
    );
    this._hold();
  }

  /** What is shown, in degrees, to go there again when the world has another middle. */
  place() {
    const { world, middle: [x, y], scale } = this;
    return { lon: world.longitude(x), lat: world.latitude(y), scale };
  }

  /** Show a place that `place` gave. */
  go({ lon, lat, scale }) {
    this.middle = this.world.project([lon, lat]);
    this.scale = scale;
    this._hold();
  }

  /** Come nearer by a factor; the place at a screen position stays where it is. */
  zoom(factor, screen) {
    const { left, top, width, height } = this.box;
    const fixed = screen ?? [left + width / 2, top + height / 2];
    const place = this.at(fixed);
    this.scale *= factor;
    this._hold();
    const moved = this.at(fixed);
    this.middle = [this.middle[0] + place[0] - moved[0], this.middle[1] + place[1] - moved[1]];
    this._hold();
  }

  /** Move what is shown by pixels. */
  pan(right, down) {
    this.middle = [this.middle[0] - right / this.scale, this.middle[1] - down / this.scale];
    this._hold();
  }

  /** Whether a screen position is in sight, by at least a margin. */
  sees([x, y], margin = 0) {
    const { left, top, width, height } = this.box;
    return (
      x >= left + margin && x <= left + width - margin &&
      y >= top + margin && y <= top + height - margin
    );
  }

  /** Pixels of one minute of latitude, the nautical mile, in the middle of what is shown. */
  pixelsPerMile() {
    return (MINUTE * this.scale) / this._shrinking();
  }

  /** How much smaller a mile is at the equator of this Mercator than in the middle. */
  _shrinking() {
    return Math.cos((this.world.latitude(this.middle[1]) * Math.PI) / 180);
  }

  _hold() {
    const widest = Math.min(this.box.width, this.box.height) / (2 * Math.PI);
    this.scale = Math.min(CLOSEST, Math.max(widest, this.scale));
    const last = -this.world.y(LAST_LATITUDE);
    this.middle = [
      Math.min(Math.PI, Math.max(-Math.PI, this.middle[0])),
      Math.min(last, Math.max(-last, this.middle[1])),
    ];
  }
}

function least(values) {
  return values.reduce((one, other) => Math.min(one, other), Infinity);
}

function greatest(values) {
  return values.reduce((one, other) => Math.max(one, other), -Infinity);
}
