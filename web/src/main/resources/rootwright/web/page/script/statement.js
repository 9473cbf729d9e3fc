// The statement: which sentence, what its blanks hold, and how they are read while one types.
import { make, formula } from "./element.js";
import { Blank } from "./blank.js";
import { partsOf, statementOf } from "./sentence.js";
import { keepDraft } from "./draft.js";
import { showNames } from "./names.js";
import { nameRoots } from "./light.js";
import * as server from "./server.js";

const TYPESET_AFTER = 40;

/** What follows a blank without a space stays on its line. */
const STOP = /^[.,;:?]/;

export class Statement {
  /** `heard` has `changed` (something was typed), `read` (all blanks are readable), `committed` and
   `pasted` (tells whether it took the text). */
  constructor(sentences, heard) {
    this.sentences = sentences;
    this.heard = heard;
    this.place = document.getElementById("sentence");
    this.refusal = document.getElementById("refusal");
    this.blanks = new Map();
    this.named = {};
  }

  /** Puts a sentence on the page, its blanks filled. */
  show(sentence, texts, named = {}) {
    this.sentence = sentence;
    this.named = named;
    const old = Object.fromEntries([...this.blanks].map(([name, blank]) => [name, blank.text]));
    this.blanks.clear();
    this.roots = [];
    this.place.replaceChildren(
      ...partsOf(sentence.words).map((part, at, parts) => {
        if (part.text) return parts[at - 1]?.blank ? part.text.replace(STOP, "") : part.text;
        if (part.roots) return this.rootsHere(part.roots);
        const text = texts[part.blank] ?? old[part.blank] ?? sentence.example[part.blank] ?? "";
        const blank = new Blank(part.blank, sentence.labels[part.blank], text, {
          changed: () => this.changed(),
          committed: () => this.commit(),
          pasted: (pasted) => this.heard.pasted(pasted),
        });
        this.blanks.set(part.blank, blank);
        const stop = STOP.exec(parts[at + 1]?.text ?? "");
        return stop ? make("span", { class: "with-stop" }, blank.element, stop[0]) : blank.element;
      }),
    );
    showNames(this.roots.length > 0, named, (chosen) => this.name(chosen));
    this.say();
  }

  get texts() {
    return Object.fromEntries([...this.blanks].map(([name, blank]) => [name, blank.text]));
  }

  /** The statement in notation, as the server works it. */
  get typed() {
    return { ...statementOf(this.sentence, this.texts), ...this.named };
  }

  /** Takes other names for the roots and the unknown. */
  name(named) {
    this.named = named;
    this.changed();
  }

  changed() {
    keepDraft(this.sentence.name, this.texts, this.named);
    this.heard.changed();
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.typeset(), TYPESET_AFTER);
  }

  commit() {
    this.heard.committed();
  }

  /** Sets the blanks as mathematics, and says so when all could be read. */
  async typeset() {
    if (await this.readBlanks()) this.heard.read();
  }

  /** Sets the blanks as mathematics; tells whether all could be read. */
  async readBlanks() {
    this.reading?.abort();
    const reading = (this.reading = new AbortController());
    let reply;
    try {
      reply = await server.setBlanks({ blanks: this.texts, ...this.typed }, reading.signal);
    } catch (refused) {
      if (refused.name !== "AbortError") this.say(refused.message);
      return false;
    }
    let broken;
    for (const [name, blank] of this.blanks) {
      const written = reply.blanks[name];
      if (written?.error) {
        blank.mark(written.error);
        broken ??= [blank, written.error];
      } else if (written) {
        blank.show(written);
      }
    }
    if (reply.roots) this.showRoots(reply.roots);
    nameRoots(this.place, (reply.roots ?? []).map((root) => root.text));
    this.say(broken?.[1].text, broken);
    return !broken;
  }

  /** A place in the sentence for all root names, or for the first. */
  rootsHere(which) {
    const place = make("span", { class: "roots" }, make("i", {}, which === "roots" ? "r, s, …" : "r"));
    this.roots.push({ place, which });
    return place;
  }

  showRoots(roots) {
    for (const { place, which } of this.roots) {
      const shown = which === "roots" ? roots : roots.slice(0, 1);
      const pieces = shown.flatMap((root, at) => [at === 0 ? "" : ", ", named(root)]);
      if (shown.length > 0) place.replaceChildren(...pieces.filter((piece) => piece !== ""));
    }
  }

  /** Shows what the server could not do with the statement as a whole, at its blank if it can be told. */
  refuse(error) {
    for (const blank of this.blanks.values()) {
      const text = blank.text.trim();
      const offset = text === "" ? -1 : (error.input ?? "").indexOf(text);
      const at = (error.at ?? 0) - Array.from((error.input ?? "").slice(0, offset)).length;
      if (offset < 0 || at < 0 || at > Array.from(text).length) continue;
      const local = { ...error, at: at + Array.from(blank.text).indexOf(Array.from(text)[0]) };
      blank.mark(local);
      this.say(error.text, [blank, local]);
      return;
    }
    this.say(error.text);
  }

  /** Says something and offers to do something about it. */
  offer(text, words, act) {
    this.refusal.replaceChildren(`${text} `, make("button", { type: "button", class: "offer", onclick: act }, words), "?");
  }

  say(text = "", [blank, error] = []) {
    const expected = error?.expected && !text.includes(error.expected) ? ` Expected: ${error.expected}.` : "";
    this.refusal.replaceChildren(text + expected);
    if (error?.mend && blank && error.input?.trim() === blank.text.trim()) {
      const mend = () => {
        blank.text = error.mend;
        this.changed();
        blank.input.focus();
      };
      this.refusal.append(" Perhaps ", make("button", { type: "button", onclick: mend }, error.mend), "?");
    }
  }
}

/** The name of a root, which lights that root. */
function named(root) {
  const attributes = { class: "name-of-root", tabindex: "0", role: "img", "aria-label": `root ${root.text}`, "data-root": root.text };
  return make("span", attributes, formula(root));
}
