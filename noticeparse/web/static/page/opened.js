// What is known of the file that the text came from: its own findings, and the pages of its lines.
// Edits since it was opened are followed, so that both still point to their place.

import { offsetsOf } from "./offsets.js";

// `pane` is the text pane, in which the text has just been put.
export function openedFile({ text, findings, places }, pane) {
  const offsets = offsetsOf(text);
  const starts = places.map(({ start }) => offsets.toUnits(start));

  // The page on which a place of the text stands, or null.
  function pageAt(place) {
    if (!starts.length) return null;
    const wanted = pane.whenOpened(place);
    let low = 0;
    let high = starts.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (starts[middle] <= wanted) low = middle + 1;
      else high = middle;
    }
    return places[Math.max(0, low - 1)].page;
  }

  // The findings of the file whose words still stand in the text.
  function items() {
    return findings.flatMap((record) => {
      if (!record.span) return [{ record, actions: [], from: null, to: null, line: null }];
      const from = pane.sinceOpened(offsets.toUnits(record.span.start), 1);
      const to = pane.sinceOpened(offsets.toUnits(record.span.end), -1);
      const isGone = record.span.end > record.span.start && to <= from;
      return isGone ? [] : [{ record, actions: [], from, to, line: pane.lineAt(from) }];
    });
  }

  return { items, pageAt };
}
