// Lines of somebody's working, each with its mark, and the margin for what is wrong.
import { make, displayed } from "./element.js";
import { plain, capital, inked } from "./words.js";

const SIGNS = { follows: "\u2713", "true-unexplained": "?", wrong: "\u2717", "follows-from-wrong": "\u21b3", remark: "", undecided: "\u2013" };
const LONG = 46;

/** The sections of a checked working: the verdict on the whole, and the lines. */
export function markedSections({ lines, firstWrong, end }) {
  const whole = firstWrong === null ? "No line is wrong." : `The first wrong line is line ${firstWrong}.`;
  return [
    make("section", { class: "verdict-section", "aria-label": "Verdict" }, make("p", { class: "verdict" }, make("b", {}, whole), ` ${end.text}`)),
    make("section", { "aria-label": "The lines, marked" }, make("ol", { class: "marked" }, ...lines.map((line) => marked(line, line.line === firstWrong)))),
  ];
}

function marked(line, first) {
  const notes = line.verdict === "wrong" ? slipNotes(line, first) : [];
  return make(
    "li",
    { class: [line.verdict, first ? "first" : ""].join(" ").trim(), "data-verdict": line.verdict },
    make(
      "div",
      { class: ["line", line.text.length > LONG ? "long" : ""].join(" ").trim(), "data-line": String(line.line) },
      make("span", { class: "sign", "aria-hidden": "true" }, SIGNS[line.verdict] ?? ""),
      make("span", { class: "shown" }, line.readSet ? displayed(line.readSet) : make("span", { class: line.verdict === "remark" ? "" : "typed-line" }, line.text)),
      make("span", { class: "reason" }, make("b", {}, line.words), line.reason && line.reason !== line.words ? make("span", {}, ": ", ...inked(line.reason)) : ""),
    ),
    notes.length > 0 ? make("div", { class: "beside" }, ...notes) : "",
  );
}

function slipNotes({ reason, slips, line }, first) {
  const note = (told, text) => make("div", { class: "note slip" }, make("p", {}, make("span", { class: "told" }, told), " ", ...inked(text)));
  const said = first ? [note(`Line ${line} is the first wrong one.`, reason)] : [];
  return [...said, ...slips.map((slip) => note(`${capital(plain(slip.name))}?`, slip.text))];
}
