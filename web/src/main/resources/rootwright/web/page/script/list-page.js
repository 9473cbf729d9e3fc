// A whole list: every line is worked, one after another; a bad line is named and mended in its place.
import { workedLine } from "./worked-line.js";
import { listTaken } from "./list-taken.js";
import { numberLines } from "./numbered.js";
import { Kept } from "./kept.js";
import { arrangeMargin, keepMarginArranged } from "./margin.js";
import { make } from "./element.js";
import * as server from "./server.js";

const EXAMPLE = `# Thursday's circle
3x^3 - 7x^2 + 2x - 5 ; Σ 1/(r-3)
x^3 - 5x + 1 ; r^2 s + s^2 t + t^2 r
x^4 - 2x^3 + 5x^2 - x + 3 ; Π (1 + r^2)
x^3 - 9x^2 + kx - 24 ; k if r = 2s`;

const kept = new Kept("list");
const place = document.getElementById("working");
const lines = document.getElementById("lines");
const progress = document.getElementById("progress");
const refusal = document.getElementById("refusal");
const stop = document.getElementById("stop");
const file = document.getElementById("file");
const number = numberLines(lines, document.getElementById("numbers"));
let running;

/** Works lines and hands every finding over as soon as it is there. */
async function work(text, from, found) {
  running?.abort();
  const mine = (running = new AbortController());
  refusal.textContent = "";
  stop.hidden = false;
  try {
    return await server.workList({ lines: text, from }, mine.signal, { progress: (state) => (progress.textContent = `${state.text}.`), found });
  } catch (refused) {
    refusal.textContent = refused.name === "AbortError" ? "Stopped. What was worked by then is below." : refused.message;
    return undefined;
  } finally {
    if (mine === running) {
      stop.hidden = true;
      progress.textContent = "";
    }
  }
}

async function workAll() {
  const records = new Map();
  const list = make("ol", { class: "worked", "aria-label": "The list, worked" });
  const foot = make("section", { class: "take" });
  place.replaceChildren(make("section", {}, list), foot);
  const show = (found) => {
    const fresh = workedLine(found, (text) => again(found.line, text));
    const old = list.querySelector(`[data-line="${found.line}"]`);
    if (old) old.replaceWith(fresh);
    else list.append(fresh);
    records.set(found.line, found);
    arrangeMargin();
    return fresh;
  };
  const again = async (line, text) => {
    const all = lines.value.split("\n");
    all[line - 1] = text;
    lines.value = all.join("\n");
    kept.keep(lines.value);
    number();
    await work(text, line, (found) => show(found).querySelector("input, a")?.focus());
    foot.replaceChildren(...listTaken([...records.values()]));
  };
  const ended = await work(lines.value, 1, show);
  if (ended && records.size === 0) refusal.textContent = "There is no problem on these lines; write polynomial ; ask.";
  else if (ended) progress.textContent = told(ended);
  foot.replaceChildren(...(records.size > 0 ? listTaken([...records.values()]) : []));
  arrangeMargin();
}

function told({ worked, refused }) {
  const bad = refused === 0 ? "" : refused === 1 ? "; one line could not be worked and is marked where it stands" : `; ${refused} lines could not be worked and are marked where they stand`;
  return `${worked === 1 ? "One problem is" : `${worked} problems are`} worked${bad}.`;
}

async function take(chosen) {
  if (!chosen) return;
  lines.value = (await chosen.text()).replace(/^\uFEFF/, "");
  kept.keep(lines.value);
  number();
  await workAll();
}

lines.value = kept.text ?? EXAMPLE;
number();
keepMarginArranged();
lines.addEventListener("input", () => kept.keep(lines.value));
lines.addEventListener("keydown", (event) => {
  if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) workAll();
});
document.getElementById("order").addEventListener("submit", (event) => {
  event.preventDefault();
  workAll();
});
stop.addEventListener("click", () => running?.abort());
document.getElementById("choose").addEventListener("click", () => file.click());
file.addEventListener("change", () => take(file.files[0]));
document.addEventListener("dragover", (event) => {
  event.preventDefault();
  document.body.classList.add("dropping");
});
document.addEventListener("dragleave", () => document.body.classList.remove("dropping"));
document.addEventListener("drop", (event) => {
  event.preventDefault();
  document.body.classList.remove("dropping");
  take(event.dataTransfer.files[0]);
});
