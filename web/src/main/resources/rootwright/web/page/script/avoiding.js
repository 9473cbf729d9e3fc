// Problems that an order stays away from besides those of the shelf.
import { Kept } from "./kept.js";
import { numberLines } from "./numbered.js";
import { counted } from "./element.js";

const kept = new Kept("avoided");
const button = document.getElementById("avoided");
const place = document.getElementById("avoiding");
const text = document.getElementById("avoid");

/** Every line as a statement; remarks and lines without an ask say nothing. */
export function avoided() {
  return text.value
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line.includes(";") && !line.startsWith("#"))
    .map((line) => ({ polynomial: line.slice(0, line.indexOf(";")).trim(), find: line.slice(line.indexOf(";") + 1).trim() }));
}

/** Lets the word in the sentence open the list. */
export function layAvoiding() {
  const say = () => (button.textContent = avoided().length === 0 ? "nothing else" : counted(avoided().length, "other problem"));
  const open = (opened) => {
    place.hidden = !opened;
    button.setAttribute("aria-expanded", String(opened));
    if (opened) text.focus();
    else button.focus();
  };
  text.value = kept.text ?? "";
  const number = numberLines(text, place.querySelector("pre"));
  number();
  text.addEventListener("input", () => {
    kept.keep(text.value);
    say();
  });
  place.addEventListener("keydown", (event) => {
    if (event.key === "Escape") open(false);
  });
  button.addEventListener("click", () => open(place.hidden));
  document.getElementById("avoiding-done").addEventListener("click", () => open(false));
  say();
}
