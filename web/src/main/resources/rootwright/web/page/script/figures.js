// Which figures a solution gets, and where they stand. A figure draws with rounded numbers and
// decides nothing.
import { make, draw } from "./element.js";
import { plane } from "./figure-plane.js";
import { curve } from "./figure-curve.js";
import { values } from "./figure-values.js";
import { sequence } from "./figure-sequence.js";
import { letter } from "./figure-letter.js";
import { graph } from "./figure-graph.js";
import { pair } from "./figure-pair.js";
import { range } from "./figure-range.js";
import { ring } from "./figure-ring.js";
import { points } from "./figure-points.js";
import { sides } from "./figure-sides.js";
import { lattice } from "./figure-lattice.js";
import { triangle } from "./figure-triangle.js";

/** The roots in the plane, in the margin beside the answer. */
export function planeBeside({ figure }) {
  return figure?.roots?.length > 0 ? [figured(plane(figure))] : [];
}

/** The curve, further down in the margin. */
export function curveBeside({ figure }) {
  return figure?.coefficients && figure.roots?.some((root) => root.real) ? [figured(curve(figure))] : [];
}

const DRAWN = { letter, graph, pair, range, ring, points, sides, lattice };

/** Figures of the answer, in the text column. */
export function figuresBelow({ kind, figure, answer }) {
  const pictures = figure?.pictures ?? [];
  const several = answer.values?.length > 1 && !pictures.some((picture) => picture.kind === "letter" && picture.values.length > 0 && picture.values.length < 5);
  const drawn = [
    several ? values(answer.values) : undefined,
    kind === "triangle" && figure?.roots ? triangle(figure) : undefined,
    figure?.powerSums?.length > 1 ? sequence(figure.powerSums, figure.sequence) : undefined,
    ...pictures.map((picture) => DRAWN[picture.kind]?.(picture)),
  ].filter(Boolean);
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
