// How the real roots move with a letter: above each value of the letter stand the real roots there.
import { draw } from "./element.js";
import { field } from "./figure-field.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const HEIGHT = 240;
const CELLS = 150;
const FAR = 1e4;

/** The drawing for `coefficients` [power of x][power of the letter], `values` and `spans`. */
export function letter({ letter: name, unknown, coefficients, values, spans }) {
  const p = (k, x) => coefficients.reduceRight((sum, row) => sum * x + row.reduceRight((inner, a) => inner * k + a, 0), 0);
  const ends = spans.flatMap(({ from, to }) => [Number(from), Number(to)]).filter(Number.isFinite);
  const [from, to] = across([...values, ...ends]);
  const marked = values.map((value) => ({ value, roots: realRoots((x) => p(value, x)) }));
  const seen = [from, (from + to) / 2, to, ...ends, ...values].flatMap((value) => realRoots((x) => p(value, x)));
  if (seen.length === 0) return undefined;
  const [low, high] = up(marked.some(({ roots }) => roots.length > 0) ? [...marked.flatMap(({ roots }) => roots), ...seen.filter((x) => Math.abs(x) <= 3 * Math.max(1, ...marked.flatMap(({ roots }) => roots.map(Math.abs))))] : seen);
  const plane = field({ width: WIDTH, height: HEIGHT, from, to, low, high, names: [name, unknown] });
  const shades = spans.map((span) => shade(span, plane, from, to));
  const lines = marked.map(({ value, roots }) =>
    draw(
      "g",
      { role: "img", "aria-label": `${name} is ${short(value)}: ${roots.length === 0 ? "no real root" : `real roots near ${roots.map(short).join(", ")}`}` },
      draw("path", { class: "stem marked", d: `M${plane.x(value)} ${HEIGHT - 6}V10` }),
      draw("text", { class: "tick named", x: plane.x(value), y: 9, "text-anchor": "middle" }, short(value)),
      ...roots.filter((x) => x >= low && x <= high).map((x) => draw("circle", { class: "point", cx: plane.x(value), cy: plane.y(x), r: 3.6 })),
    ),
  );
  return {
    width: WIDTH,
    height: HEIGHT,
    marks: [...shades, ...plane.axes, draw("path", { class: "curve", d: contour(p, { from, to, low, high }, plane) }), ...lines],
    label: `The real roots as ${name} moves. ${said(name, marked, spans)}`,
    caption: `Above each value of ${name}, the real roots there${marked.length > 0 ? "; the answer is marked" : spans.length > 0 ? "; the answer is shaded" : ""}.`,
  };
}

function said(name, marked, spans) {
  const at = marked.map(({ value, roots }) => `At ${name} = ${short(value)} ${roots.length === 0 ? "there is no real root" : `the real roots are near ${roots.map(short).join(", ")}`}.`);
  const between = spans.map(({ from, to }) => {
    const [low, high] = [Number(from), Number(to)];
    if (low === high) return `${name} = ${short(low)} belongs to the answer.`;
    if (!Number.isFinite(low)) return `The answer is ${name} up to ${short(high)}.`;
    if (!Number.isFinite(high)) return `The answer is ${name} from ${short(low)} on.`;
    return `The answer is ${name} from ${short(low)} to ${short(high)}.`;
  });
  return [...at, ...between].join(" ");
}

function across(points) {
  if (points.length === 0) return [-8, 8];
  const [low, high] = [Math.min(...points), Math.max(...points)];
  const room = high > low ? 0.35 * (high - low) : Math.max(2, 0.5 * Math.abs(low));
  return [low - room, high + room];
}

function up(points) {
  const [low, high] = [Math.min(0, ...points), Math.max(0, ...points)];
  const room = Math.max(1, 0.25 * (high - low));
  return [low - room, high + room];
}

function shade({ from, to, fromIn, toIn }, { x }, left, right) {
  const [low, high] = [Math.max(Number(from), left), Math.min(Number(to), right)];
  if (low > high) return "";
  const end = (value, inside) => (Number.isFinite(Number(value)) ? draw("path", { class: inside ? "end" : "end open", d: `M${x(Number(value))} 4V${HEIGHT - 4}` }) : "");
  return draw("g", {}, draw("rect", { class: "shade", x: x(low), y: 4, width: Math.max(0, x(high) - x(low)), height: HEIGHT - 8 }), end(from, fromIn), end(to, toIn));
}

/** Places where a function changes its sign or touches nought, found by looking closely. */
function realRoots(f) {
  const found = [];
  const look = (low, high, many) => {
    let before = f(low);
    for (let k = 1; k <= many; k++) {
      const x = low + ((high - low) * k) / many;
      const now = f(x);
      if (now === 0) found.push(x);
      else if (before * now < 0) found.push(halved(f, x - (high - low) / many, x));
      before = now;
    }
  };
  look(-40, 40, 4001);
  if (found.length === 0) look(-FAR, FAR, 4001);
  return found.length > 0 ? found : touched(f);
}

function halved(f, low, high) {
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2;
    if (f(low) * f(middle) <= 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** A double root does not change the sign; it is where the value is least by size and nearly nought. */
function touched(f) {
  let best = 0;
  for (let k = -4000; k <= 4000; k++) if (Math.abs(f(k / 100)) < Math.abs(f(best))) best = k / 100;
  return Math.abs(f(best)) < 1e-3 * (1 + Math.abs(f(best + 1))) ? [best] : [];
}

/** The curve p(k, x) = 0, cell by cell. */
function contour(p, { from, to, low, high }, { x, y }) {
  const at = (i, j) => [from + ((to - from) * i) / CELLS, low + ((high - low) * j) / CELLS];
  const grid = Array.from({ length: CELLS + 1 }, (_, i) => Array.from({ length: CELLS + 1 }, (_, j) => p(...at(i, j))));
  const strokes = [];
  for (let i = 0; i < CELLS; i++) {
    for (let j = 0; j < CELLS; j++) {
      const corners = [[i, j], [i + 1, j], [i + 1, j + 1], [i, j + 1]];
      const cuts = [];
      corners.forEach(([a, b], side) => {
        const [c, d] = corners[(side + 1) % 4];
        const [one, other] = [grid[a][b], grid[c][d]];
        if (one > 0 === other > 0) return;
        const part = one / (one - other);
        const [k1, x1] = at(a, b);
        const [k2, x2] = at(c, d);
        cuts.push(`${x(k1 + part * (k2 - k1)).toFixed(1)} ${y(x1 + part * (x2 - x1)).toFixed(1)}`);
      });
      for (let k = 0; k + 1 < cuts.length; k += 2) strokes.push(`M${cuts[k]}L${cuts[k + 1]}`);
    }
  }
  return strokes.join("");
}
