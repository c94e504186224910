// The signs of the five verbs, drawn so that each has a shape of its own.

const PATHS = {
  insert: "M8 2.5v11M2.5 8h11",
  delete: "M3.5 3.5l9 9M12.5 3.5l-9 9",
  move: "M2 11.5c3-6 7-6.5 11-5M9.5 3.5l3.8 3-3.4 3.5",
  amend: "M2.5 13.5l1.2-3.8 7-7 2.6 2.6-7 7zM9 4.4l2.6 2.6",
  replace: "M3 5.5h9.5M10 3l2.6 2.5L10 8M13 10.5H3.5M6 8l-2.6 2.5L6 13",
};
const SPACE = "http://www.w3.org/2000/svg";

// The sign of a verb as a small drawing; what it says stands in words beside it.
export function signOf(verb) {
  const drawing = document.createElementNS(SPACE, "svg");
  drawing.setAttribute("viewBox", "0 0 16 16");
  drawing.setAttribute("class", "sign");
  drawing.setAttribute("aria-hidden", "true");
  const path = document.createElementNS(SPACE, "path");
  path.setAttribute("d", PATHS[verb]);
  drawing.append(path);
  return drawing;
}
