// One paper as it lies open: how far it has come, its items, its versions, what is printed of it.
import { make, formula, counted } from "./element.js";
import { fileAddress } from "./tray-server.js";

const ANSWERED = { short: "in writing", choice: "by choice", integer: "by a number from 0 to 999" };

const STATES = ["draft", "checked", "frozen", "printed"];

/** draft → checked → frozen → printed, as far as it has come. */
export function way(state) {
  const now = STATES.indexOf(state);
  const step = (name, at) => make("span", { class: `step ${at === now ? "now" : at < now ? "reached" : ""}`, "aria-current": at === now ? "step" : undefined }, name);
  return make("span", { class: "way" }, ...STATES.map(step));
}

/** The sections of a paper; `act` has `edit`, `check`, `freeze`, `correct`, `print`. */
export function paperSections(paper, act) {
  const names = Object.keys(paper.items);
  const marks = Object.keys(paper.versions);
  return [
    head(paper, act),
    make("section", { "aria-label": "Items" }, make("h2", {}, counted(names.length, "item")), make("ol", { class: "entries" }, ...names.map((name) => entry(paper, name, act)))),
    ...(marks.length > 1 ? [compared(paper, marks)] : []),
    ...(isFinal(paper) ? [printing(paper, act)] : []),
  ];
}

const isFinal = (paper) => paper.state === "frozen" || paper.state === "printed";

function head(paper, act) {
  const does = (words, what) => make("button", { type: "button", onclick: what }, words);
  const section = make(
    "section",
    { class: "sheet-head", "aria-label": "The paper" },
    make("h2", {}, paper.title, way(paper.state)),
    make("p", {}, `${paper.date}, edition ${paper.edition}`, ...(paper.code ? [", paper code ", make("span", { class: "code" }, paper.code)] : []), "."),
    ...(paper.corrects ? [make("p", {}, `It corrects ${paper.corrects.code}: ${paper.corrects.cause}`)] : []),
    ...(paper.stale.length > 0 ? [make("p", { class: "refusal" }, `${counted(paper.stale.length, "key is", "keys are")} stale. Nothing is printed before the paper has been checked.`)] : []),
  );
  const steps = make("p", { class: "do" });
  if (!isFinal(paper)) steps.append(does("check it", act.check));
  if (paper.state === "checked" && paper.stale.length === 0) steps.append(does("freeze it", act.freeze));
  if (isFinal(paper)) steps.append(correction(act));
  section.append(steps);
  return section;
}

function correction(act) {
  const cause = make("input", { "aria-label": "why there is a new edition", placeholder: "why, in one sentence" });
  return make("span", { class: "cause" }, make("button", { type: "button", onclick: () => act.correct(cause.value) }, "begin a new edition"), " because ", cause);
}

function entry(paper, name, act) {
  const item = paper.items[name];
  const set = paper.set[name];
  const points = make("span", { class: "points" }, counted(item.points, "point"));
  const stale = paper.stale.includes(name);
  const body = make("div", {});
  if (item.prove !== undefined) {
    const pieces = item.prove.split("$").map((piece, at) => (at % 2 === 1 ? make("i", {}, piece) : piece));
    body.append(make("p", { class: "told" }, ...pieces, points));
  } else {
    body.append(statement(item, set, points), ...options(item, set));
    const row = make("div", { class: "key-row" }, keyLine(item, set, stale));
    body.append(row);
    if (!isFinal(paper)) {
      const [open, form] = change(name, item, act);
      row.append(open);
      body.append(form);
    }
  }
  const notes = [];
  if (stale) notes.push(make("div", { class: "note warning" }, make("p", {}, make("span", { class: "told" }, "Stale key:"), item.key ? " the statement was changed after it was read." : " the statement has not been read yet.")));
  else if (item.level) notes.push(make("div", { class: "note" }, make("p", {}, make("span", { class: "told" }, "Level:"), ` ${item.level.replace("-", "−")}, estimated.`)));
  return make("li", { "data-item": name }, make("div", { class: "entry" }, make("span", { class: "mark" }, `${name}.`), body), make("div", { class: "beside" }, ...notes));
}

function statement(item, set, points) {
  if (!set?.given) return make("p", { class: "told" }, `${item.given} ; ${item.find}`, points);
  const names = set.roots.flatMap((root, at) => [at > 0 ? ", " : "", rootName(root)]);
  const roots = names.length > 0 ? ["Let ", ...names, " be the roots of "] : ["Given is "];
  return make("p", { class: "told" }, ...roots, formula(set.given), ". Find ", formula(set.find), ".", points);
}

function rootName(root) {
  const [letter, index] = root.split("_");
  return make("i", {}, letter, index ? make("sub", {}, index) : "");
}

function options(item, set) {
  if (!item.options?.length || !set?.options) return [];
  return [make("ol", { class: "options" }, ...set.options.map((option, at) => make("li", { "data-letter": String.fromCharCode(65 + at), class: item.options[at] === item.key ? "key" : "" }, formula(option))))];
}

function keyLine(item, set, stale) {
  if (!item.key) return make("p", { class: "key-line stale" }, "no key yet");
  const shown = set?.key?.mathml ? formula(set.key) : make("span", { class: "words" }, item.key);
  return make("p", { class: `key-line ${stale ? "stale" : ""}` }, stale ? "stale key " : "key ", shown);
}

