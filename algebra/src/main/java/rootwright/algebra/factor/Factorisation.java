package rootwright.algebra.factor;

import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.univar.UnivariateFactorization;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A polynomial written as a number times powers of irreducible polynomials over the rational
 * numbers.
 *
 * <p>Repeated factors, rational roots and cyclotomic factors are split off by our own means; what
 * is left, of degree 4 or more, is handed to the Rings library, and nothing outside this class
 * knows that library. A polynomial of degree 24 or more that splits into many factors modulo every
 * prime is out of reach.
 *
 * @param content the rational number in front; it carries the sign
 * @param factors by degree, then by coefficients from the highest power down; empty for a constant
 */
public record Factorisation(Rational content, List<IrreducibleFactor> factors) {

  /** Below this degree no polynomial takes long. */
  private static final int SURELY_WITHIN_REACH = 24;

  /** Most factors modulo a prime whose subsets are tried. */
  private static final int MOST_PARTS = 12;

  /** Copies the list. */
  public Factorisation {
    factors = List.copyOf(factors);
  }

  /**
   * Factors a polynomial if that is within reach.
   *
   * @throws IllegalArgumentException for the zero polynomial
   */
  public static Optional<Factorisation> tried(Polynomial polynomial) {
    try {
      return Optional.of(of(polynomial));
    } catch (OutOfReachException far) {
      return Optional.empty();
    }
  }

  /**
   * Factors a polynomial.
   *
   * @throws IllegalArgumentException for the zero polynomial
   * @throws OutOfReachException if it would take too long
   */
  public static Factorisation of(Polynomial polynomial) {
    List<IrreducibleFactor> factors = new ArrayList<>();
    for (SquarefreeFactor factor : SquarefreeDecomposition.of(polynomial)) {
      for (Polynomial part : splitSquarefree(factor.polynomial())) {
        factors.add(new IrreducibleFactor(part, factor.multiplicity()));
      }
    }
    factors.sort(Comparator.comparing(IrreducibleFactor::polynomial, byDegreeThenCoefficients()));
    Rational lead = Rational.ONE;
    for (IrreducibleFactor factor : factors) {
      lead = lead.times(factor.polynomial().lead().power(factor.multiplicity()));
    }
    Factorisation result = new Factorisation(polynomial.lead().over(lead), factors);
    if (!result.product().equals(polynomial)) {
      throw new IllegalStateException("the factors of " + polynomial + " multiply to another");
    }
    return result;
  }

  /** Whether the polynomial is irreducible: one factor, once. */
  public boolean isIrreducible() {
    return factors.size() == 1 && factors.get(0).multiplicity() == 1;
  }

  /** Everything multiplied out. */
  public Polynomial product() {
    Polynomial product = Polynomial.constant(content);
    for (IrreducibleFactor factor : factors) {
      product = product.times(factor.polynomial().power(factor.multiplicity()));
    }
    return product;
  }

  private static List<Polynomial> splitSquarefree(Polynomial polynomial) {
    List<Polynomial> parts = new ArrayList<>();
    Polynomial rest = polynomial;
    for (Rational root : RationalRoots.ofSquarefree(polynomial)) {
      Polynomial linear = Polynomial.ofAscending(List.of(root.negate(), Rational.ONE)).primitive();
      parts.add(linear);
      rest = rest.divide(linear).quotient().primitive();
    }
    for (Polynomial cyclotomic : CyclotomicFactors.of(rest)) {
      parts.add(cyclotomic);
      rest = rest.divide(cyclotomic).quotient().primitive();
    }
    requireWithinReach(rest);
    if (rest.degree() > 3 && !IrreducibleByPrimes.proves(rest)) {
      parts.addAll(splitByLibrary(rest));
    } else if (rest.degree() > 0) {
      // Degree 2 or 3 without a rational root does not split either.
      parts.add(rest);
    }
    return parts;
  }

  private static void requireWithinReach(Polynomial rest) {
    if (rest.degree() >= SURELY_WITHIN_REACH) {
      int parts = ModularSplitting.fewestParts(rest);
      if (parts > MOST_PARTS) {
        throw new OutOfReachException(rest.degree(), parts);
      }
    }
  }

  private static List<Polynomial> splitByLibrary(Polynomial polynomial) {
    BigInteger[] ascending = new BigInteger[polynomial.degree() + 1];
    for (int k = 0; k < ascending.length; k++) {
      ascending[k] = new BigInteger(polynomial.numerator(k));
    }
    List<Polynomial> parts = new ArrayList<>();
    for (UnivariatePolynomial<BigInteger> part :
        UnivariateFactorization.FactorSquareFreeInZ(UnivariatePolynomial.create(Rings.Z, ascending))
            .factors) {
      java.math.BigInteger[] coefficients = new java.math.BigInteger[part.degree() + 1];
      for (int k = 0; k < coefficients.length; k++) {
        coefficients[k] = new java.math.BigInteger(part.get(k).toByteArray());
      }
      parts.add(Polynomial.ofAscending(coefficients, java.math.BigInteger.ONE).primitive());
    }
    return parts;
  }

  private static Comparator<Polynomial> byDegreeThenCoefficients() {
    return (one, other) -> {
      int order = Integer.compare(one.degree(), other.degree());
      for (int k = one.degree(); k >= 0 && order == 0; k--) {
        order = one.numerator(k).compareTo(other.numerator(k));
      }
      return order;
    };
  }
}
