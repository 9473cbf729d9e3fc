// Notes stand beside the line they belong to, and give way downwards to one another.

const WIDE = matchMedia("(min-width: 62.01rem)");
const GAP = 14;

function stack() {
  const groups = [...document.querySelectorAll(".leaf .beside")];
  for (const group of groups) group.style.top = "";
  const leaf = document.getElementById("leaf");
  leaf.style.minHeight = "";
  if (!WIDE.matches) return;
  let lowest = -Infinity;
  for (const group of groups) {
    if (group.childElementCount === 0 || group.closest("[hidden], .pair")) continue;
    const top = group.getBoundingClientRect().top;
    const moved = Math.max(0, lowest + GAP - top);
    if (moved > 0) group.style.top = `${moved}px`;
    const last = group.lastElementChild.getBoundingClientRect();
    lowest = last.bottom;
  }
  const box = leaf.getBoundingClientRect();
  if (lowest > box.bottom - 40) leaf.style.minHeight = `${lowest - box.top + 60}px`;
}

let asked = false;

/** Arranges the notes at the next painting. */
export function arrangeMargin() {
  if (asked) return;
  asked = true;
  requestAnimationFrame(() => {
    asked = false;
    stack();
  });
}

/** Arranges again whenever the page changes its shape. */
export function keepMarginArranged() {
  new ResizeObserver(arrangeMargin).observe(document.getElementById("leaf"));
  WIDE.addEventListener("change", arrangeMargin);
  document.fonts?.ready.then(arrangeMargin);
}
