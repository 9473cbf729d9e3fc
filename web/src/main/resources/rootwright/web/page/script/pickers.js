// Words in a sentence that stand for a choice of several things, each with a list behind it.
import { make } from "./element.js";

/**
 * Gives every picker of the form its list; `names` tells what each may pick: {with: {name: words}}.
 * Gives back what picks: it is told what is chosen in each list.
 */
export function setPickers(names, changed) {
  const place = document.getElementById("pickers");
  const lists = new Map();
  for (const button of document.querySelectorAll(".picker[data-picks]")) {
    const picks = button.dataset.picks;
    const known = Object.entries(names[picks]);
    const list = make(
      "fieldset",
      { id: `picks-${picks}`, class: "picks", hidden: true },
      make("legend", {}, button.dataset.label),
      ...known.map(([name, words]) => make("label", {}, make("input", { type: "checkbox", name: picks, value: name }), words)),
      make("p", {}, make("button", { type: "button", onclick: () => shut() }, "done")),
    );
    const say = () => {
      const picked = known.filter(([name]) => list.querySelector(`[value="${CSS.escape(name)}"]`).checked).map(([, words]) => words);
      button.textContent = picked.length > 0 ? picked.join(", ") : button.dataset.none;
      button.setAttribute("aria-label", `${button.textContent}: ${button.dataset.label}`);
    };
    const shut = () => {
      list.hidden = true;
      button.setAttribute("aria-expanded", "false");
      button.focus();
    };
    button.setAttribute("aria-expanded", "false");
    button.setAttribute("aria-controls", list.id);
    button.addEventListener("click", () => {
      for (const other of place.querySelectorAll(".picks")) if (other !== list) other.hidden = true;
      for (const other of document.querySelectorAll(".picker")) if (other !== button) other.setAttribute("aria-expanded", "false");
      list.hidden = !list.hidden;
      button.setAttribute("aria-expanded", String(!list.hidden));
      if (!list.hidden) list.querySelector("input")?.focus();
    });
    list.addEventListener("change", () => {
      say();
      changed();
    });
    list.addEventListener("keydown", (event) => {
      if (event.key === "Escape") shut();
    });
    place.append(list);
    lists.set(picks, (chosen) => {
      for (const box of list.querySelectorAll("input")) box.checked = chosen.includes(box.value);
      say();
    });
  }
  return (chosen) => lists.forEach((pick, picks) => pick(chosen(picks)));
}
