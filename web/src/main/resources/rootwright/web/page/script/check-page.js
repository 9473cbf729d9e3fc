// Checking somebody's working: the statement, the lines as they were written, and the same lines marked.
import { Statement } from "./statement.js";
import { sentenceFor } from "./sentence.js";
import { draftHere, keepDraft } from "./draft.js";
import { markedSections } from "./marked.js";
import { arrangeMargin, keepMarginArranged } from "./margin.js";
import { lightRoots, nameRoots } from "./light.js";
import { Kept } from "./kept.js";
import * as server from "./server.js";

const CHECK_AFTER = 350;
const kept = new Kept("lines");
const EXAMPLE = {
  polynomial: "3x^3 - 7x^2 + 2x - 5",
  find: "\u03a3 r^2",
  lines: "e1 = 7/3, e2 = 2/3\n\u03a3 r^2 = e1^2 - e2\n= 49/9 - 2/3 = 43/9",
};

const place = document.getElementById("working");
const lines = document.getElementById("lines");
let statement;
let checking;
let timer;

function open(sentences) {
  const query = new URLSearchParams(location.search);
  const named = {};
  for (const name of ["roots", "unknown"]) if (query.get(name)) named[name] = query.get(name);
  const draft = draftHere();
  const drafted = draft && sentences.find((sentence) => sentence.name === draft.kind);
  const given = query.has("find") ? { polynomial: query.get("polynomial") ?? "", find: query.get("find") } : EXAMPLE;
  const said = sentenceFor(sentences, given.polynomial, given.find);
  statement.show(drafted ?? said?.sentence ?? sentences[0], drafted ? draft.blanks : (said?.blanks ?? {}), drafted ? (draft.named ?? named) : named);
  return check(statement.readBlanks());
}

function checkSoon() {
  clearTimeout(timer);
  timer = setTimeout(() => check(), CHECK_AFTER);
}

async function check(reading) {
  checking?.abort();
  const mine = (checking = new AbortController());
  const typed = statement.typed;
  document.getElementById("work-it").href = `/?${new URLSearchParams(typed)}`;
  if (lines.value.trim() === "") {
    place.replaceChildren();
    return;
  }
  if (place.childElementCount > 0) place.setAttribute("aria-busy", "true");
  try {
    const review = await server.check({ ...typed, lines: lines.value }, mine.signal, (state) => waiting(state, mine));
    if (mine !== checking) return;
    show(review, typed);
  } catch (refused) {
    await reading;
    if (mine !== checking) return;
    place.replaceChildren();
    if (refused.name === "AbortError") statement.say("Stopped.");
    else statement.refuse(refused.error ?? { text: "The page itself failed; reload it." });
    if (!refused.error && refused.name !== "AbortError") console.error(refused);
  } finally {
    if (mine === checking) place.removeAttribute("aria-busy");
    arrangeMargin();
  }
}

function show(review, typed) {
  const search = `?${new URLSearchParams(typed)}`;
  if (search !== location.search) history.replaceState(null, "", search);
  keepDraft(statement.sentence.name, statement.texts, statement.named);
  place.replaceChildren(...markedSections(review));
  nameRoots(document.getElementById("leaf"));
  const [whole] = place.querySelectorAll(".verdict");
  document.getElementById("herald").textContent = whole.textContent;
}

function waiting({ text }, mine) {
  place.replaceChildren();
  const stop = document.createElement("button");
  stop.type = "button";
  stop.textContent = "Stop";
  stop.addEventListener("click", () => mine.abort());
  const said = document.createElement("p");
  said.className = "waiting";
  said.append(`${text} \u2026 `, stop);
  place.append(said);
}

lightRoots();
keepMarginArranged();
lines.value = kept.text ?? EXAMPLE.lines;
lines.addEventListener("input", () => {
  kept.keep(lines.value);
  checkSoon();
});
const sentences = await server.kinds();
statement = new Statement(sentences, {
  changed: () => clearTimeout(timer),
  read: checkSoon,
  committed: () => {},
  pasted: () => false,
});
await open(sentences);
