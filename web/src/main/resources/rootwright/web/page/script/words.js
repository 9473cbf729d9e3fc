// Small matters of wording.
import { make, formula } from "./element.js";

const SPELLED = { "p-k-undivided": "P(k) undivided", "p0-is-1": "S\u2080 taken for 1" };

/** A hyphenated name as words. */
export const plain = (name) => SPELLED[name] ?? name.replaceAll("-", " ").replace(/\bnewton\b/, "Newton");

/** With a capital first letter. */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** The cost of a route as a person says it. */
export function costOf({ lines, ideas }) {
  const count = lines === 1 ? "1 line" : `${lines} lines`;
  const few = ["nothing new", "one idea", "two ideas", "three ideas", "four ideas"][ideas] ?? `${ideas} ideas`;
  return `${count}, ${few}`;
}

// A letter that stands alone is mathematics, but for the articles "a" and "A"; so are a few products.
const ALONE = "[b-zB-HJ-Z]|rst?|st|tr|rt|tu|xyz?|yz|zx|abc?|bc|ca|uv|vw";
const ARTICLE = "[aA](?=[\\u2080-\\u209c\\u00b2\\u00b3\\u2070-\\u207f\\u2032(=]| [=+\\u2212/\\u2260<>] )";
const SIGN = new RegExp(`(?<![\\p{L}_'\\u2019])(?:(${ALONE})(?![\\p{Ll}\\p{Lu}'\\u2019\\u2018])(?:_(\\d+|[a-z]|\\([^()]*\\)|\\{[^{}]*\\}))?|(${ARTICLE}))`, "gu");

/** Plain words in which single letters, also with an index as in e_1, are set as in a formula. */
export function inked(text) {
  const nodes = [];
  let from = 0;
  for (const sign of text.matchAll(SIGN)) {
    if (sign.index > from) nodes.push(text.slice(from, sign.index));
    nodes.push(make("i", {}, sign[1] ?? sign[3]));
    if (sign[2]) nodes.push(make("sub", {}, sign[2].replace(/^[({](.*)[)}]$/, "$1")));
    from = sign.index + sign[0].length;
  }
  if (from < text.length) nodes.push(text.slice(from));
  return nodes;
}

/** A sentence of the server with its formulas set, each with its stop; plain words if it has no pieces. */
export function sentenceSet(pieces, text) {
  if (!pieces?.length) return inked(text);
  return pieces.flatMap((piece, at) => {
    const stop = /^[.,;:?!]/.exec(pieces[at + 1]?.text ?? "");
    if (piece.mathml) return [stop ? make("span", { class: "unbroken" }, formula(piece), stop[0]) : formula(piece)];
    return inked(pieces[at - 1]?.mathml ? piece.text.replace(/^[.,;:?!]/, "") : piece.text);
  });
}
