package rootwright.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * Where a command reads and prints.
 *
 * @param out what a script may rely on
 * @param err errors and progress
 * @param in what a person types
 * @param terminal whether a person is looking: colour, questions and progress only then
 * @param width columns of the terminal
 */
record Console(PrintWriter out, PrintWriter err, BufferedReader in, boolean terminal, int width) {

  private static final int USUAL_WIDTH = 80;
  private static final int NARROWEST = 40;

  /** The console of this process, in UTF-8 whatever the locale says. */
  static Console ofProcess() {
    return new Console(
        new PrintWriter(System.out, true, StandardCharsets.UTF_8),
        new PrintWriter(System.err, true, StandardCharsets.UTF_8),
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)),
        Boolean.getBoolean("rootwright.terminal"),
        width(System.getenv("COLUMNS")));
  }

  private static int width(@org.jspecify.annotations.Nullable String columns) {
    try {
      return columns == null ? USUAL_WIDTH : Math.max(NARROWEST, Integer.parseInt(columns.trim()));
    } catch (NumberFormatException noNumber) {
      return USUAL_WIDTH;
    }
  }
}
