// The class: a sentence that says which routes it does not have yet, and lets one choose.
import { make } from "./element.js";
import * as server from "./server.js";

export class Profile {
  constructor({ without, routes }, changed) {
    this.without = new Set(without);
    this.routes = new Map(Object.entries(routes));
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
    return make("section", { class: "class" }, make("p", {}, "Worked for a class that has ", opener, "."), list);
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
