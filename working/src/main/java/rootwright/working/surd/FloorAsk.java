package rootwright.working.surd;

import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.WholeNumber;

/**
 * The whole part of a power, or its remainder, as it is asked for.
 *
 * @param base what is raised
 * @param exponent to what power, at least 1
 * @param up whether the whole number at or above it is meant, not that at or below
 * @param modulus of the remainder; absent if the whole part itself is asked for
 */
record FloorAsk(Formula base, BigInteger exponent, boolean up, Optional<BigInteger> modulus) {

  private static final Pattern DIGITS =
      Pattern.compile(
          "(?:find |what is |what are )?(?:the )?(?:last|final|units?)(?: (?<count>one|two|three|four"
              + "|\\d))? digits? (?:of|in) (?<rest>.*)",
          Pattern.DOTALL);

  private static final Pattern WHOLE_PART =
      Pattern.compile("(?:the )?(?:whole|integer|integral) part of (?<rest>.*)", Pattern.DOTALL);

  private static final Map<String, Integer> COUNTS =
      Map.of("one", 1, "two", 2, "three", 3, "four", 4);

  /** Whether a text has the form of such an ask. */
  static boolean isLike(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    boolean part =
        lower.contains("⌊")
            || lower.contains("⌈")
            || lower.contains("floor")
            || lower.contains("ceil")
            || lower.contains("\\lfloor")
            || lower.contains("part of");
    return part
        && (lower.contains("^") || lower.matches("(?s).*[⁰¹²³⁴-⁹].*"))
        && (lower.contains("√") || lower.contains("sqrt"));
  }

  /**
   * Reads the ask.
   *
   * @return empty if it is no whole part of a power
   * @throws UnreadableException if the formula in it cannot be read
   */
  static Optional<FloorAsk> read(String text) throws UnreadableException {
    Optional<BigInteger> modulus = Optional.empty();
    String rest = text.strip().replaceAll("[.?]$", "");
    Matcher lower = DIGITS.matcher(rest.toLowerCase(Locale.ROOT));
    if (lower.matches()) {
      int count =
          Optional.ofNullable(lower.group("count"))
              .map(word -> COUNTS.containsKey(word) ? COUNTS.get(word) : Integer.parseInt(word))
              .orElse(1);
      modulus = Optional.of(BigInteger.TEN.pow(count));
      rest = rest.substring(lower.start("rest"));
    }
    Matcher part = WHOLE_PART.matcher(rest);
    Formula formula =
        part.matches()
            ? new Formula.Application("floor", List.of(FormulaReader.formula(part.group("rest"))))
            : FormulaReader.formula(rest);
    if (formula instanceof Formula.Modulo modulo && modulus.isEmpty()) {
      modulus = WholeNumber.of(modulo.modulus());
      formula = modulo.of();
    }
    return of(formula, modulus);
  }

  private static Optional<FloorAsk> of(Formula formula, Optional<BigInteger> modulus) {
    if (formula instanceof Formula.Application application
        && application.arguments().size() == 1
        && (application.function().equals("floor") || application.function().equals("ceil"))) {
      boolean up = application.function().equals("ceil");
      Formula inside = application.arguments().get(0);
      if (inside instanceof Formula.Power power) {
        return WholeNumber.of(power.exponent())
            .filter(k -> k.signum() > 0)
            .map(k -> new FloorAsk(power.base(), k, up, modulus));
      }
      return Optional.of(new FloorAsk(inside, BigInteger.ONE, up, modulus));
    }
    return Optional.empty();
  }

  /** The power. */
  Formula power() {
    return exponent.equals(BigInteger.ONE)
        ? base
        : new Formula.Power(base, Formula.number(exponent));
  }

  /** The whole part. */
  Formula whole() {
    return new Formula.Application(up ? "ceil" : "floor", List.of(power()));
  }

  /** The ask as a formula. */
  Formula formula() {
    return modulus
        .<Formula>map(m -> new Formula.Modulo(whole(), Formula.number(m)))
        .orElse(whole());
  }
}
