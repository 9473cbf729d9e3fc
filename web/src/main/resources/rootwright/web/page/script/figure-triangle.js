// The triangle whose sides are three real roots.
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const WIDTH = 300;

/** The drawing for three positive roots; nothing if they are no sides of a triangle. */
export function triangle({ roots }) {
  const sides = roots.flatMap((root) => Array.from({ length: root.multiplicity }, (_, at) => ({ name: root.names[at] ?? root.name, length: Number(root.re), real: root.real })));
  if (sides.length !== 3 || sides.some(({ real, length }) => !real || length <= 0)) return undefined;
  const [a, b, c] = [...sides].sort((one, other) => one.length - other.length);
  if (a.length + b.length <= c.length) return undefined;
  const scale = (WIDTH - 60) / c.length;
  const along = (b.length ** 2 + c.length ** 2 - a.length ** 2) / (2 * c.length);
  const up = Math.sqrt(b.length ** 2 - along ** 2);
  const height = Math.round(up * scale + 64);
  const foot = height - 30;
  const corners = [[30, foot], [30 + c.length * scale, foot], [30 + along * scale, foot - up * scale]];
  const side = (one, other, { name, length }, dx, dy) =>
    draw(
      "g",
      { tabindex: "0", role: "img", "aria-label": `side ${name}, near ${short(length)}`, "data-root": name },
      draw("path", { class: "stretch", d: `M${one.join(" ")}L${other.join(" ")}` }),
      draw("text", { class: "label", x: (one[0] + other[0]) / 2 + dx, y: (one[1] + other[1]) / 2 + dy, "text-anchor": "middle" }, name),
    );
  return {
    width: WIDTH,
    height,
    marks: [side(corners[0], corners[1], c, 0, 18), side(corners[0], corners[2], b, -14, -4), side(corners[1], corners[2], a, 14, -4)],
    label: `A triangle with sides near ${[a, b, c].map(({ length }) => short(length)).join(", ")}`,
    caption: "The triangle to scale.",
  };
}
