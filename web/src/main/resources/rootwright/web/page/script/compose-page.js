// The composer's table: an order in, checked problems out, one after another.
import { make, counted } from "./element.js";
import { composedSection } from "./composed.js";
import { layOrder, order, takeOrder } from "./order.js";
import { avoided, layAvoiding } from "./avoiding.js";
import { showStopped } from "./stopped.js";
import { readYaml } from "./yaml.js";
import { composedTaken } from "./composed-taken.js";
import { weighSoon, letCopy } from "./weigh.js";
import { arrangeMargin, keepMarginArranged } from "./margin.js";
import { inked } from "./words.js";
import * as server from "./server.js";

const place = document.getElementById("working");
const progress = document.getElementById("progress");
const refusal = document.getElementById("refusal");
const stop = document.getElementById("stop");
let running;
let stopping;
let drawn = 0;

/** Runs one job of the composer; `hear` is told of every problem as it is found, and of the counts. */
async function run(path, body, words, hear) {
  running?.abort();
  const mine = (running = new AbortController());
  refusal.textContent = "";
  progress.textContent = words;
  stop.hidden = false;
  stopping = undefined;
  try {
    return await server.compose(path, body, mine.signal, {
      progress: (state) => {
        progress.textContent = `${words} ${state.text}.`;
        hear.counted?.(state);
      },
      found: hear.found,
      stop: (early) => (stopping = early),
    });
  } catch (refused) {
    refusal.textContent = refused.name === "AbortError" ? "Stopped. What was found by then is below." : refused.message;
    return undefined;
  } finally {
    if (mine === running) {
      stop.hidden = true;
      progress.textContent = "";
    }
  }
}

async function compose() {
  const { seed } = order();
  drawn = 0;
  const counts = make("section", { class: "counts", "aria-label": "What the wishes left" });
  place.replaceChildren(counts);
  let found = 0;
  const composition = await run("/api/compose", { order: order(), besides: avoided(), kept: true }, "Composing \u2026", {
    found: (problem) => {
      counts.before(section(problem, ++found, seed));
      arrangeMargin();
    },
    counted: (state) => showCounts(counts, { ...state, seed }),
  });
  if (!composition) {
    if (found === 0) counts.remove();
    if (found === 0 && refusal.textContent.startsWith("Stopped")) refusal.textContent = "Stopped.";
    return;
  }
  showCounts(counts, composition);
  place.append(composedTaken(composition.problems, "problems"));
  await showStopped(goOn);
  if (composition.ending === "stopped") refusal.textContent = "Stopped. The order is kept, and the same order goes on from here.";
  else if (found < Number(order().many)) refusal.textContent = fewer(composition, found);
  arrangeMargin();
}

/** An order that was stopped before, written into the sentences again and gone on with. */
function goOn(said) {
  takeOrder(said);
  weighSoon();
  return compose();
}

/** Five problems, each with one idea more than those before it. */
async function climb(form) {
  const wish = Object.fromEntries(new FormData(form));
  place.replaceChildren();
  const body = { degree: Number(wish.degree), size: Number(wish.size), seed: Number(wish.seed) || 1, besides: avoided() };
  const found = await run("/api/climb", body, "Looking for a climb \u2026", {});
  if (!found) {
    if (refusal.textContent.startsWith("Stopped")) refusal.textContent = "Stopped.";
    return;
  }
  found.problems.forEach((problem, at) => place.append(section(problem, at + 1, wish.seed)));
  if (found.problems.length > 0) place.append(composedTaken(found.problems, "climb"));
  if (found.missing) refusal.textContent = `There are fewer than five: ${found.missing}.`;
  place.querySelector("h2")?.setAttribute("tabindex", "-1");
  place.querySelector("h2")?.focus();
  arrangeMargin();
}

/** Why there are fewer than wanted, and what would help. */
function fewer({ ending, relaxations }, found) {
  const all = {
    exhausted: found === 0 ? "None exists." : `There are no more: every candidate was looked at.`,
    "given-up": found === 0 ? "None was found among those that were worked." : "No more were found among those that were worked.",
  }[ending] ?? "";
  const help = relaxations.map((relaxation) => relaxation.text).join(" ");
  return help ? `${all} What would help: ${help}` : all;
}

function section(problem, number, seed) {
  const same = { ...order(), many: "1", seed: String(seed) };
  const next = () => String(whole(seed) + BigInt(++drawn));
  return composedSection(problem, { number, seed }, {
    another: (here) => more(here, "/api/compose", { order: { ...askedAs(same, problem), seed: next() }, besides: [...there(), ...avoided()] }, "one more like it"),
    numbers: (here) => more(here, "/api/sibling", { ...stated(problem), seed: Number(next()) }, "one with other numbers"),
    harder: (here) => more(here, "/api/harder", { ...stated(problem), seed: Number(next()), besides: [...there(), ...avoided()] }, "a harder one"),
    told: (text) => (progress.textContent = text),
  });
}

/** A seed may be larger than a number of the page. */
function whole(text) {
  try {
    return BigInt(text);
  } catch {
    return 1n;
  }
}

/** The same order with the ask of one problem, whatever family it came from. */
function askedAs({ family, surprise, kinds, ...rest }, problem) {
  return { ...rest, ask: problem.find };
}

const stated = ({ polynomial, find }) => ({ polynomial, find });

/** Every problem on the page, so that it does not come again. */
const there = () => [...place.querySelectorAll(".composed")].map(({ dataset }) => ({ polynomial: dataset.polynomial, find: dataset.find }));

/** Puts what a request brings behind the problem it came from. */
async function more(here, path, body, words) {
  const composition = await run(path, body, `Looking for ${words} \u2026`, {});
  if (!composition) return;
  const [found] = composition.problems;
  if (!found) refusal.textContent = `There is not ${words} within these wishes.`;
  else {
    const fresh = section(found, place.querySelectorAll(".composed").length + 1, body.order?.seed ?? String(body.seed));
    here.after(fresh);
    fresh.querySelector("h2").setAttribute("tabindex", "-1");
    fresh.querySelector("h2").focus();
  }
  arrangeMargin();
}

/** What each wish left of the candidates. */
function showCounts(section, { counts = [], rejected = [], seed }) {
  const line = (words, number) => make("li", {}, make("span", {}, ...inked(words)), make("span", {}, number));
  section.replaceChildren(
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

document.getElementById("order").addEventListener("submit", (event) => {
  event.preventDefault();
  compose();
});
document.getElementById("climb").addEventListener("submit", (event) => {
  event.preventDefault();
  climb(event.target);
});
document.getElementById("take-order").addEventListener("click", async () => {
  const told = document.getElementById("taken-order");
  try {
    const { yaml } = await server.readOrder(document.getElementById("pasted").value);
    takeOrder(readYaml(yaml));
    told.textContent = " \u2014 it stands in the sentences now.";
    weighSoon();
  } catch (refused) {
    told.textContent = ` \u2014 ${refused.message}`;
  }
});
stop.addEventListener("click", () => (stopping ? stopping() : running?.abort()));
letCopy();
layAvoiding();
keepMarginArranged();
layOrder(await server.orderWords(), weighSoon);
weighSoon();
await showStopped(goOn);
