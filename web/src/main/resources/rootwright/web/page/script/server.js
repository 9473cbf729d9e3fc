// Talking to the desk's server, which is this machine.

/** A refusal or fault of the server: what `error` says, and a sentence for the person. */
export class Refused extends Error {
  constructor(error) {
    super(error.text);
    this.error = error;
  }
}

async function ask(method, path, body, signal) {
  let reply;
  try {
    reply = await fetch(path, {
      method,
      signal,
      headers: body === undefined ? {} : { "Content-Type": "application/json" },
      body: body === undefined ? undefined : JSON.stringify(body),
    });
  } catch (lost) {
    if (lost.name === "AbortError") throw lost;
    throw new Refused({ code: "away", text: "The desk is not running. Start it again with ./rootwright open." });
  }
  const text = await reply.text();
  const value = text ? JSON.parse(text) : {};
  if (value.error) throw new Refused(value.error);
  return value;
}

export const kinds = () => ask("GET", "/api/kinds");
export const recent = () => ask("GET", "/api/recent");
export const profile = () => ask("GET", "/api/profile");
export const chooseProfile = (without) => ask("PUT", "/api/profile", { without });
export const keepClass = (name, without) => ask("PUT", `/api/profile/${encodeURIComponent(name)}`, { without });
export const setBlanks = (statement, signal) => ask("POST", "/api/set", statement, signal);

/**
 * Works a problem. Short work answers at once; long work goes on as a job that reports progress and
 * is stopped when the signal aborts or the page goes away.
 */
export function work(statement, signal, progress) {
  return named(signal, async (job) => {
    const reply = await ask("POST", "/api/work", { ...statement, job }, signal);
    return reply.job ? follow(reply.job, signal, { progress }) : reply;
  });
}

/** Judges somebody's lines; long work reports progress as `work` does. */
export function check(working, signal, progress) {
  return named(signal, async (job) => {
    const reply = await ask("POST", "/api/check", { ...working, job }, signal);
    return reply.job ? follow(reply.job, signal, { progress }) : reply;
  });
}

/** Work under a name of ours, which is stopped when the signal aborts or the page goes away. */
async function named(signal, act) {
  const job = crypto.randomUUID();
  const stop = () => fetch(`/api/jobs/${job}`, { method: "DELETE", keepalive: true }).catch(() => {});
  signal.addEventListener("abort", stop);
  addEventListener("pagehide", stop);
  try {
    return await act(job);
  } finally {
    signal.removeEventListener("abort", stop);
    removeEventListener("pagehide", stop);
  }
}

export const shelve = (statement) => ask("POST", "/api/shelf", statement);

/** The lines of the shelf in which all words occur. */
export const onShelf = (words) => ask("GET", `/api/shelf?${new URLSearchParams({ words })}`);

/** How the problem `later` is related to `earlier`, or to the shelf. */
export const twins = (problems) => ask("POST", "/api/twins", problems);

/** Works a list of lines; `hear` is told of every line as soon as it is worked. */
export const workList = (list, signal, hear) => compose("/api/list", list, signal, hear);

/** What an order may name: families, routes, slips. */
export const orderWords = () => ask("GET", "/api/order");

/** The order as YAML and how much its wishes leave. */
export const weigh = (order, signal) => ask("POST", "/api/order", { order }, signal);

/** An order that was pasted as YAML, written out in full. */
export const readOrder = (yaml) => ask("POST", "/api/order/read", { yaml });

/** The orders that were stopped: {name: yaml}. */
export const stoppedOrders = () => ask("GET", "/api/order/stopped");

/** Gives a stopped order up. */
export const forgetOrder = (name) => ask("DELETE", `/api/order/stopped/${encodeURIComponent(name)}`);

/**
 * Starts a job and follows it. When the signal aborts, the job is given up; `hear.stop`, if it is
 * there, is called with a function that ends it early and keeps what it has.
 */
export function compose(path, order, signal, hear) {
  return named(signal, async (job) => {
    await ask("POST", path, { ...order, job }, signal);
    hear.stop?.(() => ask("DELETE", `/api/jobs/${job}`));
    return follow(job, signal, hear);
  });
}

/** What a lesson can be about, and its forms. */
export const lessonWords = () => ask("GET", "/api/lesson");

/** The text of a plan. */
export const lessonPlan = (order, signal) => lessonWork("/api/lesson/plan", order, signal);

/** The lesson of a plan, or what is wrong with it. */
export const lesson = (plan, signal) => lessonWork("/api/lesson", { plan }, signal);

/** The lesson as a file. */
export const lessonFile = (plan, form, formulas, signal) => lessonWork(`/api/lesson/file/${form}`, { plan, formulas }, signal);

/** A silent film of the lesson: its address on the desk, once it is made. */
export async function lessonFilm(plan, signal, progress) {
  const { film, complaints } = await compose("/api/lesson/film", { plan }, signal, { progress });
  return { complaints, address: `/api/lesson/films/${film}` };
}

function lessonWork(path, body, signal) {
  return named(signal, async (job) => {
    const reply = await ask("POST", path, { ...body, job }, signal);
    return reply.job ? follow(reply.job, signal) : reply;
  });
}

/** Follows a job to its end. `hear` may have `progress` and `found`. */
export function follow(job, signal, hear = {}) {
  return new Promise((resolve, reject) => {
    const events = new EventSource(`/api/jobs/${encodeURIComponent(job)}`);
    const end = (act) => {
      events.close();
      act();
    };
    signal?.addEventListener("abort", () => end(() => reject(new DOMException("stopped", "AbortError"))));
    for (const name of ["progress", "found"]) {
      events.addEventListener(name, (event) => hear[name]?.(JSON.parse(event.data)));
    }
    events.addEventListener("done", (event) => end(() => resolve(JSON.parse(event.data))));
    events.addEventListener("failed", (event) => end(() => reject(new Refused(JSON.parse(event.data).error))));
    events.onerror = () => {
      if (events.readyState === EventSource.CLOSED) {
        end(() => reject(new Refused({ code: "away", text: "The desk has stopped answering." })));
      }
    };
  });
}
