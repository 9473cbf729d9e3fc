// Routes as numbered lines with the reason at the end; the shortest open, the others one line each.
import { make, displayed } from "./element.js";
import { costOf, inked } from "./words.js";
import { notesOf } from "./notes.js";
import { revealLines } from "./reveal.js";
import { arrangeMargin } from "./margin.js";
import { nameRoots } from "./light.js";

const LONG = 46;

/** The open route with its notes. */
export function routeSection(route, number, notes) {
  const section = make(
    "section",
    { class: "route", "data-route": route.name, id: `route-${number}` },
    make(
      "div",
      { class: "column" },
      make(
        "h2",
        {},
        `Route ${number}`,
        make("span", { class: "title" }, ...inked(route.title)),
        make("span", { class: "cost" }, costOf(route.cost)),
      ),
      route.teaches ? make("p", { class: "teaches" }, ...inked(route.teaches)) : "",
    ),
    make("div", { class: "beside" }, ...notes.head),
    lines(route, notes.at),
  );
  section.append(showing(section));
  return section;
}

/** The lines of a route, each with what stands beside it. */
function lines(route, notes) {
  return make(
    "ol",
    { class: "lines" },
    ...route.steps.map((step, at) =>
      make(
        "li",
        { class: at === route.steps.length - 1 ? "last" : "", "data-idea": step.idea },
        make(
          "div",
          { class: lineClass(step) },
          make("span", { class: "shown" }, displayed(step)),
          make("span", { class: "reason" }, ...inked(step.reason), step.checked || step.argument ? "" : make("b", { class: "unchecked" }, " not checked")),
        ),
        notes[at]?.length > 0 ? make("div", { class: "beside" }, ...notes[at]) : "",
      ),
    ),
  );
}

function lineClass(step) {
  return ["line", step.argument ? "argument" : "", step.text.length > LONG ? "long" : ""].join(" ").trim();
}

function showing(section) {
  return make(
    "p",
    { class: "how" },
    make("button", { type: "button", class: "reveal", onclick: () => revealLines(section) }, "Show it line by line"),
    make("span", { class: "keys" }, " with the space bar"),
  );
}

/** All other routes, one line each. */
export function othersSection(routes, solution) {
  return make(
    "section",
    { class: "others" },
    make("h2", {}, routes.length === 1 ? "Another route" : "Other routes"),
    ...routes.map((route, at) => other(route, at + 2, solution)),
  );
}

function other(route, number, solution) {
  const opened = make("div", { class: "opened", id: `opened-${number}`, hidden: true });
  const opener = make("button", { type: "button", "aria-expanded": "false", "aria-controls": opened.id }, `Route ${number} `, make("span", { class: "title" }, ...inked(route.title)), " ", make("span", { class: "taught" }, ...inked(route.teaches ?? "")));
  const beside = make("button", { type: "button", class: "set-beside", "aria-pressed": "false" }, "set beside route 1");
  const row = make(
    "div",
    { class: "other", "data-route": route.name },
    make("div", { class: "closed" }, make("h3", {}, opener), make("span", { class: "cost" }, costOf(route.cost)), beside),
    opened,
  );
  opener.addEventListener("click", () => {
    const open = opened.hidden;
    if (open && opened.childElementCount === 0) opened.append(...contentsOf(route, solution, opened));
    opened.hidden = !open;
    opener.setAttribute("aria-expanded", String(open));
    nameRoots(opened);
    arrangeMargin();
  });
  beside.addEventListener("click", () => compare(beside, route, number, solution));
  return row;
}

function contentsOf(route, solution, section) {
  return [route.teaches ? make("p", { class: "teaches" }, ...inked(route.teaches)) : "", lines(route, notesOf(solution, route).at), showing(section)].filter(
    (piece) => piece !== "",
  );
}

/** Puts two routes into two columns, or takes them apart again. */
function compare(button, route, number, solution) {
  const first = document.getElementById("route-1");
  const apart = button.getAttribute("aria-pressed") === "true";
  document.querySelector(".pair")?.remove();
  for (const other of document.querySelectorAll(".set-beside")) {
    other.setAttribute("aria-pressed", "false");
    other.textContent = "set beside route 1";
  }
  first.hidden = !apart;
  document.body.classList.toggle("comparing", !apart);
  if (!apart) {
    button.setAttribute("aria-pressed", "true");
    button.textContent = "take apart again";
    const pair = make("section", { class: "pair", "aria-label": `Route 1 beside route ${number}` }, column(solution.routes[0], 1, solution), column(route, number, solution));
    first.after(pair);
    nameRoots(pair);
    pair.scrollIntoView({ block: "nearest" });
  }
  arrangeMargin();
}

function column(route, number, solution) {
  return make(
    "div",
    { class: "route" },
    make("h2", {}, `Route ${number}`, make("span", { class: "title" }, ...inked(route.title)), make("span", { class: "cost" }, costOf(route.cost))),
    lines(route, notesOf(solution, route).at),
  );
}
