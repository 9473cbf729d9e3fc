package rootwright.algebra.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Precision;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Roots of quartics that need no root under a root: (x − h)⁴ − 2(α + β)(x − h)² + (α − β)² has the
 * roots h ± √α ± √β, as multiplying out shows.
 */
final class QuarticSurds {

  private static final int FIRST_DIGITS = 20;

  private QuarticSurds() {}

  /** The root as a sum of square roots of rational numbers; empty if it is none of that form. */
  static Optional<SurdSum> of(RootOf root) {
    return root.polynomial().degree() == 4
        ? sums(root.polynomial().monic()).map(sums -> meeting(root, sums))
        : Optional.empty();
  }

  private static Optional<List<SurdSum>> sums(Polynomial monic) {
    Rational middle = monic.coefficient(3).over(Rational.of(-4));
    Polynomial depressed = monic.compose(Polynomial.ofAscending(List.of(middle, Rational.ONE)));
    SurdSum root = SurdSum.squareRoot(depressed.coefficient(0));
    if (!depressed.coefficient(1).isZero() || !root.isRational()) {
      return Optional.empty();
    }
    Rational half = depressed.coefficient(2).over(Rational.of(-2));
    SurdSum alpha = SurdSum.squareRoot(half.plus(root.rationalPart()).over(Rational.TWO));
    SurdSum beta = SurdSum.squareRoot(half.minus(root.rationalPart()).over(Rational.TWO));
    List<SurdSum> sums = new ArrayList<>();
    for (SurdSum first : List.of(alpha, alpha.negate())) {
      for (SurdSum second : List.of(beta, beta.negate())) {
        sums.add(SurdSum.of(middle).plus(first).plus(second));
      }
    }
    return Optional.of(sums);
  }

  /** The sums are the roots, so narrow enough discs leave one. */
  private static SurdSum meeting(RootOf root, List<SurdSum> sums) {
    for (int digits = FIRST_DIGITS; ; digits *= 2) {
      ComplexBall disc = root.enclosure(digits);
      int bits = Precision.bits(digits);
      List<SurdSum> near = sums.stream().filter(sum -> sum.enclosure(bits).overlaps(disc)).toList();
      if (near.size() == 1) {
        return near.get(0);
      }
    }
  }
}
