// Handing a text to the person: as a file, or to be pasted elsewhere.
import { make } from "./element.js";

/** Gives a text as a file. */
export function save(name, type, text) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  make("a", { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}

/** Copies a text; tells whether the browser did. */
export async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
