package rootwright.working.described;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Angle;

/**
 * Reads a list of numbers: {@code cos(π/9), cos(5π/9), cos(7π/9)}, or one with a letter and the
 * range it runs over, {@code tan^2(kπ/7), k = 1..3}.
 */
final class ListedNumbers {

  private static final Pattern WITH_RANGE =
      Pattern.compile(
          "(?<body>.*?)\\s*[,;:]?\\s*(?:\\bfor\\b|\\bwith\\b|\\bwhere\\b)?\\s*[({\\[]?\\s*"
              + "(?<letter>[a-hj-z])\\s*=\\s*(?<range>\\d[\\d\\s,.…]*(?:(?:to|\\\\ldots|\\\\dots|"
              + "and|-|–)[\\d\\s,.…]+)?)[)}\\]]?\\s*",
          Pattern.DOTALL);

  private static final Pattern SPAN =
      Pattern.compile(
          "(?:\\d+\\s*,\\s*)*?(?<from>\\d+)\\s*,?\\s*(?:\\.\\.+|…|to|\\\\ldots|\\\\dots|-|–)\\s*,?"
              + "\\s*(?<to>\\d+)");

  private static final Pattern NUMBER = Pattern.compile("\\d{1,4}");

  /** More numbers than this are not read. */
  private static final int MOST = 64;

  private ListedNumbers() {}

  /**
   * The numbers in the order in which they are listed, whole turns left in their angles.
   *
   * @throws UnreadableException if the text is no such list
   */
  static List<Formula> read(String text) throws UnreadableException {
    Matcher matcher = WITH_RANGE.matcher(text);
    if (!matcher.matches()) {
      return items(FormulaReader.formula(text)).stream().map(ListedNumbers::tidied).toList();
    }
    Formula.Name letter = new Formula.Name(matcher.group("letter"));
    List<Formula> numbers = new ArrayList<>();
    List<Formula> bodies = items(FormulaReader.formula(matcher.group("body")));
    for (int k : range(matcher.group("range"))) {
      for (Formula body : bodies) {
        numbers.add(tidied(body.rewrite(part -> part.equals(letter) ? Formula.number(k) : part)));
      }
    }
    return numbers;
  }

  private static List<Formula> items(Formula formula) {
    return formula instanceof Formula.Listing listing ? listing.items() : List.of(formula);
  }

  /** Angles as fractions of π in lowest terms. */
  static Formula tidied(Formula formula) {
    return NormalForm.of(
        formula.rewrite(
            part ->
                part instanceof Formula.Application application
                    ? Angle.argument(application)
                        .<Formula>map(
                            q ->
                                new Formula.Application(
                                    application.function(), List.of(Angle.written(q))))
                        .orElse(part)
                    : part));
  }

  private static List<Integer> range(String text) {
    List<Integer> range = new ArrayList<>();
    Matcher span = SPAN.matcher(text.strip());
    if (span.matches()) {
      Optional<Integer> first = first(text);
      int from = first.orElse(Integer.parseInt(span.group("from")));
      int to = Integer.parseInt(span.group("to"));
      for (int k = from; k <= to && range.size() <= MOST; k++) {
        range.add(k);
      }
      return range;
    }
    Matcher number = NUMBER.matcher(text);
    while (number.find()) {
      range.add(Integer.parseInt(number.group()));
    }
    return range;
  }

  private static Optional<Integer> first(String text) {
    Matcher number = NUMBER.matcher(text);
    return number.find() ? Optional.of(Integer.parseInt(number.group())) : Optional.empty();
  }
}
