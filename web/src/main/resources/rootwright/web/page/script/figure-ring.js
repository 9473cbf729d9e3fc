// Remainders that come round again, as a ring that is read clockwise from the top.
import { draw } from "./element.js";

const SIZE = 300;

/** The drawing for `members` of a ring. */
export function ring({ name, modulus, first, members, asked }) {
  const many = members.length;
  const radius = SIZE / 2 - 34;
  const place = (at, away) => {
    const turn = (2 * Math.PI * at) / many - Math.PI / 2;
    return [SIZE / 2 + away * Math.cos(turn), SIZE / 2 + away * Math.sin(turn)];
  };
  const dense = many > 40;
  const set = name.replace("^n", "\u207f").replace("^n", "\u207f").replace("_k", "\u2096");
  const marks = members.map((member, at) => {
    const [cx, cy] = place(at, radius);
    const [tx, ty] = place(at, radius + 17);
    return draw(
      "g",
      { role: "img", "aria-label": `at ${first + at}: ${member}${at === asked ? ", asked for" : ""}` },
      draw("circle", { class: "point", cx, cy, r: at === asked ? 6 : dense ? 2.2 : 3.4 }),
      draw("text", { class: at === asked ? "tick named" : "tick", x: tx, y: ty + 4, "text-anchor": "middle", ...(dense ? { "font-size": "9" } : {}) }, String(member)),
      at === 0 || at === asked ? draw("text", { class: "tick", x: place(at, radius - 16)[0], y: place(at, radius - 16)[1] + 4, "text-anchor": "middle" }, String(first + at)) : "",
    );
  });
  return {
    width: SIZE,
    height: SIZE,
    marks: [
      draw("circle", { class: "circle", cx: SIZE / 2, cy: SIZE / 2, r: radius }),
      ...marks,
      draw("text", { class: "label", x: SIZE / 2, y: SIZE / 2 - 2, "text-anchor": "middle" }, `${set} modulo ${modulus}`),
      draw("text", { class: "tick", x: SIZE / 2, y: SIZE / 2 + 16, "text-anchor": "middle" }, many === 1 ? "always the same" : `comes round after ${many}`),
    ],
    label: `The remainders of ${name} modulo ${modulus} come round after ${many}: ${members.join(", ")}`,
    caption: `One turn of the remainders, clockwise from the top${asked >= 0 ? "; the one asked for is larger" : ""}.`,
  };
}
