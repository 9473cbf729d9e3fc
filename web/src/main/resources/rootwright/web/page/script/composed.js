// One composed problem: its statement, choices with their slips, hints, and what can be done with it.
import { make, formula } from "./element.js";
import { plain, capital, inked, sentenceSet } from "./words.js";
import { optionList } from "./choices.js";
import * as server from "./server.js";

/** The section of a problem; `act` has `another`, `numbers`, `harder` and `told`. */
export function composedSection(problem, { number, seed }, act) {
  const section = make("section", { class: "composed", "data-polynomial": problem.polynomial, "data-find": problem.find });
  const does = (words, what) => make("button", { type: "button", onclick: () => what(section) }, words);
  section.append(
    make(
      "div",
      { class: "column" },
      make("h2", {}, `${number}`, make("span", {}, problem.level?.text ?? plain(problem.kind))),
      make("p", { class: "told-problem" }, ...sentenceSet(problem.statementSet, problem.statement)),
      problem.options.length > 0
        ? optionList(problem)
        : make("p", { class: "key-alone" }, "Key: ", formula(problem.answer)),
      hints(problem.hints),
    ),
    make("div", { class: "beside" }, ...notes(problem, seed)),
    make(
      "p",
      { class: "do" },
      make("a", { href: `/?${new URLSearchParams({ polynomial: problem.polynomial, find: problem.find })}` }, "work it"),
      does("one more like this", act.another),
      does("other numbers", act.numbers),
      does("harder", act.harder),
      does("keep on the shelf", () => keep(problem, act.told)),
      discard(section),
    ),
  );
  return section;
}

function hints(all) {
  if (all.length === 0) return "";
  const many = ["", "One hint", "Two hints", "Three hints", "Four hints", "Five hints"][all.length] ?? `${all.length} hints`;
  return make("details", { class: "hints" }, make("summary", {}, many), make("ol", {}, ...all.map((hint) => make("li", {}, ...inked(hint)))));
}

function notes({ good, settled = [], fewerOptions, adds = [] }, seed) {
  const note = (told, text) => make("div", { class: "note" }, make("p", {}, make("span", { class: "told" }, told), " ", ...inked(text)));
  return [
    ...(adds.length > 0 ? [note("It adds:", `${adds.join(", ")}.`)] : []),
    ...(good.length > 0 ? [note("Why it is good:", `${good.join("; ")}.`)] : []),
    ...settled.map(({ condition, standing, why }) => note(`${capital(condition)}:`, `${standing}, ${why}.`)),
    ...(fewerOptions ? [note("Fewer choices:", fewerOptions)] : []),
    note("Seed:", `${seed}.`),
  ];
}

async function keep(problem, told) {
  try {
    const { kept, already } = await server.shelve({ polynomial: problem.polynomial, find: problem.find });
    told(kept ? `On the shelf: ${problem.statement}` : `The shelf has it already: ${already}`);
  } catch (refused) {
    told(capital(refused.message));
  }
}

/** Puts a problem out of sight; it can be taken back. */
function discard(section) {
  const button = make("button", { type: "button" }, "discard");
  button.addEventListener("click", () => {
    const gone = section.classList.toggle("discarded");
    button.textContent = gone ? "take it back" : "discard";
    for (const other of section.querySelectorAll(".do > :not(:last-child)")) other.hidden = gone;
  });
  return button;
}
