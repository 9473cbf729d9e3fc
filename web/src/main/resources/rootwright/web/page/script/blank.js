// One blank of the sentence: the set formula above, the plain line that is edited below.
import { make, formula } from "./element.js";

export class Blank {
  /**
   * `heard` has `changed` (at every keystroke), `committed` (at Enter and when the blank is left) and
   * `pasted`, which may take a pasted text for itself by returning true.
   */
  constructor(name, label, text, { changed, committed, pasted }) {
    this.name = name;
    this.spoken = make("span", { class: "unseen", id: `spoken-${name}` });
    this.set = make("span", { class: "set", "aria-hidden": "true" });
    this.broken = make("span", { class: "broken", "aria-hidden": "true" });
    this.input = make("input", {
      type: "text",
      "aria-label": label,
      "aria-describedby": `spoken-${name}`,
      autocomplete: "off",
      autocapitalize: "off",
      autocorrect: "off",
      spellcheck: "false",
      enterkeyhint: "done",
      maxlength: "20000",
      oninput: () => {
        this.fit();
        this.mark();
        changed(this);
      },
      onkeydown: (event) => {
        if (event.key === "Enter") committed(this);
      },
      onchange: () => committed(this),
      onpaste: (event) => {
        if (pasted(event.clipboardData?.getData("text") ?? "")) event.preventDefault();
      },
      onscroll: () => (this.broken.scrollLeft = this.input.scrollLeft),
    });
    this.input.value = text;
    this.element = make(
      "label",
      { class: "blank", "data-blank": name },
      this.set,
      make("span", { class: "typed" }, this.broken, this.input),
      this.spoken,
    );
    this.fit();
  }

  get text() {
    return this.input.value;
  }

  set text(value) {
    this.input.value = value;
    this.fit();
  }

  fit() {
    this.input.size = Math.max(3, Math.min(this.input.value.length + 1, 60));
  }

  /** Shows the formula as it was read. */
  show(written) {
    const before = written.before ? `${written.before} ` : "";
    this.set.replaceChildren(before, formula(written));
    this.spoken.textContent = before + (written.spoken ?? "");
    this.mark();
  }

  /** Underlines the place where reading stopped; without a refusal, takes the line away. */
  mark(refusal) {
    this.element.classList.toggle("unread", Boolean(refusal));
    if (refusal) this.input.setAttribute("aria-invalid", "true");
    else this.input.removeAttribute("aria-invalid");
    this.broken.replaceChildren();
    if (!refusal) return;
    const signs = Array.from(this.input.value);
    const at = Math.min(Math.max(refusal.at ?? 0, 0), signs.length);
    const before = signs.slice(0, at).join("");
    const broken = signs.slice(at).join("") || "\u2002";
    this.broken.append(before, make("mark", {}, broken));
    this.broken.scrollLeft = this.input.scrollLeft;
  }
}
