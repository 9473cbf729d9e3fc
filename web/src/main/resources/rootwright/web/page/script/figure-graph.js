// The graph of a value that depends on a letter.
import { draw } from "./element.js";
import { field, path, pieces } from "./figure-field.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const HEIGHT = 220;

/** The drawing for `allowed` and `barred` places, and `levels`. */
export function graph({ letter, value, allowed, barred, levels }) {
  const all = [...allowed, ...barred];
  const heights = allowed.map(({ y }) => y).sort((one, other) => one - other);
  const [least, greatest] = [heights[Math.floor(0.02 * heights.length)], heights[Math.ceil(0.98 * heights.length) - 1]];
  const low = Math.min(0, least, ...levels);
  const high = Math.max(0, greatest, ...levels);
  const room = 0.12 * (high - low || 1);
  const plane = field({ width: WIDTH, height: HEIGHT, from: Math.min(...all.map(({ x }) => x)), to: Math.max(...all.map(({ x }) => x)), low: low - room, high: high + room, names: [letter, ""] });
  const level = levels.map((y) =>
    draw(
      "g",
      { role: "img", "aria-label": `the value ${short(y)}` },
      draw("path", { class: "stem marked", d: `M4 ${plane.y(y)}H${WIDTH - 4}` }),
      ...touching(allowed, y).map((place) => draw("circle", { class: "point", cx: plane.x(place.x), cy: plane.y(place.y), r: 4 })),
      draw("text", { class: "tick named", x: WIDTH - 6, y: plane.y(y) - 5, "text-anchor": "end" }, short(y)),
    ),
  );
  const curve = (places, kind) => pieces(places).map((piece) => draw("path", { class: kind, d: path(piece, plane) }));
  const barredToo = barred.length > 0;
  return {
    width: WIDTH,
    height: HEIGHT,
    marks: [...plane.axes, ...(barredToo ? curve(barred, "curve barred") : []), ...curve(allowed, "curve"), ...level],
    label: `The graph of ${value} by ${letter}${levels.length > 0 ? `, with the value ${levels.map(short).join(", ")} marked` : ""}`,
    caption: `The value by ${letter}${barredToo ? "; dotted where what is given does not hold" : ""}.`,
  };
}

/** Where a graph is nearest to a level: once for each dip. */
function touching(places, level) {
  const away = places.map(({ y }) => Math.abs(y - level));
  const near = 0.02 * Math.max(...away) + 1e-9;
  return places.filter((_, at) => away[at] <= near && !(away[at - 1] < away[at]) && !(away[at + 1] <= away[at]));
}
