// The answer, underlined twice as one ends a working on paper.
import { make, formula, displayed } from "./element.js";
import { inked } from "./words.js";
import { seal } from "./notes.js";

/** The section of the answer, with figures in its margin. */
export function answerSection(solution, figures) {
  const { answer } = solution;
  const words = answer.kind === "none" || answer.kind === "truth";
  const long = answer.text.length > 160 && !answer.values?.length;
  const value = make("span", { class: ["value", words ? "words" : "", long ? "long" : ""].join(" ").trim(), id: "answer" }, ...shown(answer));
  const remarks = remarksOn(answer);
  return make(
    "section",
    { class: "answer", "aria-label": "Answer" },
    make(
      "div",
      { class: "column" },
      value,
      remarks.length > 0 ? make("span", { class: "remark" }, remarks.join(" \u2002 ")) : "",
      answer.reducedSet && answer.reducedSet.text !== answer.text ? make("p", { class: "reduced" }, "In lowest powers: ", formula(answer.reducedSet)) : "",
    ),
    make("div", { class: "beside" }, ...figures, ...(solution.routes.length === 0 && answer.kind !== "none" ? [seal(solution.checks)] : [])),
  );
}

/** The answer as it is written; several values with "or" between them. */
function shown(answer) {
  if (!answer.values?.length) return [displayed(answer)];
  return answer.values.flatMap((value, at) => [at === 0 ? "" : make("span", { class: "or" }, " or "), displayed(value)]).filter((piece) => piece !== "");
}

function remarksOn(answer) {
  const remarks = [];
  if (answer.decimal) remarks.push(`\u2248 ${answer.decimal.replace("-", "\u2212")}`);
  if (answer.remark) remarks.push(answer.remark);
  return remarks;
}