function change(name, item, act) {
  const given = make("input", { value: item.given, "aria-label": `polynomial of item ${name}`, spellcheck: "false", autocomplete: "off" });
  const find = make("input", { value: item.find, "aria-label": `ask of item ${name}`, spellcheck: "false", autocomplete: "off" });
  const points = make("input", { class: "few", value: item.points, inputmode: "numeric", "aria-label": `points of item ${name}` });
  const way = make("select", { "aria-label": `how item ${name} is answered` }, ...Object.entries(ANSWERED).map(([value, words]) => make("option", { value, selected: value === item.form }, words)));
  const options = make("input", { value: (item.options ?? []).join(", "), "aria-label": `options of item ${name}, ascending; empty to have them chosen at the next check`, placeholder: "options, chosen at the next check", spellcheck: "false", autocomplete: "off" });
  const fit = () => (options.hidden = way.value !== "choice");
  const form = make("form", { class: "change", hidden: true }, given, " ; ", find, " ; ", way, options, " ; ", points, make("button", { type: "submit" }, "write it"));
  way.addEventListener("change", fit);
  fit();
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const restated = given.value !== item.given || find.value !== item.find;
    const said = { item: name, given: given.value, find: find.value, form: way.value, points: Number.parseInt(points.value, 10) || 0 };
    act.edit(way.value === "choice" && !restated ? { ...said, options: options.value } : said);
  });
  const open = make("button", { type: "button", class: "edit", "aria-expanded": "false" }, "change");
  open.addEventListener("click", () => {
    form.hidden = !form.hidden;
    open.setAttribute("aria-expanded", String(!form.hidden));
    if (!form.hidden) given.focus();
  });
  return [open, form];
}

/** Item by item what stands in each version. */
function compared(paper, marks) {
  const places = paper.versions[marks[0]].length;
  const shown = marks.slice(0, 6);
  const cell = (mark, place) => {
    const name = paper.versions[mark][place];
    const set = paper.set[name];
    if (!set?.given) return make("td", {}, name);
    const level = paper.items[name].level;
    return make("td", {}, formula(set.given), " ", make("span", { class: paper.stale.includes(name) ? "stale" : "key" }, set.key.mathml ? formula(set.key) : set.key.text), level ? make("span", { class: "level" }, ` ${level.replace("-", "−")}`) : "");
  };
  return make(
    "section",
    { "aria-label": "Versions" },
    make("h2", {}, counted(marks.length, "version")),
    make(
      "div",
      { class: "versions-compared", tabindex: "0", role: "region", "aria-label": "Versions compared" },
      make(
        "table",
        {},
        make("caption", {}, marks.length > shown.length ? `The first ${shown.length}; all are on the comparison sheet. ` : "", "Polynomial, key and level."),
        make("thead", {}, make("tr", {}, make("th", { scope: "col" }, "item"), ...shown.map((mark) => make("th", { scope: "col" }, mark)))),
        make("tbody", {}, ...Array.from({ length: places }, (_, place) => make("tr", {}, make("th", { scope: "row" }, `${place + 1}`), ...shown.map((mark) => cell(mark, place))))),
      ),
    ),
  );
}

const DOCUMENTS = [
  ["sheet", "sheet", true], ["key", "key", true], ["solutions", "solutions", true], ["hints", "hints"], ["marks", "marking scheme"],
  ["routes", "all routes"], ["handout", "handout"], ["compare", "comparison sheet"], ["scored", "sheet with answers"],
];
const FORMATS = [["pdf", "PDF", true], ["html", "web page"], ["latex", "LaTeX"], ["text", "plain text"], ["qti", "QTI 3.0 (sheets)"]];

function printing(paper, act) {
  const box = (group) => ([value, words, checked]) => make("label", {}, make("input", { type: "checkbox", name: group, value, checked }), words);
  const documents = paper.corrects ? [...DOCUMENTS, ["erratum", "erratum with keys", true], ["notice", "notice for students", true]] : DOCUMENTS;
  const size = make("select", { name: "size", "aria-label": "size of print" }, ...[["11", "11 points"], ["18", "18 points, large print"], ["24", "24 points, large print"]].map(([value, words]) => make("option", { value }, words)));
  const sheet = make("select", { name: "sheet", "aria-label": "size of the sheet" }, make("option", { value: "a4" }, "A4"), make("option", { value: "letter" }, "US Letter"));
  const form = make(
    "form",
    { class: "column order-print" },
    make("fieldset", {}, make("legend", {}, "Print"), ...documents.map(box("document"))),
    make("fieldset", {}, make("legend", {}, "as"), ...FORMATS.map(box("format"))),
    make("p", { class: "order" }, "on ", sheet, " in ", size, "."),
    make("p", { class: "act" }, make("button", { type: "submit", id: "print" }, "Print")),
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const chosen = (group) => [...form.querySelectorAll(`[name=${group}]:checked`)].map((input) => input.value);
    act.print({ documents: chosen("document"), formats: chosen("format"), size: Number(size.value), letter: sheet.value === "letter" });
  });
  const files = paper.printed.map((file) => make("li", {}, make("a", { href: fileAddress(paper.name, file), download: file }, file)));
  return make("section", { class: "printing", "aria-label": "Printing" }, make("h2", {}, "Print"), form, ...(files.length > 0 ? [make("ul", { class: "files", "aria-label": "Printed files" }, ...files)] : []));
}
