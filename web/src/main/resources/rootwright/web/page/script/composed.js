// One composed problem: its statement, choices with their slips, hints, and what can be done with it.
import { make, formula } from "./element.js";
import { plain, capital } from "./words.js";
import * as server from "./server.js";

/** The section of a problem; `act` has `sibling`, `harder` and `told`. */
export function composedSection(problem, number, act) {
  const section = make("section", { class: "composed" });
  const does = (words, what) => make("button", { type: "button", onclick: () => what(section) }, words);
  section.append(
    make(
      "div",
      { class: "column" },
      make("h2", {}, `${number}`, problem.level ? make("span", {}, problem.level.text) : ""),
      make("p", { class: "told-problem" }, problem.statement),
      make("ol", { class: "options" }, ...problem.options.map((option, at) => choice(option, at === problem.key))),
      problem.hints.length > 0 ? make("details", { class: "hints" }, make("summary", {}, "Five hints"), make("ol", {}, ...problem.hints.map((hint) => make("li", {}, hint)))) : "",
    ),
    make("div", { class: "beside" }, ...reasons(problem)),
    make(
      "p",
      { class: "do" },
      make("a", { href: `/?${new URLSearchParams({ polynomial: problem.polynomial, find: problem.find })}` }, "work it"),
      does("one more like this", act.sibling),
      does("harder", act.harder),
      does("keep on the shelf", () => keep(problem, act.told)),
      discard(section),
    ),
  );
  return section;
}

function choice(option, isKey) {
  const why = isKey ? "the key" : option.slips.map(plain).join(", or ");
  return make("li", { class: isKey ? "key" : "" }, formula(option), make("span", { class: "why" }, why));
}

function reasons(problem) {
  if (problem.good.length === 0) return [];
  return [make("div", { class: "note" }, make("p", {}, make("span", { class: "told" }, "Why it is good: "), `${problem.good.join("; ")}.`))];
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
