// Orders that were stopped: each can be gone on with where it was, or given up.
import { make } from "./element.js";
import { readYaml } from "./yaml.js";
import * as server from "./server.js";

const place = document.getElementById("stopped");

/** Shows the stopped orders; `goOn` gets the one that is chosen, as the words of an order file. */
export async function showStopped(goOn) {
  const orders = await server.stoppedOrders();
  const names = Object.keys(orders);
  place.hidden = names.length === 0;
  place.replaceChildren(
    make("p", {}, names.length === 1 ? "An order was stopped and is kept:" : "Orders that were stopped are kept:"),
    make("ul", {}, ...names.map((name) => line(name, readYaml(orders[name]), goOn))),
  );
}

function line(name, order, goOn) {
  const forget = async () => {
    await server.forgetOrder(name);
    await showStopped(goOn);
  };
  return make(
    "li",
    {},
    `${words(order)} `,
    make("button", { type: "button", onclick: () => goOn(order) }, "go on with it"),
    " or ",
    make("button", { type: "button", onclick: forget }, "give it up"),
  );
}

function words({ many, degree, size, ask, family, answer, seed }) {
  const about = ask ?? (family ? `the family of ${family.replaceAll("-", " ")}` : "a surprise");
  return `${many} of degree ${degree}, size up to ${size}, asking for ${about}, answer ${answer}, seed ${seed}:`;
}
