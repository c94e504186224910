// What is known of the file that the text came from: its own findings, and the pages of its lines.
// Edits since it was opened are followed, so that both still point to their place; so they are kept
// and sent along with the text, whose records and sheets tell of them then.

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

  // The findings of the file, with their spans in the text as it stands; those whose words are gone
  // from it are told without a place.
  function findingsNow() {
    const now = pane.text();
    const back = offsetsOf(now);
    return findings.map((record) => {
      if (!record.span) return record;
      const from = pane.sinceOpened(offsets.toUnits(record.span.start), 1);
      const to = pane.sinceOpened(offsets.toUnits(record.span.end), -1);
      const isGone = record.span.end > record.span.start && to <= from;
      if (isGone) return { ...record, span: null };
      const { number: line, from: begin } = pane.lineOf(from);
      const start = back.toPoints(from);
      const column = start - back.toPoints(begin) + 1;
      return { ...record, span: { start, end: back.toPoints(Math.max(from, to)), line, column } };
    });
  }

  // All that is known, to be kept beside the text and given to `openedFile` again.
  function words() {
    const back = offsetsOf(pane.text());
    const kept = places.map(({ page }, at) => ({ page, start: back.toPoints(pane.sinceOpened(starts[at], 1)) }));
    return JSON.stringify({ findings: findingsNow(), places: kept });
  }

  return { findingsNow, pageAt, words };
}
