package rootwright.working.moduli;

import java.util.List;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.SurdSum;

/** Exact numbers as what an answer holds: the root of a least polynomial that lies in a ball. */
final class ModulusValue {

  private static final int DIGITS = 40;

  private ModulusValue() {}

  /** A sum of square roots. */
  static ExactValue of(SurdSum sum, RealBall near) {
    return among(sum.minimalPolynomial(), near);
  }

  /** A polynomial expression in a root of an irreducible polynomial. */
  static ExactValue of(Polynomial expression, Polynomial irreducible, RealBall near) {
    ResidueAlgebra field = ResidueAlgebra.of(irreducible);
    return among(field.characteristic(field.reduce(expression)).squarefreePart(), near);
  }

  private static ExactValue among(Polynomial polynomial, RealBall near) {
    List<ExactValue> found =
        ExactValues.rootsOf(polynomial).stream()
            .map(ExactRoot::value)
            .filter(value -> value.isReal() && value.enclosure(DIGITS).real().overlaps(near))
            .toList();
    if (found.size() != 1) {
      throw new IllegalStateException(
          "%d roots of %s are near %s".formatted(found.size(), polynomial, near));
    }
    return found.get(0);
  }

  /** √c for a number that is not negative. */
  static SurdSum squareRoot(Rational number) {
    return SurdSum.squareRoot(number);
  }
}
