// Elements by their id, and new ones; text goes in as text, never as markup.

export const element = (id) => document.getElementById(id);

// A new element. `class` and `on` ({event: listener}) are what they say; true stands for an
// attribute without a value; null and false leave it out. Children are nodes or words.
export function make(tag, attributes = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name === "on") {
      for (const [event, listener] of Object.entries(value)) made.addEventListener(event, listener);
    } else if (value !== null && value !== undefined && value !== false) {
      made.setAttribute(name, value === true ? "" : value);
    }
  }
  made.append(...children.flat(Infinity).filter((child) => child !== null && child !== undefined));
  return made;
}

// "1 action", "2 actions".
export function counted(count, word) {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}

// Says something to a screen reader; the same words twice are said twice.
export function say(words) {
  const said = element("said");
  said.textContent = said.textContent === words ? `${words}\u00a0` : words;
}

// Lets the browser draw and take in keys between two pieces of work.
export function pause() {
  if (globalThis.scheduler?.yield) return scheduler.yield();
  return new Promise((done) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => done();
    channel.port2.postMessage(null);
  });
}
