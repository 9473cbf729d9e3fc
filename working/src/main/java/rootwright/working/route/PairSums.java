package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.PairPolynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/** The sums r + s or the products rs of all pairs of roots, and how their powers are added up. */
enum PairSums {
  SUMS {
    @Override
    int highestIndex(int power) {
      return power;
    }

    /** Σ (r + s)^k over ordered choices, r with itself included, is Σ C(k, j)·S_j·S_(k−j). */
    @Override
    Formula written(int k, List<Rational> s) {
      Combination sum = new Combination();
      Rational binomial = Rational.ONE;
      for (int j = 0; 2 * j <= k; j++) {
        Rational times = 2 * j == k ? binomial : binomial.times(2);
        if (!s.get(j).isZero() && !s.get(k - j).isZero()) {
          sum.plus(times, product(s.get(j), s.get(k - j)));
        }
        binomial = binomial.times(k - j).over(Rational.of(j + 1L));
      }
      if (!s.get(k).isZero()) {
        sum.plus(Rational.TWO.power(k).negate(), Formula.number(s.get(k)));
      }
      return sum.formula();
    }

    @Override
    Polynomial polynomial(Polynomial polynomial) {
      return PairPolynomial.sums(polynomial);
    }

    @Override
    MultivariatePolynomial of(int one, int other) {
      return MultivariatePolynomial.unknown(one).plus(MultivariatePolynomial.unknown(other));
    }
  },
  PRODUCTS {
    @Override
    int highestIndex(int power) {
      return 2 * power;
    }

    /** Σ (rs)^k over ordered choices, r with itself included, is S_k². */
    @Override
    Formula written(int k, List<Rational> s) {
      Combination sum = new Combination();
      if (!s.get(k).isZero()) {
        sum.plus(Formula.number(s.get(k)).power(2));
      }
      return s.get(2 * k).isZero()
          ? sum.formula()
          : sum.plus(Rational.MINUS_ONE, Formula.number(s.get(2 * k))).formula();
    }

    @Override
    Polynomial polynomial(Polynomial polynomial) {
      return PairPolynomial.products(polynomial);
    }

    @Override
    MultivariatePolynomial of(int one, int other) {
      return MultivariatePolynomial.unknown(one).times(MultivariatePolynomial.unknown(other));
    }
  };

  /** The highest S_k that the power sums of the pairs up to this one need. */
  abstract int highestIndex(int power);

  /** Twice the sum of the k-th powers, from the power sums S_0, S_1, … of the roots. */
  abstract Formula written(int k, List<Rational> s);

  /** The polynomial that has them as roots. */
  abstract Polynomial polynomial(Polynomial polynomial);

  /** The expression in two unknowns. */
  abstract MultivariatePolynomial of(int one, int other);

  /** Which of the two an expression is, written with any two names. */
  static Optional<PairSums> of(RationalFunction expression) {
    if (!expression.isPolynomial()) {
      return Optional.empty();
    }
    MultivariatePolynomial written = expression.numerator();
    List<Integer> occurring =
        IntStream.range(0, written.unknowns())
            .filter(k -> written.degreeIn(k) > 0)
            .boxed()
            .toList();
    if (occurring.size() != 2) {
      return Optional.empty();
    }
    for (PairSums kind : values()) {
      if (kind.of(occurring.get(0), occurring.get(1)).equals(written)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /**
   * Writes the power sums of the roots and of the pairs, which Newton's identities turn into the
   * polynomial of the pairs.
   *
   * @param pair the expression as it is asked for
   */
  Polynomial write(Lines lines, Asked asked, Formula pair) {
    Problem problem = asked.problem();
    Polynomial image = polynomial(problem.polynomial());
    int highest = highestIndex(image.degree());
    TreeSet<Integer> needed = new TreeSet<>();
    IntStream.rangeClosed(1, image.degree()).forEach(needed::add);
    IntStream.rangeClosed(1, image.degree()).map(this::highestIndex).forEach(needed::add);
    PowerSumLines sums = PowerSumLines.of(asked, highest);
    sums.write(lines, needed);
    List<Rational> s = PowerSums.of(problem.polynomial()).upTo(highest);
    List<Rational> t = PowerSums.of(image).upTo(image.degree());
    for (int k = 1; k <= image.degree(); k++) {
      List<Formula> sides = new ArrayList<>();
      sides.add(new Formula.Aggregate(Formula.Aggregate.Operation.SUM, Combination.power(pair, k)));
      Formula twice = written(k, s);
      if (!twice.equals(Formula.number(0))) {
        sides.add(twice.over(Formula.number(2)));
      }
      sides.add(Formula.number(t.get(k)));
      lines.add(
          Idea.EXPAND,
          k == 1
              ? "all choices of two, less each root with itself, every pair met twice"
              : "in the same way",
          sides);
    }
    return image;
  }

  private static Formula product(Rational one, Rational other) {
    return Combination.product(List.of(Formula.number(one), Formula.number(other)));
  }
}
