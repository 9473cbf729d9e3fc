// The numbers of the lines beside a text that is written line by line.

/** Numbers the lines of `text` in `numbers`, now and at every change; gives what numbers them. */
export function numberLines(text, numbers) {
  const number = () => {
    const many = text.value.split("\n").length;
    numbers.textContent = Array.from({ length: many }, (_, at) => at + 1).join("\n");
    numbers.scrollTop = text.scrollTop;
  };
  text.addEventListener("input", number);
  text.addEventListener("scroll", () => (numbers.scrollTop = text.scrollTop));
  return number;
}
