package rootwright.composing.scan.filter;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.composing.scan.candidate.IntegerForm;

/**
 * The discriminant a_n^{2n−2} ∏ (r_i − r_j)² as a form in the coefficients, for degrees 2 to 4.
 *
 * <p>Closed forms as printed in textbooks (checked by the tests against products of differences).
 */
final class Discriminant {

  private static final Optional<IntegerForm> QUADRATIC = form("1 020", "-4 101");

  /** b²c² − 4ac³ − 4b³d + 18abcd − 27a²d², the exponents of a, b, c, d. */
  private static final Optional<IntegerForm> CUBIC =
      form("1 0220", "-4 1030", "-4 0301", "18 1111", "-27 2002");

  /** The sixteen terms, the exponents of a, b, c, d, e. */
  private static final Optional<IntegerForm> QUARTIC =
      form(
          "256 30003",
          "-192 21012",
          "-128 20202",
          "144 20121",
          "-27 20040",
          "144 12102",
          "-6 12021",
          "-80 11211",
          "18 11130",
          "16 10401",
          "-4 10320",
          "-27 04002",
          "18 03111",
          "-4 03030",
          "-4 02301",
          "1 02220");

  private Discriminant() {}

  /** The form for a degree; always the same object for the same degree. */
  static Optional<IntegerForm> of(int degree) {
    return switch (degree) {
      case 2 -> QUADRATIC;
      case 3 -> CUBIC;
      case 4 -> QUARTIC;
      default -> Optional.empty();
    };
  }

  /** Reads terms: the coefficient, a blank, and one digit for the exponent of a_n, …, a₀. */
  private static Optional<IntegerForm> form(String... terms) {
    Map<Monomial, Rational> read = new TreeMap<>();
    for (String term : terms) {
      int blank = term.indexOf(' ');
      String descending = term.substring(blank + 1);
      int[] exponents = new int[descending.length()];
      for (int k = 0; k < exponents.length; k++) {
        exponents[k] = descending.charAt(exponents.length - 1 - k) - '0';
      }
      read.put(Monomial.of(exponents), Rational.parse(term.substring(0, blank)));
    }
    return Optional.of(new IntegerForm(MultivariatePolynomial.of(read)));
  }
}
