// The list of kinds of ask: each a sentence; choosing one changes the statement.
import { make } from "./element.js";
import { partsOf } from "./sentence.js";

/** Builds the list under the statement. */
export function showKinds(sentences, current, choose) {
  const place = document.getElementById("kinds");
  const list = make(
    "ul",
    { id: "kind-list", hidden: true },
    ...sentences.map((sentence) =>
      make(
        "li",
        {},
        make(
          "button",
          {
            type: "button",
            "data-kind": sentence.name,
            "aria-current": sentence === current ? "true" : undefined,
            onclick: () => choose(sentence),
          },
          make("span", { class: "words" }, ...partsOf(sentence.words).map((part) => gapOr(part))),
          make("span", { class: "kind-title" }, sentence.title),
        ),
      ),
    ),
  );
  list.addEventListener("keydown", (event) => step(event, list, opener));
  const opener = make("button", { type: "button", "aria-expanded": "false", "aria-controls": "kind-list" }, "Ask something else");
  opener.addEventListener("click", () => {
    list.hidden = !list.hidden;
    opener.setAttribute("aria-expanded", String(!list.hidden));
    if (!list.hidden) (list.querySelector("[aria-current]") ?? list.querySelector("button")).focus();
  });
  place.replaceChildren(opener, list);
}

function gapOr(part) {
  if (part.text) return part.text;
  if (part.roots) return make("i", {}, part.roots === "roots" ? "r, s, …" : "r");
  return make("span", { class: "gap" }, make("span", { class: "unseen" }, "blank"), "\u2003");
}

function step(event, list, opener) {
  const buttons = [...list.querySelectorAll("button")];
  const at = buttons.indexOf(document.activeElement);
  if (event.key === "ArrowDown") buttons[Math.min(at + 1, buttons.length - 1)].focus();
  else if (event.key === "ArrowUp") buttons[Math.max(at - 1, 0)].focus();
  else if (event.key === "Escape") opener.click() || opener.focus();
  else return;
  event.preventDefault();
}
