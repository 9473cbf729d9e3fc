// The class: a sentence that says which routes it does not have yet, and lets one choose.
import { make } from "./element.js";
import * as server from "./server.js";

export class Profile {
  constructor({ without, routes, classes }, changed) {
    this.without = new Set(without);
    this.routes = new Map(Object.entries(routes));
    this.classes = classes;
    this.changed = changed;
    this.open = false;
  }

  /** The sentence, with a list of all routes behind it. */
  section() {
    const known = this.routes;
    const list = make("fieldset", { id: "class-routes", hidden: !this.open }, make("legend", { class: "unseen" }, "Routes that the class has"), ...[...known].map(([name, title]) => this.choice(name, title)));
    const opener = make("button", { type: "button", "aria-expanded": String(this.open), "aria-controls": "class-routes" }, this.words(known));
    opener.addEventListener("click", () => {
      this.open = list.hidden;
      list.hidden = !this.open;
      opener.setAttribute("aria-expanded", String(this.open));
    });
    const told = make("span", { role: "status" });
    return make("section", { class: "class" }, make("p", {}, "Worked for a class that has ", opener, ". ", ...this.keeping(told), ...this.taking(), told), list);
  }

  /** Keeping the choice under a name, for this page and for the command line. */
  keeping(told) {
    const name = make("input", { type: "text", class: "class-name", "aria-label": "name of the class", placeholder: "year-9", size: "8", maxlength: "40", autocomplete: "off", spellcheck: "false" });
    const keep = async () => {
      try {
        const kept = await server.keepClass(name.value.trim() || name.placeholder, [...this.without]);
        this.classes = kept.classes;
        told.textContent = ` The class ${name.value.trim() || name.placeholder} is kept; the command line knows it by --class.`;
      } catch (refused) {
        told.textContent = ` ${refused.message}`;
      }
    };
    return [make("button", { type: "button", class: "keep-class", onclick: keep }, "Keep"), " this as the class ", name, "."];
  }

  /** Taking a class that was kept. */
  taking() {
    const names = Object.keys(this.classes);
    if (names.length === 0) return [];
    const take = async (name) => {
      this.without = new Set(this.classes[name]);
      await server.chooseProfile([...this.without]);
      await this.changed();
    };
    const buttons = names.flatMap((name, at) => [at === 0 ? " Or take " : ", ", make("button", { type: "button", "data-class": name, onclick: () => take(name) }, name)]);
    return [...buttons, "."];
  }

  words(known) {
    if (this.without.size === 0) return "every route";
    return `every route but ${[...this.without].map((name) => known.get(name) ?? name).join(", ")}`;
  }

  choice(name, title) {
    const box = make("input", { type: "checkbox", value: name, checked: !this.without.has(name) });
    box.addEventListener("change", async () => {
      if (box.checked) this.without.delete(name);
      else this.without.add(name);
      await server.chooseProfile([...this.without]);
      await this.changed();
      document.querySelector(`.class input[value="${CSS.escape(name)}"]`)?.focus();
    });
    return make("label", {}, box, title);
  }
}
