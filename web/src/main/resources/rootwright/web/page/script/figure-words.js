// Numbers in captions and labels: rounded, with a real minus.

/** A number to three significant digits, or whole. */
export function short(number) {
  const value = Number(number);
  const text = Number.isInteger(value) && Math.abs(value) < 1e6 ? String(value) : Math.abs(value) >= 1e6 ? value.toExponential(2) : String(Number(value.toPrecision(3)));
  return text.replace("-", "\u2212");
}
