// The curve y = P(x), cut so that its real roots are seen.
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const WIDTH = 300;
const HEIGHT = 160;
const PAD = 18;
const SAMPLES = 240;

/** The drawing for `coefficients` (highest first, decimal) and `roots`. */
export function curve({ coefficients, roots }) {
  const c = coefficients.map(Number);
  const p = (x) => c.reduce((sum, a) => sum * x + a, 0);
  const real = roots.filter((root) => root.real).map((root) => ({ ...root, at: Number(root.re) }));
  const low = Math.min(...roots.map((root) => Number(root.re)));
  const high = Math.max(...roots.map((root) => Number(root.re)));
  const span = Math.max(high - low, 1);
  const [from, to] = [low - 0.22 * span, high + 0.22 * span];
  const step = (to - from) / SAMPLES;
  const xs = Array.from({ length: SAMPLES + 1 }, (_, i) => from + i * step);
  const inner = xs.filter((x) => x >= low && x <= high).map((x) => Math.abs(p(x)));
  const tallest = roots.length > 1 ? Math.max(...inner) : 0;
  const bound = (tallest > 0 ? tallest : Math.max(Math.abs(p(from)), Math.abs(p(to))) / 1.6 || 1) * 1.5;
  const sx = (x) => PAD + ((x - from) / (to - from)) * (WIDTH - 2 * PAD);
  const sy = (y) => HEIGHT / 2 - (Math.max(-bound, Math.min(bound, y)) / bound) * (HEIGHT / 2 - 8);
  const rising = (at) => (p(at + step) >= p(at - step) ? 1 : -1);
  const strokes = [];
  let pen = false;
  for (const x of xs) {
    const y = p(x);
    if (Math.abs(y) > bound * 1.02) pen = false;
    else {
      strokes.push(`${pen ? "L" : "M"}${sx(x).toFixed(1)} ${sy(y).toFixed(1)}`);
      pen = true;
    }
  }
  const marks = [
    draw("path", { class: "axis", d: `M4 ${sy(0)}H${WIDTH - 4}${from < 0 && to > 0 ? `M${sx(0)} 4V${HEIGHT - 4}` : ""}` }),
    draw("path", { class: "curve", d: strokes.join("") }),
    ...real.map((root) =>
      draw(
        "g",
        { tabindex: "0", role: "img", "aria-label": `${root.name || "a root"} near ${short(root.re)}`, "data-root": root.names.join(" ") },
        draw("circle", { class: "point", cx: sx(root.at), cy: sy(0), r: 4 }),
        draw("text", { class: "label", x: sx(root.at) - 9 * rising(root.at), y: sy(0) - 9, "text-anchor": "middle" }, root.name),
        draw("text", { class: "tick", x: sx(root.at) + 15 * rising(root.at), y: sy(0) + 17, "text-anchor": "middle" }, short(root.re)),
      ),
    ),
  ];
  return {
    width: WIDTH,
    height: HEIGHT,
    marks,
    label: `The curve of the polynomial, which meets the axis at ${real.map((root) => `${root.name || "a root"} near ${short(root.re)}`).join(", ")}`,
    caption: "The curve where the roots lie, its heights to a scale of their own.",
  };
}
