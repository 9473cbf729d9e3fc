// Small matters of wording.

/** A hyphenated name as words. */
export const plain = (name) => name.replaceAll("-", " ");

/** With a capital first letter. */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** The cost of a route as a person says it. */
export function costOf({ lines, ideas }) {
  const count = lines === 1 ? "1 line" : `${lines} lines`;
  const few = ["nothing new", "one idea", "two ideas", "three ideas", "four ideas"][ideas] ?? `${ideas} ideas`;
  return `${count}, ${few}`;
}
