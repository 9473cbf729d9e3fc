package rootwright.algebra.value;

import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;

/**
 * An algebraic number known exactly. Equality of values is equality of numbers, also between
 * members of different kinds, because each number has one kind: rational, quadratic, or of higher
 * degree.
 */
public sealed interface ExactValue permits RationalValue, QuadraticSurd, RootOf {

  /** Whether the number is real. */
  boolean isReal();

  /** The number as it is written. */
  Formula toFormula();

  /** The irreducible primitive polynomial with positive lead that has this number as a root. */
  Polynomial minimalPolynomial();

  /**
   * A disc with radius at most 10^−digits times the distance of its centre from zero. The centre of
   * the disc round a real number is real.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  ComplexBall enclosure(int digits);

  /**
   * The number rounded to this many significant digits (each part of a number that is not real),
   * always with a point; empty if the number, or both its parts, are whole. A real number is
   * rounded correctly, a half away from zero. A part of a number that is not real and that the
   * enclosure cannot tell from zero, or from the middle between two decimals, with 60 digits to
   * spare, is taken as exactly that.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  Optional<String> decimal(int digits);
}
