package rootwright.composing.scan.filter;

import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Counts distinct real roots by Sturm's theorem: the sign changes of the chain P, P′, −rem, … at −∞
 * less those at +∞. (C. Sturm 1829; the chain need not start from a squarefree polynomial.)
 */
final class SturmCount {

  private SturmCount() {}

  static int distinctRealRoots(Polynomial polynomial) {
    Polynomial previous = polynomial;
    Polynomial current = polynomial.derivative();
    int changesBelow = 0;
    int changesAbove = 0;
    while (!current.isZero()) {
      int above = previous.lead().signum() * current.lead().signum();
      int below = (previous.degree() - current.degree()) % 2 == 0 ? above : -above;
      changesAbove += above < 0 ? 1 : 0;
      changesBelow += below < 0 ? 1 : 0;
      Polynomial next = reduced(previous.remainder(current).negate());
      previous = current;
      current = next;
    }
    return changesBelow - changesAbove;
  }

  /** The primitive multiple with the same signs: it keeps the numbers small. */
  private static Polynomial reduced(Polynomial polynomial) {
    Polynomial primitive = polynomial.primitive();
    return polynomial.lead().signum() < 0 ? primitive.times(Rational.MINUS_ONE) : primitive;
  }
}
