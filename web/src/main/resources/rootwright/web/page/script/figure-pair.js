// The roots of two polynomials in one plane: discs and squares, and both where a root is common.
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const PAD = 26;

/** The drawing for `first` and `second` [{root, common}] with the `names` of both sets. */
export function pair({ first, second, names, remark }) {
  const placed = (set) => set.map(({ root, common }) => ({ re: Number(root.real), im: Number(root.imaginary), real: root.isReal, multiplicity: root.multiplicity, common }));
  const [one, other] = [placed(first), placed(second)];
  const all = [...one, ...other];
  const left = Math.min(0, ...all.map(({ re }) => re));
  const right = Math.max(1, ...all.map(({ re }) => re));
  const up = Math.max(0.6, ...all.map(({ im }) => Math.abs(im)));
  const scale = Math.min((WIDTH - 2 * PAD) / (right - left || 1), 90 / up);
  const height = Math.round(2 * up * scale + 2 * PAD);
  const middle = (WIDTH - (right - left) * scale) / 2;
  const x = (re) => middle + (re - left) * scale;
  const y = (im) => height / 2 - im * scale;
  const disc = (root) => mark(root, names[0], draw("circle", { class: "point", cx: x(root.re), cy: y(root.im), r: 4.5 }));
  const square = (root) => mark(root, names[1], draw("rect", { class: "square", x: x(root.re) - 6.5, y: y(root.im) - 6.5, width: 13, height: 13 }));
  const label = (root) => draw("text", { class: "tick", x: x(root.re), y: root.im < 0 ? y(root.im) + 20 : y(root.im) - 11, "text-anchor": "middle" }, short(root.re) + (root.real ? "" : ` ${root.im < 0 ? "\u2212" : "+"} ${short(Math.abs(root.im))}i`));
  const common = one.filter((root) => root.common);
  return {
    width: WIDTH,
    height,
    marks: [
      draw("path", { class: "axis", d: `M4 ${y(0)}H${WIDTH - 4}M${x(0)} 4V${height - 4}` }),
      ...common.map((root) => draw("circle", { class: "ball", cx: x(root.re), cy: y(root.im), r: 14 })),
      ...other.map(square),
      ...one.map(disc),
      ...(all.length <= 8 ? [...one, ...other.filter((root) => !root.common)].map(label) : []),
    ],
    label: `${names[0]}: ${one.map(said).join("; ")}. ${names[1]}: ${other.map(said).join("; ")}.${common.length > 0 ? ` Common: ${common.map(said).join("; ")}.` : " They have none in common."}`,
    caption: `Discs, ${names[0]}; squares, ${names[1]}${common.length > 0 ? "; ringed, what they have in common" : ""}${remark ? `. Drawn for ${remark.replaceAll("-", "\u2212")}` : ""}.`,
  };
}

const mark = (root, name, shape) => draw("g", { role: "img", "aria-label": `one of ${name}: ${said(root)}` }, shape);

function said({ re, im, real, multiplicity }) {
  return `${short(re)}${real ? "" : ` ${im < 0 ? "minus" : "plus"} ${short(Math.abs(im))} i`}${multiplicity > 1 ? `, ${multiplicity} times` : ""}`;
}
