package rootwright.cli;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.algebra.value.RootOf;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * A solution set for a terminal: first what is asked most (the answer and how it was checked), then
 * every working below the other, what goes wrong, and last what does not apply.
 */
final class TerminalReport {

  private static final int DECIMALS = 10;
  private static final String INDENT = "   ";

  private final Ink ink;
  private final Paragraph paragraph;

  TerminalReport(Console console) {
    this.ink = Ink.of(console);
    this.paragraph = new Paragraph(console.width());
  }

  /** What applies; what does not is counted in a last line. */
  String of(Solution solution) {
    whatApplies(solution);
    int routes = solution.declined().size();
    int slips = solution.silent().size();
    if (routes + slips > 0) {
      paragraph.blank();
      paragraph.add("", ink.faint(left(routes, slips)));
    }
    return paragraph.text();
  }

  /** Everything, also the routes and the wrong turnings that do not apply, with the reasons. */
  String inFull(Solution solution) {
    whatApplies(solution);
    list(
        "Wrong turnings that do not show",
        grouped(
            solution.silent(),
            Solution.SilentSlip::why,
            Solution.SilentSlip::name,
            (why, names) -> names + ": " + why));
    list(
        "Routes that do not fit, and why",
        grouped(
            solution.declined(),
            Solution.DeclinedRoute::why,
            Solution.DeclinedRoute::title,
            (why, titles) -> why + ": " + titles));
    return paragraph.text();
  }

  private static String left(int routes, int slips) {
    String first =
        routes == 0 ? "" : routes == 1 ? "1 route does not fit" : routes + " routes do not fit";
    String second =
        slips == 0
            ? ""
            : slips == 1 ? "1 wrong turning does not show" : slips + " wrong turnings do not show";
    return "%s%s%s here; --all tells which and why."
        .formatted(first, first.isEmpty() || second.isEmpty() ? "" : ", and ", second);
  }

  private void whatApplies(Solution solution) {
    paragraph.add("", solution.statement());
    for (String reading : solution.given().reading()) {
      paragraph.add(INDENT, "read as: " + reading);
    }
    paragraph.blank();
    paragraph.add("Answer   ", ink.strong(answer(solution.answer())));
    solution
        .reduced()
        .ifPresent(
            reduced ->
                paragraph.line(INDENT + "reduced: " + UnicodeWriter.write(reduced.formula())));
    for (Warning warning : solution.warnings()) {
      paragraph.add(INDENT, ink.warning("! ") + warning.text());
    }
    for (String condition : solution.conditions()) {
      paragraph.add(INDENT, "needed, and true: " + condition);
    }
    paragraph.add(INDENT, checks(solution));
    int number = 1;
    for (Working working : solution.routes()) {
      route(number++, working);
    }
    list(
        "Wrong turnings",
        grouped(
            solution.slips(),
            slip -> slip.name() + ": " + slip.text(),
            slip -> UnicodeWriter.write(slip.value().formula()),
            (slip, values) -> values + "   " + slip));
  }

  private static String checks(Solution solution) {
    if (solution.answer() instanceof Answer.Enclosed) {
      return "Every value shown lies in a certified disc; no exact value was formed.";
    }
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
        String.join(" or ", answer.alternatives().stream().map(UnicodeWriter::write).toList());
    if (answer instanceof Answer.Values values && areRootsOfOne(values.values())) {
      return "a root of %s = 0: %s"
          .formatted(
              UnicodeWriter.write(PolynomialFormula.of(values.orbit(), "T")),
              decimals(values.values()));
    }
    if (answer instanceof Answer.Enclosed enclosed) {
      return text + enclosed(enclosed);
    }
    if (answer instanceof Answer.Solutions set
        && set.values().stream()
            .anyMatch(value -> value instanceof RootOf root && root.inSurds().isEmpty())) {
      return "%s  %s".formatted(text, decimals(set.values()));
    }
    return answer instanceof Answer.Exact exact ? text + decimal(exact.value()) : text;
  }

  /** Whether naming the values one by one would say the same polynomial again and again. */
  private static boolean areRootsOfOne(List<ExactValue> values) {
    return values.size() > 2
        && values.stream()
            .allMatch(value -> value instanceof RootOf root && root.inSurds().isEmpty());
  }

  private static String decimals(List<ExactValue> values) {
    return values.stream()
        .map(
            value ->
                "≈ " + value.decimal(DECIMALS).orElse("?").replace('-', '−').replace("*i", "i"))
        .collect(Collectors.joining(", "));
  }

  private static String enclosed(Answer.Enclosed enclosed) {
    List<String> decimals =
        enclosed.shown().stream()
            .map(disc -> disc.decimal(DECIMALS))
            .flatMap(Optional::stream)
            .map(decimal -> decimal.replace('-', '−').replace("*i", "i"))
            .toList();
    return decimals.isEmpty()
        ? ""
        : ", %s %s"
            .formatted(
                enclosed.images().intValue() > decimals.size() ? "such as" : "about",
                String.join(", ", decimals));
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
    paragraph.blank();
    paragraph.line(
        ink.strong("Route " + number + "   " + working.title())
            + ink.faint(
                "   %d %s, cost %s"
                    .formatted(
                        working.cost().lines(),
                        working.cost().lines() == 1 ? "line" : "lines",
                        working.cost().total())));
    paragraph.steps("", working, ink);
    for (String condition : working.conditions()) {
      paragraph.add("     ", "needed, and true: " + condition);
    }
  }

  private void list(String title, List<String> items) {
    if (!items.isEmpty()) {
      paragraph.blank();
      paragraph.line(ink.strong(title));
      items.forEach(item -> paragraph.add(INDENT, item));
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
}
