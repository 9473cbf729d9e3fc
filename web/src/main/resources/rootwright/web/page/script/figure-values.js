// Several possible values on a line (or in the plane, if some are not real).
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const HEIGHT = 74;

/** The drawing for `values` [{text, decimal}]; nothing if they cannot be placed. */
export function values(all) {
  const real = all.map((value) => ({ ...value, at: Number(value.decimal ?? value.text) })).filter((value) => Number.isFinite(value.at));
  if (real.length < all.length || real.length < 2) return undefined;
  const low = Math.min(0, ...real.map((value) => value.at));
  const high = Math.max(0, ...real.map((value) => value.at));
  const x = (at) => 34 + ((at - low) / (high - low || 1)) * (WIDTH - 68);
  const marks = [
    draw("path", { class: "axis", d: `M6 40H${WIDTH - 6}M${x(0)} 34V46` }),
    draw("text", { class: "tick", x: x(0), y: 60, "text-anchor": "middle" }, "0"),
    ...real.map((value, at) =>
      draw(
        "g",
        { role: "img", "aria-label": value.spoken ?? value.text },
        draw("circle", { class: "point", cx: x(value.at), cy: 40, r: 4.5 }),
        draw("text", { class: "tick", x: x(value.at), y: real.length < 5 || at % 2 === 0 ? 26 : 12, "text-anchor": "middle" }, short(value.at)),
      ),
    ),
  ];
  return { width: WIDTH, height: HEIGHT, marks, label: `The possible values on a line: ${real.map((value) => value.text).join(", ")}`, caption: "The possible values on a line." };
}
