// What the paper tray asks of the desk's server.
import { Refused, follow } from "./server.js";

async function ask(method, path, body) {
  let reply;
  try {
    reply = await fetch(path, {
      method,
      headers: body === undefined ? {} : { "Content-Type": "application/json" },
      body: body === undefined ? undefined : JSON.stringify(body),
    });
  } catch {
    throw new Refused({ code: "away", text: "The desk is not running. Start it again with ./rootwright open." });
  }
  const value = await reply.json();
  if (value.error) throw new Refused(value.error);
  return value;
}

/** Work that may take long: reports progress, and stops when the page is left. */
async function long(path, body, progress) {
  const job = crypto.randomUUID();
  const stop = () => fetch(`/api/jobs/${job}`, { method: "DELETE", keepalive: true }).catch(() => {});
  addEventListener("pagehide", stop);
  try {
    const reply = await ask("POST", path, { ...body, job });
    return reply.job ? await follow(reply.job, undefined, { progress }) : reply;
  } finally {
    removeEventListener("pagehide", stop);
  }
}

const at = (name, step = "") => `/api/papers/${encodeURIComponent(name)}${step}`;

export const papers = () => ask("GET", "/api/papers");
export const paper = (name) => ask("GET", at(name));
export const draft = (order, progress) => long("/api/papers", order, progress);
export const edit = (name, change) => ask("POST", at(name, "/item"), change);
export const check = (name, progress) => long(at(name, "/check"), {}, progress);
export const freeze = (name, progress) => long(at(name, "/freeze"), {}, progress);
export const correct = (name, cause) => ask("POST", at(name, "/correct"), { cause });
export const print = (name, order, progress) => long(at(name, "/print"), order, progress);
export const fileAddress = (name, file) => at(name, `/files/${encodeURIComponent(file)}`);
