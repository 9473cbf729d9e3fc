// Taking composed problems away: as LaTeX with the key behind, as JSON, as a list, to a paper.
import { make } from "./element.js";
import { save } from "./save.js";
import { escaped } from "./latex.js";
import { Kept } from "./kept.js";
import { plain } from "./words.js";

/** The sentence at the foot of the problems. */
export function composedTaken(problems, name) {
  if (problems.length === 0) return "";
  const does = (words, what) => make("button", { type: "button", onclick: what }, words);
  const list = () => problems.map(({ polynomial, find }) => `${polynomial} ; ${find}`).join("\n");
  return make(
    "section",
    { class: "take" },
    make(
      "p",
      {},
      "Download them as ",
      does("LaTeX", () => save(`${name}.tex`, "application/x-tex", latex(problems))),
      " with the key behind, as ",
      does("a list", () => save(`${name}.txt`, "text/plain", `${list()}\n`)),
      " or as ",
      does("JSON", () => save(`${name}.json`, "application/json", JSON.stringify(problems, null, 2))),
      "; or ",
      make("a", { href: "/tray.html", onclick: () => new Kept("items").keep(list()) }, "put them on a paper"),
      ".",
    ),
  );
}

const letter = (at) => "ABCDE"[at];

function latex(problems) {
  const sheet = problems.map((problem) => `\\item ${statement(problem)}${choices(problem)}`);
  const key = problems.map(({ answer, options, key: at }) => `\\item $${answer.latex}$${options.length > 0 ? `, (${letter(at)})${options.map(comesOf(at)).join("")}` : ""}`);
  return `% \\usepackage{amsmath}\n\\begin{enumerate}\n${sheet.join("\n")}\n\\end{enumerate}\n\\newpage\n\\begin{enumerate}\n${key.join("\n")}\n\\end{enumerate}\n`;
}

const statement = ({ statementSet }) => statementSet.map(({ latex: set, text }) => (set ? `$${set}$` : escaped(text))).join("");

const choices = ({ options }) => (options.length > 0 ? `\\\\\n${options.map(({ latex: set }, at) => `(${letter(at)})~$${set}$`).join("\\qquad ")}` : "");

const comesOf = (key) => ({ slips }, at) => (at === key ? "" : `; (${letter(at)}) comes of ${escaped(slips.map(plain).join(", "))}`);
