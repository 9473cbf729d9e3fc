package rootwright.working.integers;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * One value of the letter, with the integers that are its roots.
 *
 * @param roots ascending, with multiplicity
 */
record Found(Rational letter, List<BigInteger> roots) {
  Found {
    roots = List.copyOf(roots);
  }
}
