// Says the values of a record in words: pairs of a name and what stands for it. A third member that
// is true marks what is doubtful or was not written.

const words = (name) => name.replaceAll("_", " ");
const degrees = (figure) => `${String(figure).padStart(3, "0")}°`;

// Any value of a record on one line.
export function valueWords(value) {
  if (value === null || value === undefined) return "not told";
  if (Array.isArray(value)) return value.map(valueWords).join(", ") || "none";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value !== "object") return String(value);
  return value.written ?? value.text ?? pairs(value);
}

function pairs(record) {
  const told = Object.entries(record).filter(([, value]) => value !== null && value !== false);
  return told.map(([name, value]) => `${words(name)} ${valueWords(value)}`).join("; ");
}

// A whole light: its character as written, then every part that was read of it.
function lightRows(light, name = "light") {
  const rows = [[name, light.written]];
  const parts = [];
  const add = (word, value, unit = "") => {
    if (value !== null && value !== false && value !== "") parts.push(`${word} ${value === true ? "" : value}${unit}`.trim());
  };
  add("rhythm", `${light.alternating ? "alternating " : ""}${light.rhythm ?? "not told"}`);
  add("groups", light.groups.join(" + "));
  add("morse", light.morse);
  if (light.colour_stated) add("colours", light.colours.join(" "));
  add("period", light.period_s, " s");
  add("elevation", light.elevation_m, " m");
  add("range", light.ranges_nm.join(", "), light.ranges_nm.length ? " M" : "");
  if (light.count > 1) add("lights", light.count);
  for (const flag of ["vertical", "horizontal", "directional", "leading", "aero"]) add(flag, light[flag]);
  add("remarks", light.remarks.join(", "));
  rows.push(["read as", parts.join(" · ")]);
  if (!light.colour_stated) rows.push(["colour", "none written: white", true]);
  if (light.range_by_colour) rows.push(...rangeRows(light.range_by_colour));
  if (light.sectors.length) rows.push(["sectors", light.sectors.map(sectorWords).join(" · ")]);
  return rows;
}

function rangeRows(ranges) {
  const told = Object.entries(ranges);
  if (told.length < 2) return [];
  const said = told.map(([colour, range]) => `${colour} ${range === null ? "not told" : `${range} M`}`);
  return [["range by colour", said.join(" · "), told.some(([, range]) => range === null)]];
}

function sectorWords(sector) {
  const range = sector.range_nm === null ? "" : ` ${sector.range_nm} M`;
  const seen = sector.visibility ? ` (${sector.visibility})` : "";
  return `${sector.colour ?? "no colour"} ${degrees(sector.from_deg)}–${degrees(sector.to_deg)}${range}${seen}`;
}

function depthRows(depth, name = "depth") {
  const value = depth.value_m === null ? "depth not told" : `${depth.value_m} m`;
  const kind = depth.kind === "sounding" ? "" : `, ${words(depth.kind)}`;
  const quality = depth.quality && depth.kind !== "least" ? `, ${depth.quality}` : "";
  const written = depth.unit === "m" ? "" : `, written ${depth.written}`;
  const rows = [[name, `${value}${kind}${quality}${written}`, depth.value_m === null]];
  if (depth.unit === null) rows.push(["unit", "none stated: read as metres", true]);
  return rows;
}

// What is known of a feature beside its words and kind.
export function featureRows(feature) {
  const rows = [];
  const add = (name, value) => {
    const isTold = value !== null && !(Array.isArray(value) && !value.length);
    if (isTold) rows.push([name, valueWords(value)]);
  };
  add("name", feature.name);
  add("legend", feature.legend);
  if (feature.light) rows.push(...lightRows(feature.light));
  for (const light of feature.more_lights) rows.push(...lightRows(light, "further light"));
  if (feature.depth) rows.push(...depthRows(feature.depth));
  if (feature.clearance) {
    const { kind, value_m: metres, written } = feature.clearance;
    const value = metres === null ? "not told" : `${metres} m`;
    rows.push(["clearance", `${value} · ${words(kind)} · written ${written}`, metres === null]);
  }
  add("height", feature.height_m === null ? null : `${feature.height_m} m`);
  add("colours", feature.colours);
  add("pattern", feature.colour_pattern && words(feature.colour_pattern));
  add("shape", feature.shape);
  add("topmark", feature.topmark);
  add("fog signal", feature.sound);
  add("racon", feature.racon);
  add("AIS", feature.ais);
  if (feature.status.length) rows.push(["status", feature.status.map(words).join(", "), isDoubtful(feature.status)]);
  add("reported", feature.reported_year);
  for (const { role, feature: other } of feature.companions) rows.push([words(role), other.text]);
  return rows;
}

