// Notes stand beside the line they belong to, and give way downwards to one another.

const WIDE = matchMedia("(min-width: 62.01rem)");
const GAP = 14;

function stack() {
  const groups = [...document.querySelectorAll(".leaf .beside")];
  for (const group of groups) group.style.top = "";
  const pair = document.querySelector(".pair");
  if (pair) pair.style.marginTop = "";
  const leaf = document.getElementById("leaf");
  leaf.style.minHeight = "";
  if (!WIDE.matches) return;
  let lowest = -Infinity;
  let passed = false;
  for (const group of groups) {
    if (group.childElementCount === 0 || group.offsetParent === null || group.closest(".pair")) continue;
    if (pair && !passed && pair.compareDocumentPosition(group) & Node.DOCUMENT_POSITION_FOLLOWING) {
      passed = true;
      clear(pair, lowest);
    }
    const top = group.getBoundingClientRect().top;
    const moved = Math.max(0, lowest + GAP - top);
    if (moved > 0) group.style.top = `${moved}px`;
    const last = group.lastElementChild.getBoundingClientRect();
    lowest = last.bottom;
  }
  const box = leaf.getBoundingClientRect();
  if (lowest > box.bottom - 40) leaf.style.minHeight = `${lowest - box.top + 60}px`;
}

/** A line wider than its place can be scrolled, so the keyboard must be able to go there. */
function reachWide() {
  for (const line of document.querySelectorAll(".shown, .value")) {
    if (line.scrollWidth > line.clientWidth + 1) line.setAttribute("tabindex", "0");
    else line.removeAttribute("tabindex");
  }
}

/** Two routes side by side use the margin too, so they begin below its notes. */
function clear(pair, lowest) {
  const covered = lowest + GAP - pair.getBoundingClientRect().top;
  if (covered > 0) pair.style.marginTop = `calc(1.5rem + ${covered}px)`;
}

let asked = false;

/** Arranges the notes at the next painting. */
export function arrangeMargin() {
  if (asked) return;
  asked = true;
  requestAnimationFrame(() => {
    asked = false;
    stack();
    reachWide();
  });
}

/** Arranges again whenever the page changes its shape. */
export function keepMarginArranged() {
  new ResizeObserver(arrangeMargin).observe(document.getElementById("leaf"));
  WIDE.addEventListener("change", arrangeMargin);
  document.fonts?.ready.then(arrangeMargin);
}
