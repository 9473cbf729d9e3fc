// The last problems, which survive a restart of the desk.
import { make } from "./element.js";
import { inked } from "./words.js";
import * as server from "./server.js";

/** Shows the last problems at the foot of the page, the present one left out. */
export async function showLately() {
  const place = document.getElementById("lately");
  let visits = [];
  try {
    visits = await server.recent();
  } catch {
    // The page works without them.
  }
  visits = visits.filter((visit) => visit.query !== location.search.slice(1));
  place.hidden = visits.length === 0;
  place.replaceChildren(
    make("h2", {}, "Lately"),
    make("ul", {}, ...visits.map((visit) => make("li", {}, make("a", { href: `?${visit.query}` }, ...inked(visit.statement)), make("span", {}, ...inked(visit.answer))))),
  );
}
