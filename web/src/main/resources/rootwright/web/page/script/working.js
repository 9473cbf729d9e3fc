// The page of a book below the statement: answer, routes, declined routes, second opinion.
import { make, counted } from "./element.js";
import { arrangeMargin } from "./margin.js";
import { nameRoots } from "./light.js";
import { notesOf, warningNotes } from "./notes.js";
import { answerSection } from "./answer.js";
import { routeSection, othersSection } from "./route.js";
import { planeBeside, curveBeside, figuresBelow } from "./figures.js";
import { choicesSection } from "./choices.js";
import { takeSection } from "./take.js";
import { plain, inked, sentenceSet } from "./words.js";

/** Shows a solution, in place of what was shown before. */
export function showWorking(solution, typed, profile) {
  const place = document.getElementById("working");
  document.body.classList.remove("comparing");
  const [first, ...others] = solution.routes;
  const notes = notesOf(solution, first);
  place.replaceChildren(
    ...[
      statementSection(solution),
      answerSection(solution, planeBeside(solution)),
      figuresBelow(solution),
      first && routeSection(first, 1, notes),
      others.length > 0 && othersSection(others, solution),
      declinedSection(solution.declined),
      choicesSection(solution),
      opinionSection(solution),
      profile.section(),
      takeSection(solution, typed),
    ].filter(Boolean),
  );
  place.removeAttribute("aria-busy");
  document.getElementById("beside-statement").replaceChildren(...warningNotes(solution));
  nameRoots(document.getElementById("leaf"), solution.roots);
  arrangeMargin();
}

/** Takes the working away, since the statement no longer asks for it. */
export function clearWorking() {
  document.getElementById("working").replaceChildren();
  document.getElementById("working").removeAttribute("aria-busy");
  document.getElementById("beside-statement").replaceChildren();
  arrangeMargin();
}

/** Shows that the working belongs to what stood here before. */
export function fadeWorking() {
  const place = document.getElementById("working");
  if (place.childElementCount > 0) place.setAttribute("aria-busy", "true");
}

/** Shows that a hard ask is being worked, and how to stop it. */
export function showWaiting(told, stop) {
  document.getElementById("working").replaceChildren(
    make("section", {}, make("p", { class: "waiting" }, told || "Working …", " ", make("button", { type: "button", onclick: stop }, "Stop"))),
  );
}

/** The statement in words, as a sheet would print it. */
function statementSection({ statement, statementSet }) {
  return make("section", { class: "worded", "aria-label": "The statement in words" }, make("p", {}, make("b", {}, "Problem."), " ", ...sentenceSet(statementSet, statement)));
}

/** Routes that do not apply, those with the same reason on one line. */
function declinedSection(declined) {
  if (declined.length === 0) return undefined;
  const reasons = new Map();
  for (const { title, why } of declined) reasons.set(why, [...(reasons.get(why) ?? []), title]);
  return make(
    "section",
    { class: "declined" },
    make(
      "details",
      { class: "column", open: matchMedia("(min-width: 62.01rem)").matches },
      make("summary", {}, `Not by ${counted(declined.length, "other route")}`),
      make("ul", {}, ...[...reasons].map(([why, titles]) => make("li", {}, make("b", {}, ...inked(titles.join("; "))), " \u2014 ", ...inked(why)))),
    ),
  );
}

function opinionSection(solution) {
  const { checks, silent } = solution;
  const { method, agrees, digits } = checks.second;
  const to = digits === undefined ? "" : `, to ${counted(digits, "digit")}`;
  const nothing = solution.answer.kind === "none";
  const verdict = nothing ? "Second opinion:" : agrees ? "Second opinion agrees:" : "Second opinion does not agree:";
  const apart = nothing ? "" : " It shares nothing with the exact normal form that gave the answer.";
  const paragraphs = [make("p", {}, make("b", agrees ? {} : { class: "against" }, verdict), ` ${method}${to}.${apart}`)];
  if (silent.length > 0) {
    const list = silent.map((slip) => `${plain(slip.name)} (${slip.why.replace(/\.$/, "")})`).join("; ");
    paragraphs.push(make("p", {}, `Slips that give the right answer here and so do not show: ${list}.`));
  }
  return make("section", { class: "opinion" }, make("div", { class: "column" }, ...paragraphs), make("div", { class: "beside" }, ...curveBeside(solution)));
}
