// The shelf: what stands there, and how a problem is related to it or to another one.
import { make, formula } from "./element.js";
import * as server from "./server.js";

const LOOK_AFTER = 200;

const words = document.querySelector("[name=words]");
const problems = document.getElementById("problems");
const form = document.getElementById("relate");
const relations = document.getElementById("relations");
const refusal = document.getElementById("refusal");
let timer;

async function look() {
  try {
    const { problems: found } = await server.onShelf(words.value);
    const none = words.value.trim() ? "No line has these words." : "The shelf is empty. Problems are kept from their own page, from the composer\u2019s table and from a list.";
    problems.replaceChildren(...(found.length > 0 ? found.map(line) : [make("li", {}, make("p", { class: "remark" }, none))]));
  } catch (refused) {
    refusal.textContent = refused.message;
  }
}

function line({ line: number, text, query, given, find }) {
  const said = given ? [formula(given), "; find ", formula(find)] : [text];
  const open = query ? make("span", { class: "does" }, make("a", { href: `/?${query}` }, "open it")) : "";
  const compare = query ? make("span", { class: "does" }, make("button", { type: "button", onclick: () => ask(text) }, "compare it")) : "";
  return make("li", {}, make("div", { class: "entry-line" }, make("span", { class: "number" }, `${number}`), make("div", { class: "outcome" }, make("span", {}, ...said), open, compare)));
}

/** Puts a problem of the shelf into the sentence below. */
function ask(text) {
  const [polynomial, find] = text.split(";").map((part) => part.trim());
  form.elements.with.value = "one";
  form.elements.earlier.value = polynomial;
  form.elements["earlier-find"].value = find;
  fit();
  form.elements.polynomial.focus();
}

function fit() {
  document.getElementById("earlier").hidden = form.elements.with.value === "shelf";
}

function later() {
  return { polynomial: form.elements.polynomial.value, find: form.elements.find.value };
}

async function compare() {
  refusal.textContent = "";
  relations.replaceChildren();
  const { elements } = form;
  const one = elements.with.value === "one";
  const earlier = one ? { polynomial: elements.earlier.value, find: elements["earlier-find"].value } : undefined;
  try {
    const found = await server.twins({ later: later(), earlier });
    say(...told(found, one));
  } catch (refused) {
    refusal.textContent = refused.message;
  }
}

function told(found, one) {
  if (!found.related) return [make("li", {}, one ? "No: they are not related." : "No: it is not related to any problem of the shelf.")];
  const all = one ? [found] : found.twins;
  return all.map(({ line: number, problem, text, same }) =>
    make("li", {}, make("b", {}, same ? "Yes: " : "Related: "), `${text}${same ? "" : ", which is told and no more"}`, ...(problem ? [`; line ${number}, `, make("code", {}, problem)] : []), "."),
  );
}

function say(...lines) {
  relations.replaceChildren(make("ul", { class: "relations" }, ...lines));
}

async function put() {
  refusal.textContent = "";
  try {
    const { kept, already, relation } = await server.shelve(later());
    say(make("li", {}, kept ? "It is on the shelf." : `The shelf has it already, ${relation}: line ${already}.`));
    await look();
  } catch (refused) {
    refusal.textContent = refused.message;
  }
}

words.addEventListener("input", () => {
  clearTimeout(timer);
  timer = setTimeout(look, LOOK_AFTER);
});
form.elements.with.addEventListener("change", fit);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  compare();
});
document.getElementById("put").addEventListener("click", put);
fit();
await look();
