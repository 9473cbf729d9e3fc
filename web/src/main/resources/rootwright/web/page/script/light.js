// Hovering or focusing the name of a root lights that root everywhere on the page.

let names = new Set();

/** Marks every root name inside the element; names are spelled r or r_1. */
export function nameRoots(element, rootNames = [...names]) {
  names = new Set(rootNames);
  for (const sign of element.querySelectorAll("math mi, math msub")) {
    if (sign.closest("[data-root]")) continue;
    const spelling = spellingOf(sign);
    if (spelling && names.has(spelling)) sign.setAttribute("data-root", spelling);
  }
}

function spellingOf(sign) {
  if (sign.localName === "mi") return sign.parentElement?.localName === "msub" ? undefined : sign.textContent.trim();
  const [base, index] = sign.children;
  return base && index ? `${base.textContent.trim()}_${index.textContent.trim()}` : undefined;
}

/** Lights the roots whose names are given, with blanks between them: a repeated root has several. */
function light(roots) {
  for (const lit of document.querySelectorAll(".lit")) lit.classList.remove("lit");
  for (const root of roots?.split(" ") ?? []) {
    for (const place of document.querySelectorAll(`[data-root~="${CSS.escape(root)}"]`)) place.classList.add("lit");
  }
}

/** Listens on the whole page, once. */
export function lightRoots() {
  const rootAt = (event) => event.target.closest?.("[data-root]")?.getAttribute("data-root");
  document.addEventListener("pointerover", (event) => light(rootAt(event)));
  document.addEventListener("focusin", (event) => light(rootAt(event)));
  document.addEventListener("focusout", () => light(undefined));
}
