package rootwright.algebra.symmetric;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** Writes a polynomial whose unknown k − 1 has a letter with index k, for a programmer's eye. */
final class Naming {

  private Naming() {}

  static String lettered(MultivariatePolynomial polynomial, char letter) {
    return polynomial.isZero()
        ? "0"
        : polynomial.terms().descendingMap().entrySet().stream()
            .map(
                term ->
                    term.getKey().length() == 0
                        ? term.getValue().toString()
                        : term.getValue() + "*" + lettered(term.getKey(), letter))
            .collect(Collectors.joining(" + "));
  }

  private static String lettered(Monomial monomial, char letter) {
    return IntStream.range(0, monomial.length())
        .filter(k -> monomial.exponent(k) > 0)
        .mapToObj(
            k ->
                letter
                    + Integer.toString(k + 1)
                    + (monomial.exponent(k) == 1 ? "" : "^" + monomial.exponent(k)))
        .collect(Collectors.joining("*"));
  }
}
