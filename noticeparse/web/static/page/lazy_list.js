// A long list that is built where it is looked at: blocks are empty boxes of a guessed height until
// they come near the window of their scroller.

const NEAR = "800px 0px";

export function createLazyList(scroller) {
  let blocks = new Map(); // by key: {box, build, isBuilt}
  const watcher = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) if (isIntersecting) fill(blocks.get(target.dataset.block));
    },
    { root: scroller, rootMargin: NEAR },
  );

  function fill(block) {
    if (!block || block.isBuilt) return;
    block.isBuilt = true;
    watcher.unobserve(block.box);
    block.box.style.minHeight = "";
    block.box.replaceChildren(...block.build());
  }

  // Shows `wanted`, a list of {key, tag, style, label, height, build}; a block that stood under the
  // same key gives its height as the guess, so that nothing jumps when records follow a key.
  function show(wanted) {
    const top = scroller.scrollTop;
    const heights = new Map();
    for (const [key, { box, isBuilt }] of blocks) if (isBuilt) heights.set(key, box.offsetHeight);
    watcher.disconnect();
    blocks = new Map();
    const boxes = document.createDocumentFragment();
    for (const { key, tag = "div", style = "", label = null, height, build } of wanted) {
      const box = document.createElement(tag);
      box.className = style;
      if (label) box.setAttribute("aria-label", label);
      box.dataset.block = key;
      box.style.minHeight = `${heights.get(key) ?? height}px`;
      blocks.set(key, { box, build, isBuilt: false });
      boxes.append(box);
    }
    scroller.replaceChildren(boxes);
    scroller.scrollTop = top;
    fillSeen();
    for (const block of blocks.values()) if (!block.isBuilt) watcher.observe(block.box);
  }

  // At once what is in the window, so that no empty box is ever drawn.
  function fillSeen() {
    const window = scroller.getBoundingClientRect();
    const seen = [];
    for (const block of blocks.values()) {
      const { top, bottom } = block.box.getBoundingClientRect();
      if (top > window.bottom) break;
      if (bottom >= window.top) seen.push(block);
    }
    seen.forEach(fill);
  }

  // Builds the block under a key, and gives its box.
  function reveal(key) {
    const block = blocks.get(key);
    fill(block);
    return block?.box;
  }

  return { show, reveal };
}
