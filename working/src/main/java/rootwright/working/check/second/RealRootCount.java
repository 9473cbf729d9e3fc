package rootwright.working.check.second;

import java.util.List;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
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
    List<EnclosedRoot> real =
        RootEnclosures.of(polynomial, DIGITS).stream().filter(EnclosedRoot::real).toList();
    return new RealRootCount(real.size(), real.stream().mapToInt(EnclosedRoot::multiplicity).sum());
  }
}
