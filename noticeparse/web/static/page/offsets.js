// Offsets of the records count code points; those of the editor count UTF-16 units.

// The two ways between them for one text: `toUnits(points)` and `toPoints(units)`.
// Only characters beyond U+FFFF take two units; their places are looked up in a table, so that an
// ordinary text of any length costs one glance. Half a pair that stands alone is one of each.
export function offsetsOf(text) {
  const pairs = [];
  if (/[\ud800-\udbff][\udc00-\udfff]/.test(text)) {
    const pattern = /[\ud800-\udbff][\udc00-\udfff]/g;
    for (let found = pattern.exec(text); found; found = pattern.exec(text)) pairs.push(found.index);
  }
  return {
    toUnits(points) {
      return points + countBefore(pairs, (at) => pairs[at] - at < points);
    },
    toPoints(units) {
      return units - countBefore(pairs, (at) => pairs[at] < units - 1);
    },
  };
}

// How many of a sorted table come before, by halving.
function countBefore(pairs, isBefore) {
  let low = 0;
  let high = pairs.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isBefore(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}
