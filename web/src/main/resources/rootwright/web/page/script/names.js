// Other names for the roots and the unknown than those the desk chooses.
import { make } from "./element.js";

/**
 * The sentence that names them, behind a word under the statement, if there are `any`; `named` has
 * `roots` and `unknown`.
 */
export function showNames(any, named, changed) {
  const place = document.getElementById("names");
  place.hidden = !any && Object.keys(named).length === 0;
  const now = { ...named };
  const blank = (name, label, size) =>
    make("input", {
      type: "text",
      class: "formula",
      name,
      size,
      value: named[name] ?? "",
      "aria-label": label,
      autocomplete: "off",
      autocapitalize: "off",
      spellcheck: "false",
      maxlength: "200",
      oninput: (event) => {
        now[name] = event.target.value.trim();
        changed(Object.fromEntries(Object.entries(now).filter(([, text]) => text)));
      },
    });
  const chosen = Object.keys(named).length > 0;
  const sentence = make("span", { id: "naming", hidden: !chosen }, "Call the roots ", blank("roots", "names of the roots, with commas between them", "8"), " and the unknown ", blank("unknown", "name of the unknown", "2"), ".");
  const opener = make("button", { type: "button", "aria-expanded": String(chosen), "aria-controls": "naming", hidden: chosen }, "Name the roots yourself");
  opener.addEventListener("click", () => {
    sentence.hidden = false;
    opener.hidden = true;
    sentence.querySelector("input").focus();
  });
  place.replaceChildren(opener, sentence);
}
