// The orders of this house as the server writes them: one wish a line, texts in quotes, lists in brackets.

/** {name: text or list} of such an order. */
export function readYaml(text) {
  const lines = text.split("\n").filter((line) => line.includes(": ") && !line.startsWith("#"));
  return Object.fromEntries(
    lines.map((line) => {
      const value = line.slice(line.indexOf(": ") + 2);
      return [line.slice(0, line.indexOf(": ")), /^["[]/.test(value) ? JSON.parse(value) : value];
    }),
  );
}
