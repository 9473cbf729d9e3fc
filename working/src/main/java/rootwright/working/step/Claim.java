package rootwright.working.step;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;

/** What a line of a working asserts, in a form that can be checked. */
public sealed interface Claim {

  /**
   * All sides are equal, whichever root each root name stands for, and identically in the free
   * letters.
   */
  record Equal(Setting setting, List<Formula> sides) implements Claim {
    public Equal {
      sides = List.copyOf(sides);
      if (sides.size() < 2) {
        throw new IllegalArgumentException("an equality of %d sides".formatted(sides.size()));
      }
    }
  }

  /**
   * The roots of {@code image}, with multiplicity, are the distinct formal images of {@code map}
   * when the roots are renamed in all ways: {@code map = r − 3} has n images, {@code map = r·s} has
   * n(n − 1)/2.
   */
  record HasRoots(Setting setting, Polynomial image, Formula map) implements Claim {}

  /** A thought that no computation confirms; shown as such. */
  record Argument() implements Claim {}

  /** The claim that the formulas are equal in a setting. */
  static Claim equal(Setting setting, Formula... sides) {
    return new Equal(setting, List.of(sides));
  }
}
