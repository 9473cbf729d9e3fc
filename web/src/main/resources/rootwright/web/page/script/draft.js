// What is typed survives a reload: the blanks are kept per address until the address says them.

const KEY = `rootwright.draft${location.pathname}`;

/** Keeps what stands in the blanks at this address. */
export function keepDraft(kind, blanks, named = {}) {
  try {
    localStorage.setItem(KEY, JSON.stringify({ at: location.search, kind, blanks, named }));
  } catch {
    // A browser that keeps nothing still works; only a reload forgets.
  }
}

/** What was kept for this address, if anything. */
export function draftHere() {
  try {
    const draft = JSON.parse(localStorage.getItem(KEY) ?? "null");
    return draft && draft.at === location.search ? draft : undefined;
  } catch {
    return undefined;
  }
}
