package rootwright.cli;

/** What the process tells a script; the worst of several problems wins in the order given here. */
enum ExitStatus {
  /** Everything done. */
  DONE(0),
  /** The ask has no single answer by its statement; what is true was printed. */
  NOT_SINGLE(3),
  /** Input unreadable, or the command used wrongly. */
  UNREADABLE(2),
  /** A check refuted something of ours. */
  CHECK_FAILED(4);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }

  /** The one that counts for both together. */
  ExitStatus and(ExitStatus other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
