package rootwright.cli;

import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.ComposingListener;
import rootwright.composing.blueprint.Screened;

/** How far an order is, as a bar on a terminal, on standard error. */
final class ScanProgress implements ComposingListener {

  private static final int WIDTH = 24;
  private static final long PAUSE = 100_000_000L;

  private final Console console;
  private long shown = System.nanoTime();
  private int widest;

  ScanProgress(Console console) {
    this.console = console;
  }

  @Override
  public void screened(Screened sofar) {
    if (console.terminal() && System.nanoTime() - shown > PAUSE) {
      shown = System.nanoTime();
      print(bar(sofar));
    }
  }

  private static String bar(Screened sofar) {
    int filled = (int) (sofar.examined() / Math.max(1, sofar.candidates() / WIDTH));
    filled = Math.min(WIDTH, filled);
    return "%s%s %,d of %,d looked at, %,d pass, %d of %d found"
        .formatted(
            "━".repeat(filled),
            "·".repeat(WIDTH - filled),
            sofar.examined(),
            sofar.candidates(),
            sofar.passing(),
            sofar.found(),
            sofar.wanted());
  }

  @Override
  public void found(Composed problem) {}

  /** Takes the bar away. */
  void clear() {
    if (console.terminal() && widest > 0) {
      print("");
      console.err().print("\r");
      console.err().flush();
    }
  }

  private void print(String text) {
    String fitted = text.substring(0, Math.min(text.length(), Math.max(1, console.width() - 1)));
    console.err().print("\r" + fitted + " ".repeat(Math.max(0, widest - fitted.length())));
    console.err().flush();
    widest = Math.max(widest, fitted.length());
  }
}
