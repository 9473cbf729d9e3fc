// Which figures a solution gets, and where they stand. A figure draws with rounded numbers and
// decides nothing.
import { make, draw } from "./element.js";
import { plane } from "./figure-plane.js";
import { curve } from "./figure-curve.js";
import { values } from "./figure-values.js";
import { sequence } from "./figure-sequence.js";

/** The roots in the plane, in the margin beside the answer. */
export function planeBeside({ figure }) {
  return figure?.roots?.length > 0 ? [figured(plane(figure))] : [];
}

/** The curve, further down in the margin. */
export function curveBeside({ figure }) {
  return figure?.coefficients && figure.roots?.some((root) => root.real) ? [figured(curve(figure))] : [];
}

/** Figures of the answer, in the text column. */
export function figuresBelow({ figure, answer }) {
  const drawn = [answer.values?.length > 1 ? values(answer.values) : undefined, figure?.powerSums?.length > 1 ? sequence(figure.powerSums) : undefined].filter(Boolean);
  if (drawn.length === 0) return undefined;
  return make("section", { class: "figures", "aria-label": "Figures" }, make("div", { class: "column" }, ...drawn.map(figured)));
}

function figured({ width, height, label, caption, marks }) {
  return make(
    "figure",
    {},
    draw("svg", { viewBox: `0 0 ${width} ${height}`, role: "group", "aria-label": label }, ...marks),
    make("figcaption", {}, caption),
  );
}
