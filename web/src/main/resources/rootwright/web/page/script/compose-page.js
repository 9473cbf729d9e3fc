// The composer's table: an order in, checked problems out.
import { make, counted } from "./element.js";
import { composedSection } from "./composed.js";
import { arrangeMargin, keepMarginArranged } from "./margin.js";
import * as server from "./server.js";

const KEY = "rootwright.order";
const form = document.getElementById("order");
const place = document.getElementById("working");
const progress = document.getElementById("progress");
const refusal = document.getElementById("refusal");
const stop = document.getElementById("stop");
let running;

/** What stands in the sentences. */
function order() {
  const { kind, detail, ...rest } = Object.fromEntries(new FormData(form));
  return { ...rest, answer: { whole: "whole", "..": detail, "/": `/${detail}`, "=": `=${detail}` }[kind] };
}

/** The detail of the answer is asked for only where there is one. */
function fitDetail() {
  const { kind, detail } = form.elements;
  detail.hidden = kind.value === "whole";
  const usual = { "..": "0..999", "/": "12", "=": String(new Date().getFullYear()) }[kind.value] ?? "";
  if (!detail.hidden && (detail.value === "" || detail.dataset.kind !== kind.value)) detail.value = usual;
  detail.dataset.kind = kind.value;
}

function keep() {
  try {
    localStorage.setItem(KEY, JSON.stringify(Object.fromEntries(new FormData(form))));
  } catch {
    // Nothing is kept then.
  }
}

function restore() {
  let kept = {};
  try {
    kept = JSON.parse(localStorage.getItem(KEY) ?? "{}");
  } catch {
    // The usual order stands.
  }
  for (const [name, value] of Object.entries(kept)) if (form.elements[name]) form.elements[name].value = value;
  form.elements.detail.dataset.kind = form.elements.kind.value;
  fitDetail();
}

/** Runs one job of the composer; the words tell what it is. */
async function run(path, body, words) {
  running?.abort();
  const mine = (running = new AbortController());
  refusal.textContent = "";
  progress.textContent = words;
  stop.hidden = false;
  try {
    return await server.compose(path, body, mine.signal, { progress: (state) => (progress.textContent = `${words} ${state.text}.`) });
  } catch (refused) {
    if (refused.name === "AbortError") refusal.textContent = "Stopped.";
    else refusal.textContent = refused.message;
    return undefined;
  } finally {
    if (mine === running) {
      stop.hidden = true;
      progress.textContent = "";
    }
  }
}

async function compose() {
  keep();
  const composition = await run("/api/compose", order(), "Composing \u2026");
  if (!composition) return;
  place.replaceChildren(...composition.problems.map((problem, at) => section(problem, at + 1)), countsSection(composition));
  if (composition.problems.length === 0) {
    const help = composition.relaxations.map((relaxation) => relaxation.text).join("; ");
    const all = composition.exhausted ? "None exists." : "None was found.";
    refusal.textContent = help ? `${all} What would help: ${help}.` : all;
  }
  arrangeMargin();
}

function section(problem, number) {
  return composedSection(problem, number, {
    sibling: async (here) => after(here, await run("/api/sibling", { polynomial: problem.polynomial, find: problem.find, seed: Date.now() % 100000 }, "Looking for one more like it \u2026"), "one more like it"),
    harder: async (here) => {
      const level = String(Math.min(5, (problem.level?.number ?? 2) + 1));
      after(here, await run("/api/compose", { ...order(), level, many: "1" }, "Looking for a harder one \u2026"), "a harder one");
    },
    told: (text) => (progress.textContent = text),
  });
}

/** Puts what a request brought behind the problem it came from. */
function after(here, composition, words) {
  if (!composition) return;
  const [found] = composition.problems;
  if (!found) refusal.textContent = `There is not ${words} within these wishes.`;
  else {
    const fresh = section(found, place.querySelectorAll(".composed").length + 1);
    here.after(fresh);
    fresh.querySelector("h2").setAttribute("tabindex", "-1");
    fresh.querySelector("h2").focus();
  }
  arrangeMargin();
}

/** What each wish left of the candidates. */
function countsSection({ counts, rejected, seed }) {
  const line = (words, number) => make("li", {}, make("span", {}, words), make("span", {}, number));
  return make(
    "section",
    { class: "counts" },
    make("h2", {}, "What the wishes left"),
    make(
      "ul",
      {},
      ...counts.map(({ text, seen, rejected: away }) => line(text, `${(seen - away).toLocaleString("en")} of ${seen.toLocaleString("en")}`)),
      ...rejected.map(({ reason, count }) => line(`turned away after working: ${reason}`, counted(count, "problem"))),
      line("the seed that gives this again", String(seed)),
    ),
  );
}

/** The same order for the command line. */
function command() {
  const { many, degree, size, lead, ask, answer, roots, real, slips, level, choices, seed } = order();
  const quoted = (text) => `'${text.replaceAll("'", "'\\''")}'`;
  const optional = (name, value) => (value ? ` --${name} ${value}` : "");
  return `./rootwright compose --ask ${quoted(ask)} --degree ${degree} --size ${size} --lead ${lead} --answer ${quoted(answer)} --roots ${roots}${optional("real", real)} --slips ${slips}${optional("level", level)} --choices ${choices} --many ${many} --seed ${seed}`;
}

form.addEventListener("submit", (event) => {
  event.preventDefault();
  compose();
});
form.addEventListener("input", () => {
  fitDetail();
  keep();
});
stop.addEventListener("click", () => running?.abort());
document.getElementById("copy-order").addEventListener("click", async () => {
  try {
    await navigator.clipboard.writeText(command());
    progress.textContent = `Copied: ${command()}`;
  } catch {
    progress.textContent = command();
  }
});
restore();
keepMarginArranged();
