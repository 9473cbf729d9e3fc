package rootwright.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.answer.AnswerFormula;
import rootwright.working.gate.Warning;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;
import rootwright.working.step.Step;

/** A solution set for a terminal: one working open, all of them below one another, width kept. */
final class TerminalReport {

  private static final int DECIMALS = 10;
  private static final String INDENT = "   ";

  private final Console console;
  private final Ink ink;
  private final List<String> lines = new ArrayList<>();

  TerminalReport(Console console) {
    this.console = console;
    this.ink = console.terminal() ? Ink.COLOURED : Ink.PLAIN;
  }

  String of(Solution solution) {
    wrapped("", solution.statement());
    for (String reading : solution.given().reading()) {
      wrapped(INDENT, "read as: " + reading);
    }
    lines.add("");
    lines.add(ink.strong("Answer   ") + ink.strong(answer(solution.answer())));
    solution
        .reduced()
        .ifPresent(
            reduced -> lines.add(INDENT + "reduced: " + UnicodeWriter.write(reduced.formula())));
    for (Warning warning : solution.warnings()) {
      wrapped(INDENT, ink.warning("! ") + warning.text());
    }
    for (String condition : solution.conditions()) {
      wrapped(INDENT, "needs " + condition);
    }
    int number = 1;
    for (Working working : solution.routes()) {
      route(number++, working);
    }
    list(
        "Other routes",
        grouped(
            solution.declined(),
            Solution.DeclinedRoute::why,
            Solution.DeclinedRoute::title,
            (why, titles) -> why + ": " + titles));
    list(
        "Wrong turnings",
        grouped(
            solution.slips(),
            slip -> slip.name() + ": " + slip.text(),
            slip -> UnicodeWriter.write(AnswerFormula.of(slip.value())),
            (slip, values) -> values + "   " + slip));
    list("Silent here", solution.silent().stream().map(s -> s.name()).toList());
    lines.add("");
    wrapped("", checks(solution));
    return String.join(System.lineSeparator(), lines);
  }

  private static String checks(Solution solution) {
    if (solution.answer() instanceof Answer.None) {
      return "There is no value to check.";
    }
    String digits =
        solution.second().digits().isPresent()
            ? " to %d digits".formatted(solution.second().digits().getAsInt())
            : "";
    return "Checked twice: exact normal form; " + solution.second().method() + digits + ".";
  }

  private String answer(Answer answer) {
    String text =
        String.join(
            " or ", AnswerFormula.alternatives(answer).stream().map(UnicodeWriter::write).toList());
    return answer instanceof Answer.Exact exact ? text + decimal(exact.value()) : text;
  }

  private static String decimal(ExactValue value) {
    Optional<String> exactly =
        value instanceof RationalValue rational ? terminating(rational.number()) : Optional.empty();
    if (exactly.isPresent()) {
      return " = " + exactly.get().replace('-', '−');
    }
    return value.decimal(DECIMALS).map(decimal -> "  ≈ " + decimal.replace('-', '−')).orElse("");
  }

  /** The decimal that is the number itself, if it has no more digits than are shown. */
  private static Optional<String> terminating(Rational value) {
    if (value.isInteger()) {
      return Optional.empty();
    }
    try {
      BigDecimal decimal =
          new BigDecimal(value.numerator()).divide(new BigDecimal(value.denominator()));
      return Optional.of(decimal)
          .filter(exact -> exact.precision() <= DECIMALS)
          .map(BigDecimal::toPlainString);
    } catch (ArithmeticException endless) {
      return Optional.empty();
    }
  }

  private void route(int number, Working working) {
    lines.add("");
    lines.add(
        ink.strong("Route " + number + "   " + working.title())
            + ink.faint(
                "   %d %s, cost %s"
                    .formatted(
                        working.cost().lines(),
                        working.cost().lines() == 1 ? "line" : "lines",
                        working.cost().total())));
    int k = 1;
    for (Step step : working.steps()) {
      step("%3d  ".formatted(k++), UnicodeWriter.write(step.shown()), step.reason());
    }
    for (String condition : working.conditions()) {
      wrapped("     ", "needs: " + condition);
    }
  }

  /** Formula left, reason at the end of the line, or below it where there is no room. */
  private void step(String head, String formula, String reason) {
    int room = console.width() - head.length() - formula.length() - reason.length();
    if (room >= 3) {
      lines.add(head + formula + " ".repeat(room) + ink.faint(reason));
    } else {
      wrapped(head, formula);
      wrapped(" ".repeat(head.length() + 2), ink.faint(reason));
    }
  }

  private void list(String title, List<String> items) {
    if (!items.isEmpty()) {
      lines.add("");
      lines.add(ink.strong(title));
      items.forEach(item -> wrapped(INDENT, item));
    }
  }

  /** One line for all items that have something in common. */
  private static <T> List<String> grouped(
      List<T> items,
      Function<T, String> common,
      Function<T, String> own,
      BinaryOperator<String> line) {
    return items.stream()
        .collect(
            Collectors.groupingBy(
                common, LinkedHashMap::new, Collectors.mapping(own, Collectors.joining(", "))))
        .entrySet()
        .stream()
        .map(entry -> line.apply(entry.getKey(), entry.getValue()))
        .toList();
  }

  /** Breaks at blanks; continuation lines are indented below the first. */
  private void wrapped(String head, String text) {
    String indent = " ".repeat(head.length());
    StringBuilder line = new StringBuilder(head);
    int used = head.length();
    for (String word : text.split(" ")) {
      int length = Ink.visibleLength(word);
      if (used > indent.length() && used + 1 + length > console.width()) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        used = indent.length();
      }
      boolean first = used == indent.length();
      line.append(first ? "" : " ").append(word);
      used += length + (first ? 0 : 1);
    }
    lines.add(line.toString());
  }
}
