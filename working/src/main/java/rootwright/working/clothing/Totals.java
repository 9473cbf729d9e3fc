package rootwright.working.clothing;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.algebra.value.RootOf;
import rootwright.algebra.value.SurdSum;
import rootwright.working.problem.SurdReader;

/** Sums, products and logarithms of exact values. */
final class Totals {

  private Totals() {}

  /** The sum; empty if it is neither rational nor a + b·√d. */
  static Optional<ExactValue> sum(List<ExactValue> values) {
    return total(values, true);
  }

  /** The product; empty if it is neither rational nor a + b·√d. */
  static Optional<ExactValue> product(List<ExactValue> values) {
    return total(values, false);
  }

  private static Optional<ExactValue> total(List<ExactValue> values, boolean sum) {
    SurdSum total = SurdSum.of(sum ? Rational.ZERO : Rational.ONE);
    Map<Polynomial, Integer> higher = new HashMap<>();
    for (ExactValue value : values) {
      if (value instanceof RootOf root) {
        higher.merge(root.minimalPolynomial(), 1, Integer::sum);
      } else {
        SurdSum one = SurdReader.of(value.toFormula()).orElseThrow();
        total = sum ? total.plus(one) : total.times(one);
      }
    }
    for (Map.Entry<Polynomial, Integer> entry : higher.entrySet()) {
      Polynomial p = entry.getKey();
      int n = p.degree();
      if (entry.getValue() != n) {
        return Optional.empty();
      }
      Rational product = p.coefficient(0).over(p.lead());
      SurdSum all =
          SurdSum.of(
              sum
                  ? p.coefficient(n - 1).over(p.lead()).negate()
                  : n % 2 == 0 ? product : product.negate());
      total = sum ? total.plus(all) : total.times(all);
    }
    return exact(total);
  }

  private static Optional<ExactValue> exact(SurdSum number) {
    if (number.isRational()) {
      return Optional.of(new RationalValue(number.rationalPart()));
    }
    BigInteger d = number.terms().lastKey();
    return number.conjugates().size() == 2
        ? Optional.of(QuadraticSurd.of(number.rationalPart(), number.factor(d), d))
        : Optional.empty();
  }

  /** log_b of a positive number: whole where it can be. */
  static Formula logarithm(ExactValue value, int base) {
    if (value instanceof RationalValue rational) {
      Rational number = rational.number();
      for (int k = -60; k <= 60; k++) {
        if (Rational.of(base).power(k).equals(number)) {
          return Formula.number(k);
        }
      }
    }
    return new Formula.Application("log", List.of(value.toFormula(), Formula.number(base)));
  }
}
