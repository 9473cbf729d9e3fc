// The roots in the complex plane: enclosures, multiplicity, the unit circle.
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const WIDTH = 300;
const PAD = 26;

/** The drawing for `roots` [{name, re, im, radius, multiplicity, real}]. */
export function plane({ roots }) {
  const points = roots.map((root) => ({ ...root, re: Number(root.re), im: Number(root.im) }));
  const left = Math.min(-1, ...points.map((p) => p.re));
  const right = Math.max(1, ...points.map((p) => p.re));
  const high = Math.max(1, ...points.map((p) => Math.abs(p.im)));
  const scale = Math.min((WIDTH - 2 * PAD) / (right - left), 110 / high);
  const height = Math.round(2 * high * scale + 2 * PAD);
  const middle = (WIDTH - (right - left) * scale) / 2;
  const x = (re) => middle + (re - left) * scale;
  const y = (im) => height / 2 - im * scale;
  const marks = [
    draw("path", { class: "axis", d: `M4 ${y(0)}H${WIDTH - 4}M${x(0)} 4V${height - 4}` }),
    draw("circle", { class: "circle", cx: x(0), cy: y(0), r: scale }),
    draw("text", { class: "tick", x: x(1) + 3, y: y(0) + 13 }, "1"),
    ...points.map((point, at) => dot(point, roots[at].name, x, y, scale, points)),
  ];
  return { width: WIDTH, height, marks, label: `The roots in the complex plane: ${points.map(said).join("; ")}`, caption: caption(points) };
}

function dot(point, names, x, y, scale, points) {
  const [cx, cy] = [x(point.re), y(point.im)];
  const radius = Math.max(9, Number(point.radius) * scale);
  const crowded = points.some((other) => other !== point && other.re > point.re && other.re - point.re < 24 / scale && Math.abs(other.im - point.im) < 14 / scale);
  const above = point.im >= 0;
  return draw(
    "g",
    { tabindex: "0", role: "img", "aria-label": said(point), "data-root": point.names.join(" ") },
    draw("circle", { class: "ball", cx, cy, r: radius }),
    draw("circle", { class: "point", cx, cy, r: 4.2 }),
    point.multiplicity > 1 ? draw("circle", { class: "circle", cx, cy, r: 8 }) : "",
    draw(
      "text",
      { class: "label", x: crowded ? cx - 4 : cx + 9, y: above ? cy - 9 : cy + 18 },
      point.multiplicity > 1 ? `${names} (${point.multiplicity}\u00d7)` : names,
    ),
  );
}

function said(point) {
  const times = point.multiplicity > 1 ? `, ${point.multiplicity} times` : "";
  return `${point.name || "a root"} near ${short(point.re)}${point.real ? "" : ` ${point.im < 0 ? "minus" : "plus"} ${short(Math.abs(point.im))} i`}${times}`;
}

function caption(points) {
  const real = points.filter((point) => point.real).reduce((sum, point) => sum + point.multiplicity, 0);
  const pairs = points.filter((point) => !point.real && point.im > 0).reduce((sum, point) => sum + point.multiplicity, 0);
  const words = [];
  if (real > 0) words.push(`${inWords(real)} real root${real === 1 ? "" : "s"}`);
  if (pairs > 0) words.push(`${inWords(pairs)} conjugate pair${pairs === 1 ? "" : "s"}`);
  const repeated = points.some((point) => point.multiplicity > 1) ? ", counted with multiplicity" : "";
  const sentence = words.join(", ") + repeated;
  const radius = Math.max(...points.map((point) => Number(point.radius)));
  const enclosed = radius * 40 < 1 && radius > 0 ? ` Each root is enclosed in a disc of radius under ${power(radius)}, too small to be seen.` : "";
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}${points.some((point) => point.name) ? "; the names are given at will" : ""}.${enclosed} Dashed, the unit circle.`;
}

/** The power of ten above a small number. */
function power(number) {
  const digits = String(Math.floor(-Math.log10(number)));
  return `10\u207b${[...digits].map((digit) => "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079"[digit]).join("")}`;
}

const inWords = (number) => ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"][number] ?? String(number);
