package rootwright.algebra.symmetric;

import java.math.BigInteger;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** What became of reading a polynomial as a symmetric one. */
public sealed interface SymmetricRecognition {

  /** It is symmetric. */
  record Symmetric(SymmetricPolynomial polynomial) implements SymmetricRecognition {}

  /**
   * It is not: exchanging two variables turns a term into one with another coefficient.
   *
   * @param term a monomial that occurs
   * @param coefficient its coefficient, not zero
   * @param first number of one exchanged variable, counted from 0
   * @param second number of the other
   * @param image the monomial after the exchange
   * @param imageCoefficient the coefficient of the image, 0 if it does not occur
   */
  record NotSymmetric(
      Monomial term,
      Rational coefficient,
      int first,
      int second,
      Monomial image,
      Rational imageCoefficient)
      implements SymmetricRecognition {}

  /**
   * Reads a polynomial in n variables: it is symmetric exactly when every orbit that occurs is
   * complete and has one coefficient. Takes one step for each term.
   *
   * @throws IllegalArgumentException if an unknown with number n or above occurs
   */
  static SymmetricRecognition of(MultivariatePolynomial expression, int variables) {
    if (expression.unknowns() > variables) {
      throw new IllegalArgumentException(
          "unknown number %d in a polynomial in %d variables"
              .formatted(expression.unknowns() - 1, variables));
    }
    NavigableMap<Partition, Rational> coefficients = new TreeMap<>();
    Map<Partition, Integer> counts = new TreeMap<>();
    for (Map.Entry<Monomial, Rational> term : expression.terms().entrySet()) {
      Partition orbit = Partition.of(exponents(term.getKey(), variables));
      Rational known = coefficients.putIfAbsent(orbit, term.getValue());
      if (known != null && !known.equals(term.getValue())) {
        return witness(expression, variables, orbit);
      }
      counts.merge(orbit, 1, Integer::sum);
    }
    for (Map.Entry<Partition, Integer> count : counts.entrySet()) {
      BigInteger size = count.getKey().orbitSize(variables);
      if (!size.equals(BigInteger.valueOf(count.getValue()))) {
        return witness(expression, variables, count.getKey());
      }
    }
    return new Symmetric(SymmetricPolynomial.of(variables, coefficients));
  }

  /** Exchanges of neighbours generate every renaming, so one of them shows the asymmetry. */
  private static SymmetricRecognition witness(
      MultivariatePolynomial expression, int variables, Partition orbit) {
    for (Map.Entry<Monomial, Rational> term : expression.terms().descendingMap().entrySet()) {
      int[] exponents = exponents(term.getKey(), variables);
      if (Partition.of(exponents).equals(orbit)) {
        for (int k = 0; k + 1 < variables; k++) {
          int[] exchanged = exponents.clone();
          exchanged[k] = exponents[k + 1];
          exchanged[k + 1] = exponents[k];
          Monomial image = Monomial.of(exchanged);
          Rational other = expression.coefficient(image);
          if (!other.equals(term.getValue())) {
            return new NotSymmetric(term.getKey(), term.getValue(), k, k + 1, image, other);
          }
        }
      }
    }
    throw new IllegalStateException("no exchange changes the orbit " + orbit);
  }

  private static int[] exponents(Monomial monomial, int variables) {
    int[] exponents = new int[variables];
    for (int k = 0; k < monomial.length(); k++) {
      exponents[k] = monomial.exponent(k);
    }
    return exponents;
  }
}
