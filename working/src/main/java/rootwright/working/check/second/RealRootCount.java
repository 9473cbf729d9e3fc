package rootwright.working.check.second;

import java.util.List;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The number of real roots, read from certified enclosures of all roots.
 *
 * @param distinct each real root counted once
 * @param withMultiplicity each as often as it occurs
 */
public record RealRootCount(int distinct, int withMultiplicity) {

  private static final int DIGITS = 15;

  /** Counts the real roots of a polynomial of degree at least 1. */
  public static RealRootCount of(Polynomial polynomial) {
    return of(RootEnclosures.of(polynomial, DIGITS).stream().filter(EnclosedRoot::real).toList());
  }

  /** Counts the positive roots of a polynomial that is not zero. */
  public static RealRootCount positive(Polynomial polynomial) {
    int zeros = 0;
    while (polynomial.coefficient(zeros).isZero()) {
      zeros++;
    }
    Polynomial rest = polynomial.divide(Polynomial.monomial(Rational.ONE, zeros)).quotient();
    if (rest.degree() < 1) {
      return new RealRootCount(0, 0);
    }
    // Zero is no root, so discs that are small enough lie on one side of it.
    for (int digits = DIGITS; ; digits *= 2) {
      List<EnclosedRoot> real =
          RootEnclosures.of(rest, digits).stream().filter(EnclosedRoot::real).toList();
      if (real.stream().noneMatch(root -> root.interval().containsZero())) {
        return of(real.stream().filter(root -> root.interval().isPositive()).toList());
      }
    }
  }

  private static RealRootCount of(List<EnclosedRoot> roots) {
    return new RealRootCount(
        roots.size(), roots.stream().mapToInt(EnclosedRoot::multiplicity).sum());
  }
}
