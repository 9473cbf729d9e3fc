package rootwright.cli;

/** How far a list has come, on a terminal only, on standard error. */
final class ProgressBar {

  private static final int WIDTH = 24;

  private final Console console;
  private final int total;

  ProgressBar(Console console, int total) {
    this.console = console;
    this.total = total;
  }

  void show(int done) {
    if (console.terminal() && total > 1) {
      int filled = WIDTH * done / total;
      console
          .err()
          .printf("\r%s%s %d of %d", "━".repeat(filled), "·".repeat(WIDTH - filled), done, total);
      console.err().flush();
    }
  }

  void clear() {
    if (console.terminal() && total > 1) {
      console.err().print("\r" + " ".repeat(WIDTH + 24) + "\r");
      console.err().flush();
    }
  }
}