function isDoubtful(status) {
  return status.some((one) => /doubtful|approximate|reported/.test(one));
}

const UNITS = { nm: " M", s: " s", m: " m", deg: "°" };

// The changes of an amendment.
export function changeRows(changes) {
  return changes.flatMap(({ property, old, new: wanted }) => {
    const { name, unit } = propertyOf(property);
    const before = old === null ? [] : [[`${name} before`, inUnit(old, unit)]];
    if (wanted?.rhythm !== undefined) return [...before, ...lightRows(wanted, `${name} is now`)];
    if (wanted?.value_m !== undefined && wanted.quality !== undefined) {
      return [...before, ...depthRows(wanted, `${name} is now`)];
    }
    return [...before, [`${name} is now`, inUnit(wanted, unit), wanted === null]];
  });
}

// The name of a property that is changed, and the unit that its name ends with.
function propertyOf(path) {
  const [, stem, ending] = /^(.*?)(?:_(nm|s|m|deg))?$/.exec(path);
  return { name: words(stem).replaceAll(".", ", "), unit: UNITS[ending] ?? "" };
}

function inUnit(value, unit) {
  const isFigure = typeof value === "number" || (Array.isArray(value) && value.length > 0);
  return `${valueWords(value)}${isFigure ? unit : ""}`;
}

const RELATIONS = {
  at: "",
  centred_on: "centred on",
  joining: "joining",
  within: "within",
  close: "close to",
  between: "between",
  vicinity: "in the vicinity of",
  from_reference: "worked out from a bearing and distance",
};
const OF_REFERENCE = new Set(["close", "between", "vicinity"]);

// How an action lies to the positions that stand for it.
export function placeRows(geometry) {
  const rows = [];
  if (geometry.shape === "unlocated") return [["place", "no position is named", true]];
  if (!geometry.positions.length) rows.push(["position", "none could be read", true]);
  const relation = RELATIONS[geometry.relation];
  if (OF_REFERENCE.has(geometry.relation)) {
    const toward = geometry.direction ? `${relation.replace(" to", "")} ${geometry.direction} of` : relation;
    rows.push(["place", `${toward} the position below, which is not the feature's own`, true]);
  } else if (relation) {
    rows.push(["place", relation, geometry.relation === "from_reference"]);
  }
  if (!["point", "points"].includes(geometry.shape)) rows.push(["shape", geometry.shape]);
  if (geometry.radius_nm !== null) rows.push(["radius", `${geometry.radius_nm} M`]);
  if (geometry.arc) {
    const { from_deg: from, to_deg: to, sense, bearings } = geometry.arc;
    const way = sense ?? "which way round is not told";
    const end = words(bearings);
    rows.push(["arc", `${degrees(from)}–${degrees(to)}, ${way}, bearings ${end}`, !sense || bearings === "not_stated"]);
  }
  if (geometry.offset) {
    const { bearing_deg: bearing, direction, distance_nm: distance, reference_text: text } = geometry.offset;
    const way = bearing === null ? (direction ?? "bearing not told") : degrees(bearing);
    const far = distance === null ? "distance not told" : `${distance} M`;
    rows.push(["bearing and distance", `${way}, ${far}${text ? `, from ${text}` : ""}`]);
  }
  return rows;
}

// What must be known of one position beside its figures.
export function positionRemarks(position, place) {
  const remarks = [];
  if (position.via === "reference") remarks.push("from a letter or reference");
  if (position.via === "offset") remarks.push("worked out");
  if (position.quality) remarks.push(position.quality);
  const isInDoubt = remarks.length > 0;
  if (position.resolution_m !== null) remarks.push(`± ${position.resolution_m} m`);
  if (place) {
    const panel = place.panel ? `, ${place.panel}` : "";
    remarks.push(`sheet${panel}: ${place.x_mm} mm right, ${place.y_mm} mm up, ${place.part ?? "outside the frame"}`);
  }
  return { remarks, isDoubtful: isInDoubt };
}

export function noticeName(reference) {
  if (!reference) return null;
  const mark = { temporary: "(T)", preliminary: "(P)" }[reference.status] ?? "";
  const year = reference.year === null ? "" : `/${String(reference.year).slice(-2)}`;
  return `${reference.number}${mark}${year}`;
}

export { words as plainWords };
