// Pairs of positive integers that fit a condition; each step down the stairs is one descent.
import { draw } from "./element.js";

const SIZE = 320;
const PAD = 34;

/** The drawing for `pairs` with the smaller number across; both scales are logarithmic. */
export function lattice({ names: [small, large], pairs, bound }) {
  const end = Math.log(bound * 1.3);
  const at = (number) => PAD + (Math.log(number) / end) * (SIZE - PAD - 16);
  const x = (number) => at(number);
  const y = (number) => SIZE - at(number);
  const steps = pairs.filter((pair) => pair.x < pair.y || pair.x === 1).map((pair) => [pair, pairs.find((next) => next.x === pair.y && next.y > pair.y)]);
  return {
    width: SIZE,
    height: SIZE,
    marks: [
      draw("path", { class: "axis", d: `M${PAD - 8} ${SIZE - PAD}H${SIZE - 6}M${PAD} ${SIZE - PAD + 8}V6` }),
      ...steps.filter(([, next]) => next).map(([pair, next]) => draw("path", { class: "stem", d: `M${x(pair.x)} ${y(pair.y)}H${x(next.x)}V${y(next.y)}` })),
      ...pairs.map((pair) =>
        draw(
          "g",
          { role: "img", "aria-label": `${pair.x} and ${pair.y}` },
          draw("circle", { class: "point", cx: x(pair.x), cy: y(pair.y), r: 4 }),
          draw("text", { class: "tick", x: x(pair.x) - 7, y: y(pair.y) - 5, "text-anchor": "end" }, `${pair.x}, ${pair.y}`),
        ),
      ),
      draw("text", { class: "label", x: SIZE - 8, y: SIZE - PAD + 15, "text-anchor": "end" }, small),
      draw("text", { class: "label", x: PAD + 8, y: 14 }, large),
    ],
    label: `Pairs up to ${bound} that fit: ${pairs.map((pair) => `${pair.x} and ${pair.y}`).join("; ")}`,
    caption: `The pairs up to ${bound}, the smaller number across, on logarithmic scales; the stairs lead from pair to pair by the other root.`,
  };
}
