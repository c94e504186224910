// What the page is doing, in one line that is always in view.

import { counted, element } from "./dom.js";

const size = (count) => (count < 10000 ? `${count} characters` : `${Math.round(count / 1000)} thousand characters`);

export function sayState(words, style = "") {
  element("state-words").textContent = words;
  element("state").className = `state ${style}`.trim();
  element("again").hidden = style !== "stopped";
}

export function sayReading({ characters }) {
  sayState(`Reading ${size(characters)} … what stands below is from before.`, "busy");
}

// From the first key on, since a long text is sent only when a person pauses.
export function sayChanged() {
  sayState("Changed, not read again yet: what stands below is from before.", "busy");
}

export function sayUnpacking({ share }) {
  sayState(`Laying out what was read: ${Math.round(share * 100)} % …`, "busy");
}

// What was read, with the counts that tell whether a look is needed.
export function sayRead(model) {
  const bad = model.actions.filter(({ record }) => !record.usable).length;
  const { unread, characters } = model.bulletin.coverage;
  const parts = [
    counted(model.notices.length, "notice"),
    counted(model.actions.length, "action"),
    bad ? `${bad} not to be used` : "none held back",
    counted(model.findings.length, "finding"),
    unread ? `${unread} of ${characters} characters not read` : "every character accounted for",
  ];
  const time = model.milliseconds < 1000 ? `${Math.round(model.milliseconds)} ms` : `${(model.milliseconds / 1000).toFixed(1)} s`;
  sayState(`Read in ${time}: ${parts.join(", ")}.`, bad ? "bad" : "");
}
