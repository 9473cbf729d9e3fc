// The order as it stands in the sentences of the composer's table, and how it is kept.
import { make } from "./element.js";
import { setPickers } from "./pickers.js";
import { plain } from "./words.js";

const KEY = "rootwright.order";
const LISTS = ["with", "without", "traps", "kinds"];
const form = document.getElementById("order");
let pick;

/** Fills the lists of the sentences and takes up what was kept; `changed` hears of every change. */
export function layOrder({ families, routes, slips, kinds }, changed) {
  const { elements } = form;
  elements.family.append(...families.map(({ name, words }) => make("option", { value: name }, words)));
  for (const select of [elements.route, elements.than]) {
    select.append(...Object.entries(routes).map(([name, title]) => make("option", { value: name }, title)));
  }
  elements.than.value = "build-from-e";
  const kept = keptOrder();
  write(kept);
  const named = Object.fromEntries(kinds.map((kind) => [kind, kind.replaceAll("-", " ")]));
  pick = setPickers({ with: routes, without: routes, traps: Object.fromEntries(Object.keys(slips).map((slip) => [slip, plain(slip)])), kinds: named }, heard);
  pick((name) => [kept[name] ?? []].flat());
  fit();
  function heard() {
    fit();
    keep();
    changed();
  }
  form.addEventListener("input", (event) => {
    if (event.target.type !== "checkbox") heard();
  });
}

/** Writes what was kept, or read, into the sentences; lists have pickers of their own. */
function write(said) {
  const { elements } = form;
  for (const [name, value] of Object.entries(said)) if (elements[name] && !LISTS.includes(name)) elements[name].value = value;
  elements.detail.dataset.kind = elements.kind.value;
}

/** Takes an order as the words of an order file say it: {name: text or list}. */
export function takeOrder(said) {
  const asking = said.surprise ? { asking: "surprise" } : said.family ? { asking: "family", family: said.family } : { asking: "ask", ask: said.ask };
  const [low, high = low] = said.lead.split("..");
  const kind = /^[/=]/.test(said.answer) ? said.answer[0] : said.answer.includes("..") ? ".." : said.answer;
  const [shorter] = said.shorter ?? [];
  const [, route, than, times] = /^(\S+) than (\S+) by (\S+)$/.exec(shorter ?? "") ?? [];
  write({
    ...asking,
    ...Object.fromEntries(["degree", "size", "roots", "real", "choices", "many", "seed"].map((name) => [name, said[name]])),
    low,
    high,
    kind,
    detail: said.answer.replace(/^[/=]/, ""),
    slips: said.slips ?? form.elements.slips.value,
    level: said.level ?? "",
    ...(shorter ? { comparing: "shorter", route, than, times } : { comparing: "" }),
  });
  pick((name) => said[name] ?? []);
  fit();
  keep();
}

/** The order in the words of an order file. */
export function order() {
  const said = Object.fromEntries(new FormData(form));
  const picked = (name) => new FormData(form).getAll(name);
  const asks = {
    ask: { ask: said.ask },
    family: { family: said.family },
    surprise: { surprise: "true", ...(picked("kinds").length > 0 ? { kinds: picked("kinds") } : {}) },
  }[said.asking];
  return {
    ...asks,
    degree: said.degree,
    size: said.size,
    lead: `${said.low}..${said.high}`,
    roots: said.roots,
    real: said.real,
    answer: { "..": said.detail, "/": `/${said.detail}`, "=": `=${said.detail}` }[said.kind] ?? said.kind,
    with: picked("with"),
    without: picked("without"),
    shorter: said.comparing ? [`${said.route} than ${said.than} by ${said.times}`] : [],
    slips: said.slips,
    traps: picked("traps"),
    level: said.level,
    choices: said.choices,
    many: said.many,
    seed: said.seed,
  };
}

/** The same order for the command line. */
export function command() {
  const { ask, family, surprise, kinds, with: must, without, shorter, traps, ...rest } = order();
  const quoted = (text) => (/^[\w.+-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`);
  const wish = (name, value) => (value === undefined || value === "" || value.length === 0 ? "" : ` --${name} ${quoted([value].flat().join(","))}`);
  const asked = ask !== undefined ? wish("ask", ask) : family ? wish("family", family) : ` --surprise${wish("kinds", kinds)}`;
  const others = Object.entries(rest).map(([name, value]) => wish(name, value));
  return `./rootwright compose${asked}${others.join("")}${wish("with", must)}${wish("without", without)}${wish("shorter", shorter)}${wish("traps", traps)}`;
}

/** What belongs to another choice than the one made is not shown. */
function fit() {
  const { asking, ask, family, kind, detail, comparing } = form.elements;
  ask.hidden = asking.value !== "ask";
  family.hidden = asking.value !== "family";
  form.querySelector("[data-picks=kinds]").hidden = asking.value !== "surprise";
  document.getElementById("shorter").hidden = comparing.value === "";
  detail.hidden = ["whole", "any"].includes(kind.value);
  const usual = { "..": "0..999", "/": "12", "=": String(new Date().getFullYear()) }[kind.value] ?? "";
  if (!detail.hidden && (detail.value === "" || detail.dataset.kind !== kind.value)) detail.value = usual;
  detail.dataset.kind = kind.value;
}

function keep() {
  const said = new FormData(form);
  const lists = Object.fromEntries(LISTS.map((name) => [name, said.getAll(name)]));
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...Object.fromEntries(said), ...lists }));
  } catch {
    // A browser that keeps nothing still works; only a reload forgets.
  }
}

function keptOrder() {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? "{}");
  } catch {
    return {};
  }
}
