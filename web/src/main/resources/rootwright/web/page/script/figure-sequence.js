// The power sums as a sequence; heights are drawn on a logarithmic scale that keeps signs.
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const WIDTH = 420;
const HEIGHT = 220;

/** The drawing for `sums` [{k, text}]. */
export function sequence(sums, name = "S") {
  const points = sums.map(({ k, text, asked }) => ({ k, text, asked, height: grow(text) }));
  const tallest = Math.max(...points.map((point) => Math.abs(point.height)), 1);
  const base = points.some((point) => point.height < 0) ? HEIGHT / 2 - 10 : HEIGHT - 34;
  const room = points.some((point) => point.height < 0) ? HEIGHT / 2 - 44 : HEIGHT - 62;
  const x = (at) => 26 + (at / Math.max(points.length - 1, 1)) * (WIDTH - 52);
  const marks = [
    draw("path", { class: "axis", d: `M6 ${base}H${WIDTH - 6}` }),
    ...points.map((point, at) => {
      const y = base - (point.height / tallest) * room;
      return draw(
        "g",
        { role: "img", "aria-label": `${name} ${point.k} is ${point.text}` },
        draw("path", { class: "stem", d: `M${x(at)} ${base}V${y}` }),
        draw("circle", { class: "point", cx: x(at), cy: y, r: point.asked ? 5.5 : 3.5 }),
        draw("text", { class: "tick", x: x(at), y: y + (point.height < 0 ? 17 : -8), "text-anchor": "middle" }, sized(point.text)),
        draw("text", { class: "tick", x: x(at), y: HEIGHT - 4, "text-anchor": "middle" }, String(point.k)),
      );
    }),
  ];
  return {
    width: WIDTH,
    height: HEIGHT,
    marks,
    label: `${name === "S" ? "The power sums" : "The sequence"} from ${name} ${points[0].k} to ${name} ${points[points.length - 1].k}: ${points.map((point) => point.text).join(", ")}`,
    caption: `${name === "S" ? "The sums of powers in a row, by exponent" : "The members in a row, by index"}; heights on a logarithmic scale.`,
  };
}

function grow(text) {
  const [over, under = "1"] = text.split("/");
  const value = Number(over) / Number(under);
  return Number.isFinite(value) ? Math.sign(value) * Math.log1p(Math.abs(value)) : Math.sign(Number(over.slice(0, 2))) * over.length * Math.LN10;
}

function sized(text) {
  return text.length <= 7 ? text.replace("-", "\u2212") : short(text.includes("/") ? quotient(text) : text);
}

function quotient(text) {
  const [over, under] = text.split("/");
  return Number(over) / Number(under);
}
