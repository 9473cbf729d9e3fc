// Taking the working away: copy, download, print.
import { make } from "./element.js";
import { save, copied } from "./save.js";
import { escaped } from "./latex.js";
import * as server from "./server.js";

/** The line of words at the foot of the page. */
export function takeSection(solution, typed) {
  const told = make("span", { role: "status" });
  const copy = (name, text) =>
    make("button", { type: "button", "data-copy": name, onclick: async () => {
      told.textContent = (await copied(text())) ? ` ${name} copied.` : " The browser would not copy.";
    } }, name);
  const download = (name, ending, type, text) =>
    make("button", { type: "button", onclick: () => save(`problem.${ending}`, type, text()) }, name);
  const unbroken = (...pieces) => make("span", { class: "unbroken" }, ...pieces);
  return make(
    "section",
    { class: "take" },
    make(
      "p",
      {},
      "Copy as ",
      unbroken(copy("LaTeX", () => latex(solution)), ","),
      " ",
      copy("MathML", () => mathml(solution)),
      " or ",
      unbroken(copy("plain text", () => plainText(solution)), ";"),
      " download as ",
      unbroken(download("LaTeX", "tex", "application/x-tex", () => latex(solution)), ","),
      " ",
      download("plain text", "txt", "text/plain", () => plainText(solution)),
      " or ",
      unbroken(download("JSON", "json", "application/json", () => JSON.stringify(solution, null, 2)), ";"),
      " ",
      unbroken(make("button", { type: "button", onclick: () => print() }, "print"), ";"),
      " or ",
      make("button", { type: "button", class: "shelve", onclick: () => shelve(typed, told) }, "keep it on the shelf"),
      ". ",
      make("a", { href: `/check.html?${new URLSearchParams(typed)}` }, "Check somebody's working"),
      " of it.",
      told,
    ),
  );
}

async function shelve(typed, told) {
  try {
    const { kept, already } = await server.shelve(typed);
    told.textContent = kept ? " It is on the shelf." : ` The shelf has it already: ${already}`;
  } catch (refused) {
    told.textContent = ` ${refused.message}`;
  }
}

function latex(solution) {
  const [route] = solution.routes;
  const lines = (route?.steps ?? []).map((step) => `  & ${step.latex} && \\text{${escaped(step.reason)}} \\\\`);
  return [
    escaped(solution.statement),
    "",
    ...(lines.length > 0 ? ["\\begin{align*}", ...lines, "\\end{align*}", ""] : []),
    `\\[ \\underline{\\underline{${solution.answer.latex}}} \\]`,
    "",
  ].join("\n");
}

function mathml(solution) {
  const [route] = solution.routes;
  return [...(route?.steps ?? []), solution.answer].map((written) => written.mathml).filter(Boolean).join("\n");
}

function plainText(solution) {
  const [route] = solution.routes;
  const lines = (route?.steps ?? []).map((step, at) => `${String(at + 1).padStart(2)}  ${step.text}    [${step.reason}]`);
  return [solution.statement, "", ...lines, "", `Answer: ${solution.answer.text}`, ""].join("\n");
}
