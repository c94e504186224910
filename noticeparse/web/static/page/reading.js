// Sends the text to be read a moment after each change, and hands on the records of the last one.
// What was asked before is given up, and an answer to an older text is dropped.

import { pause } from "./dom.js";
import { createModel } from "./model.js";
import { postJson } from "./service.js";

// A short text is sent between two keys, one that takes long when a person pauses.
const LEAST_WAIT = 25; // milliseconds
const MOST_WAIT = 1500;
const WAIT_PER_CHARACTER = 0.0012;
const SLICE = 30; // milliseconds of work between two chances to draw

// `source()` gives {text, name, charts, as_of, region}; `onState(state, detail)` is told "reading",
// "unpacking", "read" and "trouble"; `onRead(model, signal)` gets
// what was read, and null for a text without a word.
export function createReading({ source, onState, onRead }) {
  let timer = 0;
  let underWay = null;
  let length = 0; // of the text that was sent last

  // A change was made; with `isAtOnce` it is not waited for the next one.
  function changed(isAtOnce = false) {
    clearTimeout(timer);
    underWay?.abort();
    underWay = null;
    const wait = Math.min(MOST_WAIT, Math.max(LEAST_WAIT, length * WAIT_PER_CHARACTER));
    timer = setTimeout(read, isAtOnce ? 0 : wait);
  }

  async function read() {
    const asked = new AbortController();
    underWay = asked;
    const wanted = source();
    try {
      await onRead(wanted.text.trim() ? await found(wanted, asked.signal) : null, asked.signal);
    } catch (error) {
      if (!asked.signal.aborted) onState("trouble", { error });
    }
  }

  async function found(wanted, signal) {
    const begin = performance.now();
    length = wanted.text.length;
    onState("reading", { characters: length });
    const body = { ...wanted, format: "jsonl" };
    const answer = await postJson("/v1/parse", body, { signal });
    const model = await unpacked(await answer.text(), wanted.text, signal, onState);
    model.milliseconds = performance.now() - begin;
    return model;
  }

  return { changed };
}

// The records of an answer in JSON Lines, taken in piece by piece.
async function unpacked(lines, text, signal, onState) {
  const model = createModel(text);
  let at = 0;
  let begin = performance.now();
  while (at < lines.length) {
    const end = lines.indexOf("\n", at);
    const stop = end < 0 ? lines.length : end;
    if (stop > at) model.add(JSON.parse(lines.slice(at, stop)));
    at = stop + 1;
    if (performance.now() - begin > SLICE) {
      onState("unpacking", { share: at / lines.length });
      await pause();
      signal.throwIfAborted();
      begin = performance.now();
    }
  }
  return model;
}
