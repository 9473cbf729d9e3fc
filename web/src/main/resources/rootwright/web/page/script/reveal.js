// Showing a route to a group: one line at a time, the space bar brings the next.
import { arrangeMargin } from "./margin.js";

/** Hides the answer and the lines of a route, and brings them back one by one. */
export function revealLines(section) {
  const back = document.activeElement;
  const hidden = [...section.querySelectorAll(".lines > li")];
  const answer = document.querySelector(".working > .answer");
  const all = answer ? [...hidden, answer] : hidden;
  const others = [...document.querySelectorAll(".working > section")].filter((other) => other !== answer && !other.contains(section));
  const herald = document.getElementById("herald");
  let shown = 0;

  const draw = () => {
    all.forEach((line, at) => line.classList.toggle("yet", at >= shown));
    herald.textContent = shown === 0 ? "Nothing shown yet. Space shows the first line." : `${shown} of ${all.length} shown.`;
  };
  const hear = (event) => {
    if (event.target.closest?.("input, textarea")) return;
    if ([" ", "ArrowRight", "PageDown"].includes(event.key)) shown = Math.min(all.length, shown + 1);
    else if (["Backspace", "ArrowLeft", "PageUp"].includes(event.key)) shown = Math.max(0, shown - 1);
    else if (event.key === "Escape") return end();
    else return;
    event.preventDefault();
    draw();
  };
  const end = () => {
    document.removeEventListener("keydown", hear, true);
    document.body.classList.remove("showing");
    all.forEach((line) => line.classList.remove("yet"));
    others.forEach((other) => other.classList.remove("aside-while-showing"));
    button.textContent = "Show it line by line";
    keys.textContent = " with the space bar";
    button.removeEventListener("click", stop, true);
    herald.textContent = "";
    back?.focus();
    arrangeMargin();
  };
  const button = section.querySelector(".reveal");
  const keys = section.querySelector(".keys");
  const stop = (event) => {
    event.stopImmediatePropagation();
    end();
  };
  button.textContent = "End showing";
  keys.textContent = ". Space brings the next line, Backspace takes it back, Escape ends.";
  button.addEventListener("click", stop, true);
  document.body.classList.add("showing");
  others.forEach((other) => other.classList.add("aside-while-showing"));
  document.addEventListener("keydown", hear, true);
  button.blur();
  section.setAttribute("tabindex", "-1");
  section.focus();
  draw();
  arrangeMargin();
}
