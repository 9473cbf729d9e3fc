// Options of a multiple-choice question, each with the wrong turning that leads to it.
import { make, formula } from "./element.js";
import { plain, inked } from "./words.js";

const MANY = { 3: "three", 4: "four", 5: "five" };

/** The list of options, the key underlined twice. */
export function optionList({ options, key }) {
  return make("ol", { class: "options" }, ...options.map((option, at) => choice(option, at === key)));
}

function choice(option, isKey) {
  const why = isKey ? "the key" : option.slips.map(plain).join(", or ");
  return make("li", { class: isKey ? "key" : "" }, formula(option), make("span", { class: "why" }, why));
}

/** The problem as a multiple-choice question, folded; nothing if no slip gives a wrong answer. */
export function choicesSection({ choices = [] }) {
  const offered = choices.filter(({ options }) => options.length > 2);
  if (offered.length === 0) return undefined;
  const place = make("div", { class: "offered" });
  const select = make("select", { "aria-label": "number of choices" }, ...offered.map(({ wanted }) => make("option", { value: String(wanted) }, MANY[wanted])));
  const show = () => {
    const set = offered.find(({ wanted }) => String(wanted) === select.value);
    place.replaceChildren(...[optionList(set), set.fewerOptions && make("p", { class: "fewer" }, ...inked(set.fewerOptions))].filter(Boolean));
  };
  select.value = String(Math.min(4, offered.at(-1).wanted));
  select.addEventListener("change", show);
  show();
  return make(
    "section",
    { class: "choices" },
    make("details", { class: "column" }, make("summary", {}, "As a question with choices"), make("p", { class: "how-many" }, "It offers ", select, " choices:"), place),
  );
}
