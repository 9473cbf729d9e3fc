// Both sides of an equation; its solutions are where they meet.
import { draw } from "./element.js";
import { field, path, pieces } from "./figure-field.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const HEIGHT = 220;

/** The drawing for the places of both sides and their `meetings`. */
export function sides({ unknown, left, right, meetings }) {
  const heights = meetings.map(({ y }) => y);
  const spread = Math.max(2, Math.max(...heights) - Math.min(...heights), 0.5 * Math.max(...heights.map(Math.abs)));
  const low = Math.min(0, ...heights) - spread;
  const high = Math.max(0, ...heights) + spread;
  const xs = [...left, ...right].map(({ x }) => x);
  const plane = field({ width: WIDTH, height: HEIGHT, from: Math.min(...xs), to: Math.max(...xs), low, high, names: [unknown, ""] });
  const curve = (places, kind) => pieces(places).map((piece) => draw("path", { class: kind, d: path(piece, plane) }));
  return {
    width: WIDTH,
    height: HEIGHT,
    marks: [
      ...plane.axes,
      ...curve(left, "curve"),
      ...curve(right, "curve second"),
      ...meetings.map(({ x, y }) =>
        draw(
          "g",
          { role: "img", "aria-label": `a solution near ${short(x)}` },
          draw("circle", { class: "point", cx: plane.x(x), cy: plane.y(y), r: 4.5 }),
          draw("text", { class: "tick named", x: plane.x(x) + 8, y: plane.y(y) - 8 }, short(x)),
        ),
      ),
    ],
    label: `Both sides of the equation as graphs, which meet at ${meetings.map(({ x }) => short(x)).join(", ")}`,
    caption: "The left side drawn out, the right side dashed; the real solutions are where they meet.",
  };
}
