package rootwright.working.check.second;

import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.check.Verdict;
import rootwright.working.problem.RootFunction;

/** The sum of f(r) over the real roots alone, on certified enclosures. */
public final class RealRootTotal {

  private static final int DIGITS = 30;
  private static final int[] PRECISIONS = {50, 120, 400};
  private static final Rational TOLERANCE = Rational.of(10).power(-DIGITS);

  private RealRootTotal() {}

  /** Whether this is the sum over the real roots, each as often as it occurs. */
  public static Verdict of(Polynomial polynomial, RootFunction f, ExactValue claimed) {
    for (int digits : PRECISIONS) {
      int bits = digits * 10 / 3 + 32;
      ComplexBall sum = ComplexBall.ZERO;
      for (EnclosedRoot root : RootEnclosures.of(polynomial, digits)) {
        if (root.real()) {
          ComplexBall under = at(f.denominator(), root.disc(), bits);
          if (under.containsZero()) {
            return new Verdict.Undecided("a denominator cannot be told from zero");
          }
          ComplexBall value = at(f.numerator(), root.disc(), bits).over(under, bits);
          sum = sum.plus(value.times(ComplexBall.exact(root.multiplicity())));
        }
      }
      ComplexBall difference = sum.minus(claimed.enclosure(digits));
      if (!difference.containsZero()) {
        return new Verdict.Refuted("the enclosures of the real roots add up to " + sum);
      } else if (difference.radius().toRational().compareTo(TOLERANCE) <= 0) {
        return Verdict.confirmed("certified enclosures of the real roots", DIGITS);
      }
    }
    return new Verdict.Undecided("the enclosures are not narrow enough");
  }

  private static ComplexBall at(Polynomial polynomial, ComplexBall point, int bits) {
    ComplexBall value = ComplexBall.ZERO;
    for (int k = polynomial.degree(); k >= 0; k--) {
      value = value.times(point).plus(ComplexBall.of(polynomial.coefficient(k), bits));
    }
    return value;
  }
}
