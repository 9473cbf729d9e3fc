// The problem page: from the address to the statement, from the statement to the working.
import { Statement } from "./statement.js";
import { sentenceFor } from "./sentence.js";
import { showKinds } from "./kinds.js";
import { draftHere, keepDraft } from "./draft.js";
import { showWorking, clearWorking, fadeWorking, showWaiting } from "./working.js";
import { keepMarginArranged } from "./margin.js";
import { lightRoots } from "./light.js";
import { showLately } from "./lately.js";
import { Profile } from "./profile.js";
import { counted } from "./element.js";
import * as server from "./server.js";

const WORK_AFTER = 260;

let statement;
let profile;
let sentences;
let working;
let timer;
let newEntry = true;

/** The address that says this statement. */
function queryOf(typed) {
  const query = new URLSearchParams({ polynomial: typed.polynomial, find: typed.find });
  for (const name of ["roots", "unknown"]) if (typed[name]) query.set(name, typed[name]);
  return query.toString();
}

/** Fills the page from the address, or from what was being typed there. */
async function open() {
  const query = new URLSearchParams(location.search);
  const named = {};
  for (const name of ["roots", "unknown"]) if (query.get(name)) named[name] = query.get(name);
  const draft = draftHere();
  const said = query.has("polynomial") ? sentenceFor(sentences, query.get("polynomial"), query.get("find") ?? "") : undefined;
  const drafted = draft && sentences.find((sentence) => sentence.name === draft.kind);
  const sentence = drafted ?? said?.sentence ?? sentences[0];
  const texts = drafted ? draft.blanks : (said?.blanks ?? sentence.example);
  newEntry = true;
  present(sentence, texts, drafted ? (draft.named ?? named) : named);
  await work(statement.readBlanks());
}

function present(sentence, texts, named) {
  statement.show(sentence, texts, named);
  showKinds(sentences, sentence, choose);
}

async function choose(sentence) {
  present(sentence, { polynomial: statement.texts.polynomial, ...withoutPolynomial(sentence.example) }, statement.named);
  newEntry = true;
  keepDraft(sentence.name, statement.texts, statement.named);
  const [first] = [...statement.blanks.values()].filter((blank) => blank.name !== "polynomial");
  (first ?? statement.blanks.get("polynomial")).input.focus();
  await statement.typeset();
}

/** A pasted line "polynomial ; ask", as lists of problems have them, fills the whole sentence. */
function takeLine(text) {
  const [polynomial, ...rest] = text.trim().split(";");
  const find = rest.join(";").trim();
  if (!find || text.trim().includes("\n")) return false;
  const said = sentenceFor(sentences, polynomial.trim(), find);
  if (!said) return false;
  present(said.sentence, said.blanks, {});
  newEntry = true;
  statement.changed();
  [...statement.blanks.values()].at(-1).input.focus();
  return true;
}

function withoutPolynomial({ polynomial, ...rest }) {
  return rest;
}

/** Works what stands in the blanks, while they may still be being read. */
async function work(reading, patient = false) {
  working?.abort();
  const mine = (working = new AbortController());
  const typed = statement.typed;
  fadeWorking();
  const stop = () => mine.abort();
  try {
    const solution = await server.work(patient ? { ...typed, patient } : typed, mine.signal, (progress) => showWaiting(told(progress), stop));
    if (mine !== working) return;
    remember(typed, solution);
    showWorking(solution, typed, profile);
    await showLately();
  } catch (refused) {
    await reading;
    if (mine !== working) return;
    clearWorking();
    if (refused.name === "AbortError") statement.say("Stopped.");
    else if (refused.error?.code === "too-long" && !patient) statement.offer(refused.error.text, "Give it ten minutes", () => work(undefined, true));
    else statement.refuse(refused.error ?? { text: "The page itself failed; reload it." });
    if (!refused.error && refused.name !== "AbortError") console.error(refused);
  }
}

function told({ done, total, text }) {
  return total > 0 ? `${text} (${done} of ${counted(total, "part")})` : text;
}

/** The address becomes the problem: a new one per problem, the same one while it is being typed. */
function remember(typed, solution) {
  const search = `?${queryOf(typed)}`;
  if (search !== location.search) {
    if (newEntry && location.search !== "") history.pushState(null, "", search);
    else history.replaceState(null, "", search);
    newEntry = false;
  }
  keepDraft(statement.sentence.name, statement.texts, statement.named);
  document.title = `${solution.statement} \u2014 Rootwright`;
}

async function begin() {
  lightRoots();
  keepMarginArranged();
  const [all, kept] = await Promise.all([server.kinds(), server.profile()]);
  sentences = all;
  profile = new Profile(kept, () => work());
  statement = new Statement(sentences, {
    changed: () => {
      clearTimeout(timer);
      working?.abort();
      working = undefined;
      fadeWorking();
    },
    read: () => {
      clearTimeout(timer);
      timer = setTimeout(() => work(), WORK_AFTER);
    },
    committed: () => (newEntry = true),
    pasted: takeLine,
  });
  addEventListener("popstate", open);
  await open();
}

begin().catch((lost) => {
  document.getElementById("refusal").textContent = lost.message;
});
