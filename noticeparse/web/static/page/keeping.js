// What this browser keeps between two visits: the text, its name, the chart list, a few choices.

const PREFIX = "noticeparse.";

// What is kept under a name, or null.
export function kept(name) {
  try {
    return localStorage.getItem(PREFIX + name);
  } catch {
    return null;
  }
}

// Keeps words under a name, nothing for null; false where the browser has no room or no leave.
export function keep(name, words) {
  try {
    if (words === null) localStorage.removeItem(PREFIX + name);
    else localStorage.setItem(PREFIX + name, words);
    return true;
  } catch {
    return false;
  }
}

// Keeps what `words()` gives a moment after the last call, and when the page is left.
export function createKeeper(name, words, onKept) {
  const WAIT = 400;
  let timer = 0;
  function now() {
    clearTimeout(timer);
    timer = 0;
    const isKept = keep(name, words() || null);
    if (!isKept) keep(name, null); // else an older text would come back in place of this one
    onKept(isKept);
  }
  addEventListener("pagehide", () => timer && now());
  return {
    later() {
      clearTimeout(timer);
      timer = setTimeout(now, WAIT);
    },
    now,
  };
}

export function forgetAll() {
  try {
    for (const name of Object.keys(localStorage)) if (name.startsWith(PREFIX)) localStorage.removeItem(name);
    sessionStorage.clear();
  } catch {
    // Nothing was kept.
  }
}
