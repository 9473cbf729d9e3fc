// Words within LaTeX source.

/** Words of a statement in LaTeX. */
export function escaped(text) {
  return text.replace(/[\\{}$&#%_^~]/g, (sign) => ({ "\\": "\\textbackslash{}", "^": "\\^{}", "~": "\\~{}" })[sign] ?? `\\${sign}`);
}
