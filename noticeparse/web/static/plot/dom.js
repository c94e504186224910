// Elements of HTML and SVG, made without markup in strings.

const SVG = "http://www.w3.org/2000/svg";

/** An HTML element with attributes and children (elements or words). */
export function html(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

/** An SVG element with attributes and children (elements or words). */
export function svg(name, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, name), attributes, children);
}

function filled(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== undefined) element.setAttribute(name, value);
  }
  element.append(...children);
  return element;
}

/** Pixels with as many decimals as a screen can show. */
export function px(value) {
  return Math.round(value * 100) / 100;
}

/** The path through screen points. */
export function pathOf(points, isClosed = false) {
  const steps = points.map(([x, y], at) => `${at ? "L" : "M"}${px(x)} ${px(y)}`);
  return steps.join("") + (isClosed ? "Z" : "");
}
