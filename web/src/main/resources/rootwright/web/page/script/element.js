// Making elements. Text always goes in as text, never as markup.

/** An HTML element with attributes (listeners begin with "on") and children. */
export function make(tag, attributes = {}, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

/** The same for a drawing. */
export function draw(tag, attributes = {}, ...children) {
  return fill(document.createElementNS("http://www.w3.org/2000/svg", tag), attributes, children);
}

function fill(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? "" : value);
  }
  element.append(...children.filter((child) => child !== undefined && child !== ""));
  return element;
}

/** The formula of the server as a MathML element; its plain text if it has none. */
export function formula(written) {
  if (!written.mathml) return document.createTextNode(written.text ?? "");
  const parsed = new DOMParser().parseFromString(written.mathml, "text/html").querySelector("math");
  if (!parsed) return document.createTextNode(written.text ?? "");
  const math = document.importNode(parsed, true);
  math.removeAttribute("display");
  if (written.spoken) math.setAttribute("alttext", written.spoken);
  return math;
}

/** The same with the room of a line of its own. */
export function displayed(written) {
  const math = formula(written);
  math.setAttribute?.("displaystyle", "true");
  return math;
}

/** "1 line", "4 lines". */
export function counted(number, one, many = one + "s") {
  return `${number} ${number === 1 ? one : many}`;
}
