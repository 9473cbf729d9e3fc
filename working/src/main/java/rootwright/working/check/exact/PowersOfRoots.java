package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.roots.RootTower;

/** Powers of expressions in the roots of one polynomial, in the way that keeps them short. */
final class PowersOfRoots {

  /** Longest sum that multiplying out a power may give. */
  private static final long MOST_TERMS = 5_000;

  /** Largest dimension of an algebra of roots in which powers are reduced as they grow. */
  private static final BigInteger LARGEST_TOWER = BigInteger.valueOf(120);

  /** The number of bits of a power in one root has at most so many bits itself. */
  private static final int LONGEST_POWER_BITS = 22;

  /** Up to this exponent a power in one root is short enough as it stands. */
  private static final BigInteger HIGHEST_WRITTEN_OUT = BigInteger.valueOf(7);

  /** Highest exponent of a sum in several roots. */
  private static final int HIGHEST_POWER = 10_000;

  private final Polynomial polynomial;
  private final Unknowns unknowns;

  PowersOfRoots(Polynomial polynomial, Unknowns unknowns) {
    this.polynomial = polynomial;
    this.unknowns = unknowns;
  }

  /**
   * The power of an expression in the roots and in square roots; reduced by P(r) = 0 where it would
   * be long otherwise.
   *
   * @throws Unevaluable if it is too long to be written out
   */
  MultivariatePolynomial of(MultivariatePolynomial base, BigInteger exponent) {
    if (base.isConstant() && base.coefficient(Monomial.ONE).absolute().isOne()) {
      return base.power(exponent.testBit(0) ? 1 : 2);
    }
    List<Integer> roots = unknowns.rootsIn(base);
    boolean inRoots = unknowns.isInRootsAlone(base);
    if (inRoots && roots.size() == 1 && exponent.compareTo(HIGHEST_WRITTEN_OUT) > 0) {
      requireWritable(exponent);
      Polynomial reduced =
          ResidueAlgebra.of(polynomial).power(Unknowns.inOne(base, roots.get(0)), exponent);
      return MultivariatePolynomial.of(reduced, roots.get(0));
    }
    if (exponent.compareTo(BigInteger.valueOf(HIGHEST_POWER)) > 0) {
      throw Unevaluable.tooLarge("the exponent " + exponent + " is above " + HIGHEST_POWER);
    }
    int e = exponent.intValue();
    if (termsOfPower(base.terms().size(), e) <= MOST_TERMS) {
      return base.power(e);
    }
    if (inRoots && !roots.isEmpty()) {
      RootTower tower = RootTower.of(polynomial, roots.get(roots.size() - 1) + 1);
      if (tower.dimension().compareTo(LARGEST_TOWER) <= 0) {
        return towerPower(tower, base, e);
      }
    }
    throw Unevaluable.tooLarge("multiplied out, the power would have too many terms");
  }

  /** Refuses a power whose coefficients would be longer than anyone wants to see. */
  private void requireWritable(BigInteger exponent) {
    // Every root is at most 1 + max |a_k/a_n| by size (Cauchy 1829).
    Rational largest = Rational.ONE;
    for (Rational coefficient : polynomial.monic().ascending()) {
      Rational size = coefficient.absolute().plus(Rational.ONE);
      largest = largest.compareTo(size) < 0 ? size : largest;
    }
    int bits =
        largest.numerator().bitLength()
            - largest.denominator().bitLength()
            + 1
            + polynomial.denominator().bitLength()
            + polynomial.primitive().lead().numerator().bitLength();
    if (exponent.multiply(BigInteger.valueOf(bits)).bitLength() > LONGEST_POWER_BITS) {
      throw Unevaluable.tooLarge(
          "written out, the power has too many digits; ask for it modulo a number");
    }
  }

  private static MultivariatePolynomial towerPower(
      RootTower tower, MultivariatePolynomial base, int exponent) {
    return RepeatedSquaring.power(
        tower.normalForm(base), exponent, MultivariatePolynomial.ONE, tower::times);
  }

  /** Number of monomials of degree e in t letters, or a number above the limit. */
  static long termsOfPower(int t, int e) {
    long terms = 1;
    for (int k = 1; k < t; k++) {
      terms = terms * (e + k) / k;
      if (terms > MOST_TERMS) {
        return terms;
      }
    }
    return terms;
  }
}
