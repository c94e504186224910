// Presses of the main button, each from its beginning to the click that it becomes. A browser gives
// a click only to what stood there all the while: what is built anew meanwhile takes it away.

const LONGEST = 20000; // milliseconds, behind which something must have been missed
const ENDS = ["pointerup", "pointercancel", "contextmenu", "keydown"];

let press = null; // the one that is under way
let waiting = [];

// The list of a select takes the mouse to itself, and tells nothing of the release.
function begin({ button, isPrimary, target }) {
  if (!isPrimary || button !== 0 || target.closest?.("select")) return;
  const begun = {};
  press = begun;
  setTimeout(() => letGo(begun), LONGEST);
}

// The click comes behind the release, and whoever waits behind the click.
function end() {
  const ended = press;
  if (ended) setTimeout(() => letGo(ended));
}

function letGo(ended) {
  if (press !== ended) return;
  press = null;
  const all = waiting;
  waiting = [];
  all.forEach((goOn) => goOn());
}

export function watchPresses() {
  addEventListener("pointerdown", begin, true);
  for (const name of ENDS) addEventListener(name, end, true);
  // Where a release was not told: another window is in front, or no button is held any more.
  addEventListener("blur", ({ target }) => target === window && end());
  addEventListener("pointermove", ({ buttons }) => buttons & 1 || end(), true);
}

// Promises a moment at which nothing is pressed.
export async function released() {
  while (press) await new Promise((goOn) => waiting.push(goOn));
}
