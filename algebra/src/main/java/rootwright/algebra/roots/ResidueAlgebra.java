package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.stop.Stop;

/**
 * The algebra Q[x]/(P) of expressions in one root of P: an element is a polynomial of lower degree
 * than P, and every rule that holds in it holds for each root r put for x.
 *
 * <p>Trace and norm of an element f are Σ f(r) and ∏ f(r) over all roots, counted with
 * multiplicity. P need not be monic, squarefree or irreducible.
 */
public final class ResidueAlgebra {

  private final Polynomial modulus;
  private final List<Rational> powerSums;

  private ResidueAlgebra(Polynomial modulus) {
    this.modulus = modulus;
    powerSums = PowerSums.of(modulus).upTo(Math.max(0, modulus.degree() - 1));
  }

  /**
   * The algebra of one root of the polynomial.
   *
   * @throws IllegalArgumentException if the polynomial is constant
   */
  public static ResidueAlgebra of(Polynomial modulus) {
    if (modulus.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots: " + modulus);
    }
    return new ResidueAlgebra(modulus);
  }

  /** The polynomial whose roots these are, as it was given. */
  public Polynomial modulus() {
    return modulus;
  }

  /** The number of roots. */
  public int degree() {
    return modulus.degree();
  }

  /** The remainder modulo P: the same value at every root, of lower degree than P. */
  public Polynomial reduce(Polynomial element) {
    return element.remainder(modulus);
  }

  /** The product, reduced. */
  public Polynomial times(Polynomial left, Polynomial right) {
    return reduce(left.times(right));
  }

  /**
   * The power, reduced, by repeated squaring: O(log k) products.
   *
   * @throws IllegalArgumentException if the exponent is negative; invert first
   */
  public Polynomial power(Polynomial element, long exponent) {
    return power(element, BigInteger.valueOf(exponent));
  }

  /**
   * The power, reduced, by repeated squaring: O(log k) products. The coefficients of a far power
   * are long: their number of bits grows with the exponent.
   *
   * @throws IllegalArgumentException if the exponent is negative; invert first
   */
  public Polynomial power(Polynomial element, BigInteger exponent) {
    if (exponent.signum() < 0) {
      throw new IllegalArgumentException("negative power in the algebra of a root: " + exponent);
    }
    Polynomial base = reduce(element);
    Polynomial result = reduce(Polynomial.ONE);
    for (int bit = exponent.bitLength() - 1; bit >= 0; bit--) {
      result = times(result, result);
      if (exponent.testBit(bit)) {
        result = times(result, base);
      }
    }
    return result;
  }

  /** One over the element, or the factor of P whose roots make it zero. Extended Euclid. */
  public Inverse inverse(Polynomial element) {
    Polynomial before = modulus;
    Polynomial now = reduce(element);
    Polynomial factorBefore = Polynomial.ZERO;
    Polynomial factor = Polynomial.ONE;
    // now ≡ factor·element (mod P) throughout; both are scaled to keep the integers short.
    while (now.degree() > 0) {
      Stop.ifUnwanted();
      Polynomial.Division division = before.divide(now);
      Polynomial rest = division.remainder();
      Polynomial restFactor = factorBefore.minus(division.quotient().times(factor));
      Rational scale = rest.isZero() ? Rational.ONE : rest.primitive().lead().over(rest.lead());
      before = now;
      factorBefore = factor;
      now = rest.times(scale);
      factor = restFactor.times(scale);
    }
    return now.isZero()
        ? new Inverse.SharedFactor(before.monic())
        : new Inverse.Inverted(reduce(factor.times(now.lead().reciprocal())));
  }

  /** Σ f(r) over the roots. */
  public Rational trace(Polynomial element) {
    Polynomial reduced = reduce(element);
    Rational sum = Rational.ZERO;
    for (int k = 0; k <= reduced.degree(); k++) {
      sum = sum.plus(reduced.coefficient(k).times(powerSums.get(k)));
    }
    return sum;
  }

  /**
   * Σ A(r)/B(r) over the roots. Worked modulo as many 61-bit primes as a bound on the answer asks
   * for: O(n²) word operations a prime.
   */
  public RootValue trace(Polynomial numerator, Polynomial denominator) {
    return new ModularTrace(modulus.primitive(), reduce(numerator), reduce(denominator))
        .value()
        .<RootValue>map(RootValue.Exact::new)
        .orElseGet(() -> new RootValue.ZeroDenominator(modulus.gcd(denominator)));
  }

  /** ∏ f(r) over the roots: the resultant of P and f, divided by lead(P)^deg f. */
  public Rational norm(Polynomial element) {
    Polynomial reduced = reduce(element);
    return reduced.isZero()
        ? Rational.ZERO
        : Resultant.of(modulus, reduced).over(modulus.lead().power(reduced.degree()));
  }

  /** ∏ A(r)/B(r) over the roots. */
  public RootValue norm(Polynomial numerator, Polynomial denominator) {
    Rational under = norm(denominator);
    return under.isZero()
        ? new RootValue.ZeroDenominator(modulus.gcd(denominator))
        : new RootValue.Exact(norm(numerator).over(under));
  }

  /**
   * The monic polynomial ∏ (T − f(r)) over the roots: the characteristic polynomial of
   * multiplication by f. By the traces of the powers of f and Newton's identities.
   */
  public Polynomial characteristic(Polynomial element) {
    Polynomial base = reduce(element);
    Polynomial power = reduce(Polynomial.ONE);
    List<Rational> sums = new ArrayList<>(degree());
    for (int k = 1; k <= degree(); k++) {
      power = times(power, base);
      sums.add(trace(power));
    }
    return FromPowerSums.polynomial(sums);
  }
}
