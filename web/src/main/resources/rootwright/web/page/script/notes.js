// The notes of the margin, and the line each belongs to.
import { make, formula, counted } from "./element.js";
import { plain, capital, inked } from "./words.js";

/**
 * Notes of a route: `at[i]` beside line i, `head` beside the heading. A slip stands beside the first
 * line with the idea it lurks at; if the route does without that idea, beside the last line.
 */
export function notesOf(solution, route) {
  const steps = route?.steps ?? [];
  const at = steps.map(() => []);
  const head = (route?.conditions ?? []).map((text) => note("condition", "Needed and true:", text));
  const last = at[at.length - 1];
  last?.push(seal(solution.checks));
  for (const slips of grouped(solution.slips)) {
    const line = steps.findIndex((step) => step.idea === slips[0].spot);
    (at[line] ?? last ?? head).push(slipNote(slips));
  }
  return { at, head };
}

/** The second opinion, beside the line it is about. */
export function seal({ second }) {
  const digits = second.digits === undefined ? "" : `, to ${counted(second.digits, "digit")}`;
  return note("seal", second.agrees ? "Checked twice:" : "Not confirmed:", `exact normal form, and ${second.method}${digits}.`);
}

/** Slips by their name: the same wrong thought may lead to several values. */
function grouped(slips) {
  const groups = new Map();
  for (const slip of slips) groups.set(slip.name, [...(groups.get(slip.name) ?? []), slip]);
  return [...groups.values()];
}

/** Warnings and conditions of the problem, beside the statement. */
export function warningNotes(solution) {
  return [
    ...solution.warnings.map((warning) => note("warning", `${capital(plain(warning.code))}.`, warning.text)),
    ...solution.reading.map((text) => note("reading", "Read:", text)),
    ...solution.conditions.map((text) => note("condition", "Needed and true:", text)),
  ];
}

function slipNote(slips) {
  const values = slips.flatMap(({ valueSet }, at) => [["", at === slips.length - 1 ? " or " : ", "][Math.min(at, 1)], formula(valueSet)]);
  return make(
    "div",
    { class: "note slip" },
    make("p", {}, make("span", { class: "told" }, `${capital(plain(slips[0].name))}.`), " ", ...inked(slips[0].text), " Gives ", ...values, "."),
  );
}

function note(kind, told, text) {
  return make("div", { class: `note ${kind}` }, make("p", {}, make("span", { class: "told" }, told), " ", ...inked(text)));
}
