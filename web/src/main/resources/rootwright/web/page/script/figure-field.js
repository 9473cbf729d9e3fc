// A drawing with two axes: where a place of the plane stands, and ticks at round numbers.
import { draw } from "./element.js";
import { short } from "./figure-words.js";

const PAD = { left: 14, right: 14, top: 16, bottom: 16 };

/** The field for x from `from` to `to` and y from `low` to `high`; `names` are those of the axes. */
export function field({ width, height, from, to, low, high, names: [across, up] }) {
  const x = (value) => PAD.left + ((value - from) / (to - from)) * (width - PAD.left - PAD.right);
  const y = (value) => height - PAD.bottom - ((value - low) / (high - low)) * (height - PAD.top - PAD.bottom);
  const foot = Math.min(Math.max(0, low), high);
  const side = Math.min(Math.max(0, from), to);
  const axes = [
    draw("path", { class: "axis", d: `M4 ${y(foot)}H${width - 4}M${x(side)} 4V${height - 4}` }),
    ...ticks(from, to, 7).map((value) => draw("text", { class: "tick", x: x(value), y: y(foot) + 13, "text-anchor": "middle" }, short(value))),
    ...ticks(low, high, 5).map((value) => draw("text", { class: "tick", x: x(side) + 5, y: y(value) + 4 }, short(value))),
    draw("text", { class: "label", x: width - 4, y: y(foot) - 6, "text-anchor": "end" }, across),
    draw("text", { class: "label", x: x(side) + 6, y: 12 }, up),
  ];
  return { width, height, x, y, axes, inside: (place) => place.x >= from && place.x <= to && place.y >= low && place.y <= high };
}

/** Round numbers between two ends, about so many, without 0 and without the ends. */
function ticks(from, to, many) {
  const rough = (to - from) / many;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((part) => part * ten).find((part) => part >= rough);
  const first = Math.ceil(from / step);
  const found = [];
  for (let k = first; k * step <= to; k++) if (k !== 0) found.push(Number((k * step).toPrecision(12)));
  return found.filter((value) => value - from > 0.04 * (to - from) && to - value > 0.06 * (to - from));
}

/** The path through places; it is lifted where one is missing or out of the field. */
export function path(places, { x, y, inside }) {
  let pen = false;
  return places
    .map((place) => {
      const drawn = inside(place);
      const stroke = drawn ? `${pen ? "L" : "M"}${x(place.x).toFixed(1)} ${y(place.y).toFixed(1)}` : "";
      pen = drawn;
      return stroke;
    })
    .join("");
}

/** Places grouped where the distance across between neighbours is no more than usual. */
export function pieces(places) {
  const steps = places.slice(1).map((place, at) => place.x - places[at].x);
  const usual = Math.min(...steps) * 1.5;
  const groups = [];
  places.forEach((place, at) => {
    if (at === 0 || place.x - places[at - 1].x > usual) groups.push([]);
    groups.at(-1).push(place);
  });
  return groups;
}
