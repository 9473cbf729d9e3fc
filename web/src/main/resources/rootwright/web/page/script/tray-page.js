// The paper tray: the papers, a new one, and the one that lies open.
import { make } from "./element.js";
import { Kept } from "./kept.js";
import * as server from "./tray-server.js";
import { paperSections, way } from "./tray-paper.js";

const list = document.querySelector("#papers");
const form = document.querySelector("#draft");
const refusal = document.querySelector("#refusal");
const progress = document.querySelector("#progress");
const opened = document.querySelector("#paper");
const fresh = document.querySelector("#fresh");

let name = new URLSearchParams(location.search).get("paper") ?? "";

/** Does something with the server; a refusal is shown, and nothing else changes. */
async function tried(act) {
  refusal.textContent = "";
  opened.setAttribute("aria-busy", "true");
  try {
    return await act(({ text }) => (progress.textContent = text ?? ""));
  } catch (refused) {
    if (!refused.error) throw refused;
    refusal.textContent = refused.message;
    return undefined;
  } finally {
    progress.textContent = "";
    opened.removeAttribute("aria-busy");
  }
}

async function refresh() {
  const found = await tried(() => server.papers());
  if (!found) return;
  const line = (paper) =>
    make(
      "li",
      {},
      make(
        "button",
        { type: "button", "aria-current": paper.name === name ? "true" : undefined, onclick: () => open(paper.name) },
        make(
          "span",
          {},
          make("span", { class: "called" }, paper.title),
          make("span", { class: "when" }, `${paper.date}${paper.edition > 1 ? `, edition ${paper.edition}` : ""}${paper.code ? `, ${paper.code}` : ""}`),
          paper.stale > 0 ? make("span", { class: "stale" }, "stale key") : "",
        ),
        way(paper.state),
      ),
    );
  list.replaceChildren(...(found.papers.length > 0 ? found.papers.map(line) : [make("li", {}, make("p", { class: "none" }, "The tray is empty."))]));
  shelf(found.shelf);
  if (found.papers.length === 0) showNew(true);
}

function shelf(lines) {
  document.querySelector("#kept").hidden = lines.length === 0;
  const take = (line) =>
    make("li", {}, make("button", { type: "button", onclick: () => {
      const problems = form.elements.problems;
      problems.value = `${problems.value.trimEnd()}${problems.value.trim() ? "\n" : ""}${line}`;
      handed.keep(problems.value);
    } }, line));
  document.querySelector("#shelf").replaceChildren(...lines.map(take));
}

function showNew(shown) {
  document.querySelector("#new-paper").hidden = !shown;
  fresh.setAttribute("aria-expanded", String(shown));
}

function show(paper) {
  if (!paper) return;
  name = paper.name;
  history.replaceState(null, "", `?paper=${encodeURIComponent(name)}`);
  opened.replaceChildren(
    ...paperSections(paper, {
      edit: (change) => step(() => server.edit(name, change)),
      check: () => step((hear) => server.check(name, hear)),
      freeze: () => step((hear) => server.freeze(name, hear)),
      correct: (cause) => step(() => server.correct(name, cause)),
      print: (order) => step((hear) => server.print(name, order, hear)),
    }),
  );
}

async function step(act) {
  const paper = await tried(act);
  if (!paper) return;
  show(paper);
  await refresh();
}

async function open(wanted) {
  showNew(false);
  await step(() => server.paper(wanted));
}

fresh.addEventListener("click", () => showNew(document.querySelector("#new-paper").hidden));

form.addEventListener("submit", async (event) => {
  event.preventDefault();
  const order = Object.fromEntries(new FormData(form));
  const drafted = await tried((hear) => server.draft({ ...order, versions: Number(order.versions), choices: Number(order.choices), seed: Number(order.seed) || 1 }, hear));
  if (!drafted) return;
  handed.keep("");
  showNew(false);
  show(drafted);
  await refresh();
});

const today = new Date();
form.elements.date.value = [today.getFullYear(), today.getMonth() + 1, today.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
const handed = new Kept("items");
if (name) await open(name);
else await refresh();
if (handed.text) {
  form.elements.problems.value = handed.text;
  if (!name) showNew(true);
}
form.elements.problems.addEventListener("input", () => handed.keep(form.elements.problems.value));
