// Wheel, drag, pinch, click and keys on the surface of the plot, as wishes.

const KEYS = {
  "+": "in", "=": "in", "-": "out", "_": "out", 0: "all",
  ArrowLeft: "west", ArrowRight: "east", ArrowUp: "north", ArrowDown: "south",
};
const STEPS = {
  ArrowLeft: "before", ArrowUp: "before", ArrowRight: "next", ArrowDown: "next",
  Home: "first", End: "last", Enter: "choose", " ": "choose",
};
const CLICK = 4;
const LINE = 16;

/** Bind them to `surface`; gives the function that releases it. `wishes` says what is done. */
export function bindMoves(surface, wishes) {
  const releases = [];
  const on = (name, listener, options) => {
    surface.addEventListener(name, listener, options);
    releases.push(() => surface.removeEventListener(name, listener, options));
  };
  on("wheel", (event) => {
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1;
    const amount = Math.max(-300, Math.min(300, event.deltaY * unit));
    wishes.zoom(2 ** (-amount / 250), placeOf(surface, event));
  }, { passive: false });
  on("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const isAtSymbol = event.target !== surface;
    if (isAtSymbol && event.key === "Escape") surface.focus({ preventScroll: true });
    else if (isAtSymbol && event.key in STEPS) wishes.step(STEPS[event.key]);
    else if (event.key in KEYS) wishes.act(KEYS[event.key]);
    else return;
    event.preventDefault();
    event.stopPropagation();
  });
  bindPointers(surface, wishes, on);
  return () => releases.forEach((release) => release());
}

function placeOf(surface, event) {
  const { left, top } = surface.getBoundingClientRect();
  return [event.clientX - left, event.clientY - top];
}

/** One pointer pans, two also zoom; one that has not moved is a click. */
function bindPointers(surface, wishes, on) {
  const held = new Map();
  let moved = 0;
  on("pointerdown", (event) => {
    if (event.button !== 0) return;
    if (!held.size) moved = 0;
    held.set(event.pointerId, placeOf(surface, event));
  });
  on("pointermove", (event) => {
    if (!held.has(event.pointerId)) return;
    const [x, y] = placeOf(surface, event);
    const [fromX, fromY] = held.get(event.pointerId);
    moved += Math.hypot(x - fromX, y - fromY);
    if (moved < CLICK) return;
    // Only now, since a captured pointer clicks on the surface and on no symbol.
    surface.setPointerCapture(event.pointerId);
    const before = spreadOf(held);
    held.set(event.pointerId, [x, y]);
    wishes.pan((x - fromX) / held.size, (y - fromY) / held.size);
    const after = spreadOf(held);
    if (before && after) wishes.zoom(after.size / before.size, after.middle);
  });
  const lift = (event) => held.delete(event.pointerId);
  on("pointerup", lift);
  on("pointercancel", lift);
  on("pointerleave", (event) => {
    if (!surface.hasPointerCapture(event.pointerId)) lift(event);
  });
  on("click", (event) => {
    if (moved < CLICK) wishes.pick(event.target);
  });
}

function spreadOf(held) {
  if (held.size !== 2) return null;
  const [[x, y], [otherX, otherY]] = [...held.values()];
  const size = Math.max(1, Math.hypot(otherX - x, otherY - y));
  return { size, middle: [(x + otherX) / 2, (y + otherY) / 2] };
}
