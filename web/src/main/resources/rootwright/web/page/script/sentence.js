// A sentence with blanks, and the ask in notation that it stands for.

const GAP = /\{([a-z]+)\}/g;

/** The parts of the sentence: {text}, {roots: "roots" or "root"} or {blank: name}. */
export function partsOf(words) {
  const parts = [];
  let from = 0;
  for (const gap of words.matchAll(GAP)) {
    if (gap.index > from) parts.push({ text: words.slice(from, gap.index) });
    parts.push(gap[1] === "roots" || gap[1] === "root" ? { roots: gap[1] } : { blank: gap[1] });
    from = gap.index + gap[0].length;
  }
  if (from < words.length) parts.push({ text: words.slice(from) });
  return parts;
}

/** The polynomial and the ask that the filled blanks make. */
export function statementOf(sentence, blanks) {
  const put = (template) => template.replace(GAP, (_, name) => (blanks[name] ?? "").trim());
  return { polynomial: put(sentence.polynomial), find: put(sentence.find) };
}

/** The blanks that give this statement, or nothing if the sentence cannot say it. */
export function blanksFor(sentence, polynomial, find) {
  const asked = matched(sentence.find, find);
  const given = matched(sentence.polynomial, polynomial);
  return asked && given ? { ...given, ...asked } : undefined;
}

/** What stands in the blanks of a template if it makes this text. */
function matched(template, text) {
  const names = [];
  const pattern = template
    .split(GAP)
    .map((piece, at) => {
      if (at % 2 === 0) return piece.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/\s+/g, "\\s*");
      names.push(piece);
      return "(.+)";
    })
    .join("");
  const found = new RegExp(`^\\s*${pattern}\\s*$`, "is").exec(text);
  return found ? Object.fromEntries(names.map((name, at) => [name, found[at + 1].trim()])) : undefined;
}

/** The sentence that says a statement: the most particular one that can. */
export function sentenceFor(sentences, polynomial, find) {
  const fixed = ({ find, polynomial, only }) => (find + polynomial).replace(GAP, "").length + (only ? 0.5 : 0);
  for (const sentence of [...sentences].sort((one, other) => fixed(other) - fixed(one))) {
    const blanks = new RegExp(sentence.only, "i").test(sentence.polynomial === "" ? find : polynomial) && blanksFor(sentence, polynomial, find);
    if (blanks) return { sentence, blanks };
  }
  return undefined;
}
