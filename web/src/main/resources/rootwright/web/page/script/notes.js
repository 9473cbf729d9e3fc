// The notes of the margin, and the line each belongs to.
import { make, formula } from "./element.js";
import { plain, capital } from "./words.js";

/** Notes of a route: `at[i]` beside line i, `head` beside the heading. */
export function notesOf(solution, route) {
  const at = (route?.steps ?? []).map(() => []);
  const head = (route?.conditions ?? []).map((text) => note("condition", "Needed and true", text));
  for (const slip of solution.slips) {
    const line = (route?.steps ?? []).findIndex((step) => step.idea === slip.spot);
    (line >= 0 ? at[line] : head).push(slipNote(slip));
  }
  return { at, head };
}

/** Warnings and conditions of the problem, beside the statement. */
export function warningNotes(solution) {
  return [
    ...solution.warnings.map((warning) => note("warning", capital(plain(warning.code)), warning.text)),
    ...solution.reading.map((text) => note("reading", "Read", text)),
    ...solution.conditions.map((text) => note("condition", "Needed and true", text)),
  ];
}

function slipNote(slip) {
  return make(
    "div",
    { class: "note slip" },
    make("p", {}, make("span", { class: "told" }, `${capital(plain(slip.name))} `), slip.text, " Gives ", formula(slip.valueSet), "."),
  );
}

function note(kind, told, text) {
  return make("div", { class: `note ${kind}` }, make("p", {}, make("span", { class: "told" }, `${told} `), capital(text)));
}
