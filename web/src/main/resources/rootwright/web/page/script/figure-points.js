// A polynomial through the points that are given of it, with the point that was asked for.
import { draw } from "./element.js";
import { field, path } from "./figure-field.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const HEIGHT = 220;

/** The drawing for `given` places and the `asked` one; all together determine the polynomial. */
export function points({ given, asked, name }) {
  const all = [...given, asked];
  const xs = all.map(({ x }) => x);
  const span = Math.max(...xs) - Math.min(...xs) || 1;
  const [from, to] = [Math.min(...xs) - 0.08 * span, Math.max(...xs) + 0.08 * span];
  const curve = Array.from({ length: 241 }, (_, at) => from + ((to - from) * at) / 240).map((x) => ({ x, y: through(all, x) }));
  const between = curve.filter(({ x }) => x >= Math.min(...xs) && x <= Math.max(...xs)).map(({ y }) => y);
  const [low, high] = [Math.min(0, ...between), Math.max(0, ...between)];
  const room = 0.12 * (high - low || 1);
  const plane = field({ width: WIDTH, height: HEIGHT, from, to, low: low - room, high: high + room, names: ["x", ""] });
  const dot = ({ x, y }, isAsked) =>
    draw(
      "g",
      { role: "img", "aria-label": `${name} of ${short(x)} is ${short(y)}${isAsked ? ", asked for" : ""}` },
      draw("circle", { class: "point", cx: plane.x(x), cy: plane.y(y), r: isAsked ? 6 : 3.8 }),
      draw("text", { class: isAsked ? "tick named" : "tick", x: plane.x(x), y: plane.y(y) - 9, "text-anchor": "middle" }, short(y)),
    );
  return {
    width: WIDTH,
    height: HEIGHT,
    marks: [...plane.axes, draw("path", { class: "curve", d: path(curve, plane) }), ...given.map((place) => dot(place, false)), dot(asked, true)],
    label: `The graph of ${name} through ${given.map(({ x, y }) => `${short(x)}, ${short(y)}`).join("; ")}; and ${name} of ${short(asked.x)} is ${short(asked.y)}`,
    caption: `The polynomial through the points that are given; the value asked for is the larger point.`,
  };
}

/** Lagrange's polynomial through places, at x. */
function through(places, x) {
  return places.reduce((sum, place, at) => sum + places.reduce((term, other, k) => (k === at ? term : (term * (x - other.x)) / (place.x - other.x)), place.y), 0);
}
