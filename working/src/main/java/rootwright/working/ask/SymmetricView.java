package rootwright.working.ask;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Orbit;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricRecognition;
import rootwright.working.check.exact.Expansion;
import rootwright.working.problem.Problem;

/**
 * A formula as a symmetric polynomial, following its form so that nothing is multiplied out in n
 * letters: Σ r²s is m(2,1) at once.
 */
final class SymmetricView {

  /** Highest power of a symmetric polynomial that is multiplied out. */
  private static final int HIGHEST_POWER = 12;

  private SymmetricView() {}

  static Optional<SymmetricPolynomial> of(Formula formula, Problem problem) {
    int n = problem.degree();
    if (formula instanceof Formula.Numeral numeral) {
      return Optional.of(SymmetricPolynomial.constant(n, numeral.value()));
    } else if (formula instanceof Formula.Family family) {
      return family(family, n);
    } else if (formula instanceof Formula.Aggregate aggregate
        && aggregate.operation() == Formula.Aggregate.Operation.SUM) {
      return Expansion.of(aggregate.body(), problem).flatMap(body -> sumOfImages(body, n));
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of(), problem).map(of -> of.times(Rational.MINUS_ONE));
    } else if (formula instanceof Formula.Sum sum) {
      return all(sum.terms(), problem)
          .map(terms -> terms.stream().reduce(SymmetricPolynomial::plus).orElseThrow());
    } else if (formula instanceof Formula.Product product) {
      return all(product.factors(), problem)
          .map(factors -> factors.stream().reduce(SymmetricPolynomial::times).orElseThrow());
    } else if (formula instanceof Formula.Power power
        && power.exponent() instanceof Formula.Numeral exponent
        && exponent.value().isInteger()
        && exponent.value().signum() >= 0
        && exponent.value().numerator().bitLength() < 8
        && exponent.value().intValueExact() <= HIGHEST_POWER) {
      return of(power.base(), problem).map(base -> base.power(exponent.value().intValueExact()));
    }
    return Optional.empty();
  }

  static Optional<SymmetricPolynomial> recognised(MultivariatePolynomial polynomial, int n) {
    return polynomial.unknowns() <= n
            && SymmetricPolynomial.recognise(polynomial, n)
                instanceof SymmetricRecognition.Symmetric symmetric
        ? Optional.of(symmetric.polynomial())
        : Optional.empty();
  }

  private static Optional<List<SymmetricPolynomial>> all(List<Formula> parts, Problem problem) {
    List<SymmetricPolynomial> found = new ArrayList<>();
    for (Formula part : parts) {
      Optional<SymmetricPolynomial> one = of(part, problem);
      if (one.isEmpty()) {
        return Optional.empty();
      }
      found.add(one.get());
    }
    return Optional.of(found);
  }

  private static Optional<SymmetricPolynomial> family(Formula.Family family, int n) {
    if (!(family.index() instanceof Formula.Numeral index)
        || !index.value().isInteger()
        || index.value().signum() < 0
        || index.value().numerator().bitLength() > 20) {
      return Optional.empty();
    }
    int k = index.value().intValueExact();
    return switch (family.letter()) {
      case "S", "p" ->
          Optional.of(
              k == 0
                  ? SymmetricPolynomial.constant(n, Rational.of(n))
                  : SymmetricPolynomial.powerSum(n, k));
      case "e" ->
          Optional.of(
              k > n
                  ? SymmetricPolynomial.constant(n, Rational.ZERO)
                  : SymmetricPolynomial.elementary(n, k));
      case "h" -> k <= 30 ? Optional.of(SymmetricPolynomial.complete(n, k)) : Optional.empty();
      default -> Optional.empty();
    };
  }

  /**
   * Σ over the images of a polynomial: every term x^α is met in all its arrangements, each as often
   * as there are renamings that give it, divided by those that leave the body unchanged.
   */
  private static Optional<SymmetricPolynomial> sumOfImages(RationalFunction body, int n) {
    if (!body.isPolynomial() || body.unknowns() > n) {
      return Optional.empty();
    }
    BigInteger images = Orbit.sizeOf(body, n);
    SymmetricPolynomial sum = SymmetricPolynomial.constant(n, Rational.ZERO);
    for (var term : body.numerator().terms().entrySet()) {
      Partition shape = shape(term.getKey());
      Rational share = new Rational(images, shape.orbitSize(n));
      sum = sum.plus(SymmetricPolynomial.monomial(n, shape).times(term.getValue().times(share)));
    }
    return Optional.of(sum);
  }

  private static Partition shape(Monomial monomial) {
    int[] parts = new int[monomial.length()];
    int size = 0;
    for (int k = 0; k < parts.length; k++) {
      if (monomial.exponent(k) > 0) {
        parts[size++] = monomial.exponent(k);
      }
    }
    Integer[] boxed = new Integer[size];
    for (int k = 0; k < size; k++) {
      boxed[k] = parts[k];
    }
    Arrays.sort(boxed, Comparator.reverseOrder());
    int[] descending = Arrays.stream(boxed).mapToInt(Integer::intValue).toArray();
    return Partition.of(descending);
  }
}
