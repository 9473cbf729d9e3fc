// One text that survives a reload, under a name.

export class Kept {
  constructor(name) {
    this.key = `rootwright.${name}`;
  }

  /** The text; nothing if none was kept. */
  get text() {
    try {
      return localStorage.getItem(this.key) ?? undefined;
    } catch {
      return undefined;
    }
  }

  /** Keeps a text. */
  keep(text) {
    try {
      localStorage.setItem(this.key, text);
    } catch {
      // A browser that keeps nothing still works; only a reload forgets.
    }
  }
}
