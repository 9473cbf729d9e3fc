// What is known of an order before it is placed: how much its wishes leave, and the order as YAML.
import { order, command } from "./order.js";
import * as server from "./server.js";

const WEIGH_AFTER = 250;
const place = document.getElementById("weighed");
let timer;
let weighing;

/** Weighs the order once nothing has changed for a moment. */
export function weighSoon() {
  clearTimeout(timer);
  timer = setTimeout(weigh, WEIGH_AFTER);
}

async function weigh() {
  weighing?.abort();
  const mine = (weighing = new AbortController());
  document.getElementById("command").textContent = command();
  try {
    const weighed = await server.weigh(order(), mine.signal);
    document.getElementById("yaml").textContent = weighed.yaml;
    place.classList.toggle("against", Boolean(weighed.contradiction));
    place.textContent = weighed.contradiction ?? said(weighed);
  } catch (refused) {
    if (refused.name === "AbortError") return;
    place.classList.add("against");
    place.textContent = refused.message;
  }
}

function said({ candidates, passing, none, seconds }) {
  const time = seconds < 1 ? "less than a second" : seconds < 120 ? `${seconds} s at most` : seconds < 7200 ? `${Math.round(seconds / 60)} minutes at most` : `${Math.round(seconds / 3600)} hours at most`;
  const share = none ? `In a sample of the ${candidates} candidates none meets what can be screened` : `Of ${candidates} candidates about ${passing} meet what can be screened`;
  return `${share}; looking takes ${time}.`;
}

/** Lets the buttons copy what stands in the order's other forms. */
export function letCopy() {
  for (const button of document.querySelectorAll("[data-copies]")) {
    button.addEventListener("click", async () => {
      const told = button.parentElement.querySelector("[role=status]");
      try {
        await navigator.clipboard.writeText(document.getElementById(button.dataset.copies).textContent);
        told.textContent = " \u2014 copied.";
      } catch {
        told.textContent = " \u2014 the browser would not copy.";
      }
    });
  }
}
