package rootwright.cli;

/** In which form a command prints what it found. */
enum OutputForm {
  /** For a person at a terminal. */
  TERMINAL,
  /** For a person at a terminal who also wants to know what does not apply, and why. */
  TERMINAL_IN_FULL,
  /** For a script, by the published contract. */
  JSON,
  /** As LaTeX source. */
  LATEX,
  /** The sentence that a sheet would print, and nothing else. */
  STATEMENT
}
