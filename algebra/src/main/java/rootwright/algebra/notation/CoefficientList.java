package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A list of coefficients, highest power first: no letter, at least three numbers with blanks or
 * commas between them. A fraction is one entry; there are no mixed numbers in a list.
 */
final class CoefficientList {

  private static final int FEWEST = 3;

  private static final Pattern BETWEEN = Pattern.compile("\\s*[,;]\\s*|\\s+");
  private static final Pattern ENTRY = Pattern.compile("[+-]?(\\d+(\\.\\d+)?|\\.\\d+)(/\\d+)?");

  private CoefficientList() {}

  /** The coefficients in ascending order, zeros in front kept, if the text is such a list. */
  static Optional<List<Rational>> read(String text) throws UnreadableException {
    if (text.length() > Limits.LENGTH) {
      return Optional.empty();
    }
    String[] entries = BETWEEN.split(unwrapped(text.strip()).replace('−', '-'));
    if (entries.length < FEWEST) {
      return Optional.empty();
    }
    for (String entry : entries) {
      if (!ENTRY.matcher(entry).matches() || entry.length() > Limits.DIGITS) {
        return Optional.empty();
      }
    }
    if (entries.length - 1 > Limits.DEGREE) {
      throw new SourceText(text)
          .refused(
              "too-large",
              "A list of %d coefficients stands here; at most degree %d is worked with."
                  .formatted(entries.length, Limits.DEGREE),
              0,
              "fewer coefficients",
              "");
    }
    List<Rational> coefficients = new ArrayList<>();
    for (String entry : entries) {
      coefficients.add(value(entry, text));
    }
    Collections.reverse(coefficients);
    return Optional.of(coefficients);
  }

  /** The polynomial as it stands in the list, a zero in front as {@code 0*x^4}. */
  static Formula stated(List<Rational> ascending, String unknown) {
    Polynomial polynomial = Polynomial.ofAscending(ascending);
    Formula written = PolynomialFormula.of(polynomial, unknown);
    int degree = ascending.size() - 1;
    if (degree == polynomial.degree()) {
      return written;
    }
    return Formula.sum(
        List.of(Formula.number(0).times(Formula.name(unknown).power(degree)), written));
  }

  /** The reading to show: a list of coefficients may surprise who did not mean one. */
  static Reading reading(String text, Formula polynomial) {
    String shown = text.strip();
    return Reading.readAs(
        shown.length() > 60 ? shown.substring(0, 59) + "…" : shown,
        "a list of coefficients, highest power first: " + PlainWriter.write(polynomial));
  }

  private static String unwrapped(String text) {
    boolean round = text.startsWith("(") && text.endsWith(")");
    boolean square = text.startsWith("[") && text.endsWith("]");
    return (round || square) && text.length() > 1
        ? text.substring(1, text.length() - 1).strip()
        : text;
  }

  private static Rational value(String entry, String text) throws UnreadableException {
    boolean negative = entry.startsWith("-");
    String bare = negative || entry.startsWith("+") ? entry.substring(1) : entry;
    int bar = bare.indexOf('/');
    Rational over = NumberPrefix.decimal(bar < 0 ? bare : bare.substring(0, bar));
    Rational under = bar < 0 ? Rational.ONE : NumberPrefix.decimal(bare.substring(bar + 1));
    if (under.isZero()) {
      throw new SourceText(text)
          .refused(
              "zero-denominator",
              "The denominator in %s is zero.".formatted(entry),
              text.codePointCount(0, Math.max(0, text.indexOf("/" + bare.substring(bar + 1)))),
              "a denominator that is not zero",
              "");
    }
    Rational value = over.over(under);
    return negative ? value.negate() : value;
  }
}
