// One line of a list as it was worked: the statement and its answer, or the line with its mistake.
import { make, formula } from "./element.js";
import { Blank } from "./blank.js";
import { capital, plain, inked, sentenceSet, costOf } from "./words.js";

/** The line; `mended` hears of a bad line's new text. */
export function workedLine(found, mended) {
  return make(
    "li",
    { "data-line": found.line },
    make("div", { class: `entry-line${found.error ? " bad" : ""}` }, make("span", { class: "number" }, `${found.line}`), found.error ? bad(found, mended) : good(found)),
    make("div", { class: "beside" }, ...(found.record?.warnings ?? []).filter(({ code }) => code !== "read-as").map(warning)),
  );
}

function good({ query, statementSet, answer, record }) {
  const [route] = record.routes;
  return make(
    "div",
    {},
    make("p", {}, ...sentenceSet(statementSet, record.statement)),
    make(
      "p",
      { class: "outcome" },
      make("span", { class: "value" }, ...shown(answer)),
      route ? make("span", { class: "way" }, ...inked(route.title), `, ${costOf(route.cost)}`) : "",
      make("span", { class: "does" }, make("a", { href: `/?${query}` }, "open it")),
    ),
  );
}

function shown(answer) {
  if (!answer.values?.length) return [answer.mathml ? formula(answer) : make("span", {}, ...inked(answer.text))];
  return answer.values.flatMap((value, at) => [...(at === 0 ? [] : [make("i", {}, " or ")]), formula(value)]);
}

function bad({ text, error }, mended) {
  const blank = new Blank("line", "the line, to be mended", text, {
    changed: () => {},
    committed: ({ text: now }) => now !== text && mended(now),
    pasted: () => false,
  });
  blank.mark({ ...error, at: placeIn(text, error) });
  const expected = error.expected && !error.text.includes(error.expected) ? ` Expected: ${error.expected}.` : "";
  const mend = wholeMend(text, error);
  return make(
    "div",
    {},
    blank.element,
    make("p", { class: "refusal" }, error.text, expected, ...(mend ? [" Perhaps ", make("button", { type: "button", onclick: () => mended(mend) }, mend), "?"] : [])),
  );
}

/** Where in the line the place of a refusal is, which counts within its own part of the line. */
function placeIn(text, { input = "", at = 0 }) {
  const from = input.trim() === "" ? -1 : text.indexOf(input.trim());
  return from < 0 ? 0 : Array.from(text.slice(0, from)).length + at;
}

/** The whole line with the part mended that was refused. */
function wholeMend(text, { input = "", mend }) {
  if (!mend || input.trim() === "" || !text.includes(input.trim())) return undefined;
  return text.replace(input.trim(), () => mend);
}

function warning({ code, text }) {
  return make("div", { class: "note warning" }, make("p", {}, make("span", { class: "told" }, `${capital(plain(code))}.`), " ", ...inked(text)));
}
