// What one number may be: from its least to its greatest value, on a line.
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const HEIGHT = 78;

/** The drawing for `from` and `to`. */
export function range({ name, from, to, fromText, toText, greatestAsked }) {
  const low = Math.min(0, from);
  const high = Math.max(0, to);
  const x = (at) => 40 + ((at - low) / (high - low || 1)) * (WIDTH - 80);
  const end = (at, text, asked) =>
    draw(
      "g",
      { role: "img", "aria-label": `${asked ? "asked for: " : ""}${text}` },
      draw("circle", { class: "point", cx: x(at), cy: 40, r: asked ? 6 : 4 }),
      draw("text", { class: asked ? "tick named" : "tick", x: x(at), y: 24, "text-anchor": "middle" }, text.length <= 9 ? text.replaceAll("-", "\u2212") : short(at)),
    );
  return {
    width: WIDTH,
    height: HEIGHT,
    marks: [
      draw("path", { class: "axis", d: `M6 40H${WIDTH - 6}M${x(0)} 34V46` }),
      draw("text", { class: "tick", x: x(0), y: 62, "text-anchor": "middle" }, "0"),
      draw("path", { class: "stretch", d: `M${x(from)} 40H${x(to)}` }),
      end(from, fromText, !greatestAsked),
      end(to, toText, greatestAsked),
    ],
    label: `${name} lies between ${fromText} and ${toText}`,
    caption: `What ${name} may be, from the least to the greatest value.`,
  };
}
