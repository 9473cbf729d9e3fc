// Taking a worked list away: on the shelf, to a paper, or as files.
import { make, counted } from "./element.js";
import { escaped } from "./latex.js";
import { save } from "./save.js";
import { Kept } from "./kept.js";
import * as server from "./server.js";

/** The sentence at the foot of a worked list. */
export function listTaken(found) {
  const good = found.filter(({ error }) => !error).sort((one, other) => one.line - other.line);
  if (good.length === 0) return [];
  const told = make("span", { role: "status" });
  const does = (words, what) => make("button", { type: "button", onclick: what }, words);
  return [
    make(
      "p",
      {},
      does("Keep them all on the shelf", async () => (told.textContent = await keepAll(good))),
      "; ",
      make("a", { href: "/tray.html", onclick: () => new Kept("items").keep(good.map(({ text }) => text).join("\n")) }, "put them on a paper"),
      "; download the answers as ",
      does("plain text", () => save("answers.txt", "text/plain", good.map(written).join("\n"))),
      ", as ",
      does("JSON lines", () => save("answers.jsonl", "application/json", records(found))),
      " or as ",
      does("LaTeX", () => save("answers.tex", "application/x-tex", latex(good))),
      ". ",
      told,
    ),
  ];
}

async function keepAll(good) {
  let fresh = 0;
  let there = 0;
  let not = 0;
  for (const { query } of good) {
    try {
      const { kept } = await server.shelve(Object.fromEntries(new URLSearchParams(query)));
      if (kept) fresh++;
      else there++;
    } catch {
      not++;
    }
  }
  const parts = [`${counted(fresh, "problem is", "problems are")} on the shelf now`];
  if (there > 0) parts.push(`${there} stood there already, perhaps in other clothes`);
  if (not > 0) parts.push(`${not} cannot be kept there, since they are not about one polynomial with numbers`);
  return `${parts.join("; ")}.`;
}

const written = ({ line, record }) => `${line}. ${record.statement}\n    ${record.answer.text}\n`;

/** One object a line, as a script gets them; lines that were refused among them. */
const records = (found) => found.map(({ line, record, error }) => `${JSON.stringify({ ...(record ?? { error }), line })}\n`).join("");

function latex(good) {
  const items = good.map(({ statementSet, answer, record }) => `  \\item ${statementSet.map(({ latex: set, text }) => (set ? `$${set}$` : escaped(text))).join("")}\\\\\n    \\textbf{Answer.} ${answer.latex ? `$${answer.latex}$` : escaped(record.answer.text)}`);
  return `% \\usepackage{amsmath,enumitem}\n\\begin{enumerate}\n${items.join("\n")}\n\\end{enumerate}\n`;
}
