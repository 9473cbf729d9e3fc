// The board plan: a topic becomes a plan, the plan becomes slides, and every edit is checked again.
import { make, draw } from "./element.js";
import { numberLines } from "./numbered.js";
import { Kept } from "./kept.js";
import * as server from "./server.js";

const CHECK_AFTER = 600;
const order = document.getElementById("order");
const plan = document.getElementById("plan");
const number = numberLines(plan, document.getElementById("numbers"));
const refusal = document.getElementById("refusal");
const slides = document.getElementById("slides");
const times = document.getElementById("times");
const complaints = document.getElementById("complaints");
const take = document.getElementById("take");
const FILES = ["html", "pdf", "pdf-steps", "vtt", "srt", "chapters", "narration", "chalk", "plan"];
const kept = new Kept("plan");
let checking;
let timer;

async function begin() {
  const words = await server.lessonWords();
  for (const [name, title] of Object.entries(words.topics)) {
    order.elements.topic.append(make("option", { value: name }, inSentence(title)));
  }
  const wanted = new URLSearchParams(location.search).get("topic");
  order.elements.topic.value = words.topics[wanted] ? wanted : "newton-identities";
  if (kept.text) {
    plan.value = kept.text;
    document.getElementById("plan-section").hidden = false;
    number();
    check();
  }
  take.append("Take away ");
  FILES.forEach((form, k) => {
    take.append(
      make("button", { type: "button", title: words.forms[form], onclick: () => download(form) }, form),
      k < FILES.length - 1 ? ", " : ". ",
    );
  });
  take.append(
    "Captions say formulas ",
    make("select", { id: "formulas", "aria-label": "how captions say formulas" }, make("option", { value: "spoken" }, "in words"), make("option", { value: "written" }, "in signs")),
    ". Or make ",
    make("button", { type: "button", id: "film", onclick: film }, "a silent film"),
    " to speak over. ",
    make("span", { id: "taken", role: "status" }),
  );
}

/** A title within a sentence: only a name of a person keeps its capital letter. */
function inSentence(title) {
  return /^\w+['\u2019]s /.test(title) ? title : title.charAt(0).toLowerCase() + title.slice(1);
}

async function makePlan(event) {
  event.preventDefault();
  refusal.textContent = "";
  const wishes = Object.fromEntries(new FormData(order));
  wishes.minutes = Number(wishes.minutes) || 0;
  try {
    const reply = await server.lessonPlan(wishes, new AbortController().signal);
    plan.value = reply.plan;
    kept.keep(plan.value);
    document.getElementById("plan-section").hidden = false;
    number();
    await check();
  } catch (refused) {
    refusal.textContent = refused.message;
  }
}

async function check() {
  checking?.abort();
  const mine = (checking = new AbortController());
  slides.setAttribute("aria-busy", "true");
  try {
    const lesson = await server.lesson(plan.value, mine.signal);
    if (mine !== checking) return;
    complaints.replaceChildren(lesson.complaints.length ? make("ul", {}, ...lesson.complaints.map(complaint)) : "");
    if (lesson.slides) show(lesson);
  } catch (refused) {
    if (refused.name !== "AbortError" && mine === checking) {
      complaints.replaceChildren(refused.message);
    }
  } finally {
    if (mine === checking) slides.removeAttribute("aria-busy");
  }
}

function complaint({ line, text, found, mend }) {
  const place = line > 0 ? make("button", { type: "button", onclick: () => goTo(line) }, `Line ${line}:`) : "";
  return make("li", {}, place, ` ${text} `, found ? make("code", {}, found) : "", mend ? ` ${mend}` : "");
}

function goTo(line) {
  const lines = plan.value.split("\n");
  const from = lines.slice(0, line - 1).join("\n").length + (line > 1 ? 1 : 0);
  plan.focus();
  plan.setSelectionRange(from, from + lines[line - 1].length);
  plan.scrollTop = (line - 4) * parseFloat(getComputedStyle(plan).lineHeight);
}

function show(lesson) {
  times.replaceChildren(
    make(
      "table",
      {},
      make("tr", {}, ...["from", "time", "step", "late"].map((head) => make("th", { scope: "col" }, head))),
      ...lesson.steps.map((step) =>
        make(
          "tr",
          {},
          make("td", { class: "clock" }, step.from),
          make("td", { class: "clock" }, step.time),
          make("td", {}, step.kind === step.title ? step.title : `${step.kind}: ${step.title}`),
          make("td", { class: "late" }, step.late ? `${step.late} too late` : ""),
        ),
      ),
      make("tr", {}, make("td", { class: "clock" }, lesson.length), make("td", {}), make("td", {}, `end, ${lesson.slides.length} slides`), make("td", {})),
    ),
  );
  slides.replaceChildren(drawn(lesson.glyphs, { class: "glyphs", "aria-hidden": "true" }), ...lesson.slides.map(slide));
}

function slide({ title, description, drawing, said }) {
  return make(
    "figure",
    {},
    drawn(drawing, { viewBox: "0 0 1920 1080", role: "img", "aria-label": description }),
    make("figcaption", {}, make("ol", { "aria-label": `What is said: ${title}` }, ...said.map(({ at, text }) => make("li", {}, make("span", {}, at), text)))),
  );
}

/** A drawing of the server; what is in it is shapes only. */
function drawn(inner, attributes) {
  const parsed = new DOMParser().parseFromString(
    `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink">${inner}</svg>`,
    "image/svg+xml",
  );
  const children = [...parsed.documentElement.childNodes].map((node) => document.importNode(node, true));
  children.forEach((child) => child.removeAttribute?.("role"));
  children.forEach((child) => child.removeAttribute?.("aria-label"));
  return draw("svg", attributes, ...children);
}

async function download(form) {
  const taken = document.getElementById("taken");
  taken.textContent = " …";
  try {
    const file = await server.lessonFile(plan.value, form, document.getElementById("formulas").value, new AbortController().signal);
    if (file.complaints) {
      taken.textContent = " Mend the plan first.";
      return;
    }
    const bytes = Uint8Array.from(atob(file.base64), (letter) => letter.charCodeAt(0));
    const link = make("a", { href: URL.createObjectURL(new Blob([bytes], { type: file.type })), download: file.name });
    link.click();
    URL.revokeObjectURL(link.href);
    taken.textContent = ` ${file.name} is made.`;
  } catch (refused) {
    taken.textContent = ` ${refused.message}`;
  }
}

/** Makes a film, which takes a while, and hands it over. */
async function film() {
  const taken = document.getElementById("taken");
  const mine = new AbortController();
  const stop = make("button", { type: "button", onclick: () => mine.abort() }, "Stop");
  try {
    const { address, complaints } = await server.lessonFilm(plan.value, mine.signal, ({ text }) => taken.replaceChildren(`${text} `, stop));
    if (complaints) taken.textContent = "Mend the plan first.";
    else {
      taken.replaceChildren(make("a", { href: address, download: "lesson.mp4" }, "The film is made."));
      taken.querySelector("a").click();
    }
  } catch (refused) {
    taken.textContent = refused.name === "AbortError" ? "Stopped." : refused.message;
  }
}

order.addEventListener("submit", makePlan);
plan.addEventListener("input", () => {
  kept.keep(plan.value);
  clearTimeout(timer);
  timer = setTimeout(check, CHECK_AFTER);
});
begin();
