package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.stop.Stop;

/**
 * The algebra of polynomials in k distinct roots of a polynomial P of degree n: Q[x₀, …, x₍k₋₁₎]
 * modulo the Cauchy modules C₀(x₀), C₁(x₀, x₁), …, the divided differences of P. Its dimension is
 * n(n − 1)…(n − k + 1), with the monomials of degree under n − i in xᵢ as a basis.
 *
 * <p>Distinct means distinct as listed: a double root is two of the n roots. What holds here holds
 * for every choice of k of the roots in order.
 */
public final class RootTower {

  private final Polynomial polynomial;

  /** {@code modules.get(i).get(j)}: the coefficient of xᵢ^j in the monic Cauchy module Cᵢ. */
  private final List<List<MultivariatePolynomial>> modules = new ArrayList<>();

  private final List<Rational> powerSums = new ArrayList<>();
  private final Map<Monomial, Rational> traces = new HashMap<>();
  private final int height;

  private RootTower(Polynomial polynomial, int height) {
    this.polynomial = polynomial.monic();
    this.height = height;
    for (int level = 0; level < height; level++) {
      modules.add(module(level));
    }
  }

  /**
   * The tower of k roots.
   *
   * @throws IllegalArgumentException if k is negative or more than the degree, or the polynomial is
   *     constant
   */
  public static RootTower of(Polynomial polynomial, int roots) {
    if (polynomial.degree() < 1 || roots < 0 || roots > polynomial.degree()) {
      throw new IllegalArgumentException(
          "no tower of "
              + roots
              + " distinct roots of a polynomial of degree "
              + polynomial.degree());
    }
    return new RootTower(polynomial, roots);
  }

  /** n(n − 1)…(n − k + 1). */
  public BigInteger dimension() {
    BigInteger dimension = BigInteger.ONE;
    for (int level = 0; level < height; level++) {
      dimension = dimension.multiply(BigInteger.valueOf((long) polynomial.degree() - level));
    }
    return dimension;
  }

  /** Cᵢ = Σ a_m h_(m−i)(x₀, …, xᵢ), split by the power of xᵢ. */
  private List<MultivariatePolynomial> module(int level) {
    int degree = polynomial.degree();
    List<MultivariatePolynomial> byPower = new ArrayList<>();
    for (int power = 0; power < degree - level; power++) {
      // h_d(x₀, …, xᵢ) = Σ xᵢ^j·h_(d−j)(x₀, …, xᵢ₋₁)
      MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
      for (int m = level + power; m <= degree; m++) {
        sum = sum.plus(complete(level, m - level - power).times(polynomial.coefficient(m)));
      }
      byPower.add(normalForm(sum, level));
    }
    return byPower;
  }

  /** The complete symmetric polynomial of a degree in the first unknowns. */
  private static MultivariatePolynomial complete(int unknowns, int degree) {
    if (unknowns == 0) {
      return degree == 0 ? MultivariatePolynomial.ONE : MultivariatePolynomial.ZERO;
    }
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    for (int power = 0; power <= degree; power++) {
      MultivariatePolynomial head =
          MultivariatePolynomial.term(Rational.ONE, Monomial.power(unknowns - 1, power));
      sum = sum.plus(head.times(complete(unknowns - 1, degree - power)));
    }
    return sum;
  }

  /**
   * The normal form: the only polynomial of degree under n − i in each xᵢ that has the same value
   * at every choice of k roots, by rule and not only by chance.
   *
   * @throws IllegalArgumentException if an unknown beyond the k roots occurs
   */
  public MultivariatePolynomial normalForm(MultivariatePolynomial element) {
    if (element.unknowns() > height) {
      throw new IllegalArgumentException(
          "unknown " + (element.unknowns() - 1) + " is beyond the " + height + " roots");
    }
    return normalForm(element, height);
  }

  private MultivariatePolynomial normalForm(MultivariatePolynomial element, int level) {
    if (level == 0 || element.isConstant()) {
      return element;
    }
    int unknown = level - 1;
    int bound = polynomial.degree() - unknown;
    List<MultivariatePolynomial> parts = new ArrayList<>();
    for (MultivariatePolynomial part : element.coefficientsIn(unknown)) {
      parts.add(normalForm(part, unknown));
    }
    for (int top = parts.size() - 1; top >= bound; top--) {
      Stop.ifUnwanted();
      MultivariatePolynomial factor = parts.get(top);
      if (!factor.isZero()) {
        for (int j = 0; j < bound; j++) {
          MultivariatePolynomial change = factor.times(modules.get(unknown).get(j));
          int place = top - bound + j;
          parts.set(place, normalForm(parts.get(place).minus(change), unknown));
        }
      }
    }
    Map<Monomial, Rational> terms = new HashMap<>();
    for (int power = 0; power < Math.min(bound, parts.size()); power++) {
      Monomial head = Monomial.power(unknown, power);
      parts.get(power).terms().forEach((tail, value) -> terms.put(tail.times(head), value));
    }
    return MultivariatePolynomial.of(terms);
  }

  /** The product in normal form. */
  public MultivariatePolynomial times(MultivariatePolynomial left, MultivariatePolynomial right) {
    return normalForm(left.times(right));
  }

  /** Whether the element is zero for every choice of roots, by rule. */
  public boolean isZero(MultivariatePolynomial element) {
    return normalForm(element).isZero();
  }

  /** The number that the element is for every choice of roots, if its normal form is a number. */
  public Optional<Rational> constant(MultivariatePolynomial element) {
    MultivariatePolynomial form = normalForm(element);
    return form.isConstant() ? Optional.of(form.coefficient(Monomial.ONE)) : Optional.empty();
  }

  /** The sum of the element over all n(n − 1)…(n − k + 1) choices of k roots in order. */
  public Rational trace(MultivariatePolynomial element) {
    Rational sum = Rational.ZERO;
    for (Map.Entry<Monomial, Rational> term : normalForm(element).terms().entrySet()) {
      int[] exponents = new int[height];
      for (int k = 0; k < height; k++) {
        exponents[k] = term.getKey().exponent(k);
      }
      sum = sum.plus(term.getValue().times(traceOfMonomial(exponents)));
    }
    return sum;
  }

  /**
   * Σ r^a s^b t^c … over choices of distinct roots: let the last root run over all n, then take off
   * the terms in which it met an earlier one.
   */
  private Rational traceOfMonomial(int[] exponents) {
    if (exponents.length == 0) {
      return Rational.ONE;
    }
    int[] sorted = exponents.clone();
    Arrays.sort(sorted);
    // One is added so that trailing zero exponents, which count choices, are kept in the key.
    Monomial key = Monomial.of(Arrays.stream(sorted).map(e -> e + 1).toArray());
    Rational known = traces.get(key);
    if (known != null) {
      return known;
    }
    int last = sorted[sorted.length - 1];
    int[] rest = Arrays.copyOf(sorted, sorted.length - 1);
    Rational sum = traceOfMonomial(rest).times(powerSum(last));
    for (int k = 0; k < rest.length; k++) {
      rest[k] += last;
      sum = sum.minus(traceOfMonomial(rest));
      rest[k] -= last;
    }
    traces.put(key, sum);
    return sum;
  }

  private Rational powerSum(int exponent) {
    if (exponent >= powerSums.size()) {
      powerSums.clear();
      powerSums.addAll(PowerSums.of(polynomial).upTo(2 * exponent + 1));
    }
    return powerSums.get(exponent);
  }

  /**
   * One over the element, if no choice of roots makes it zero. The element is a root of its own
   * orbit polynomial T^N + … + c₁T + c₀, so its inverse is −(T^(N−1) + … + c₁)/c₀ at the element.
   *
   * @throws IllegalArgumentException if an unknown beyond the k roots occurs, or the orbit of the
   *     element is longer than {@link Orbit#LONGEST_LIST}
   */
  public Optional<MultivariatePolynomial> inverse(MultivariatePolynomial element) {
    MultivariatePolynomial base = normalForm(element);
    Orbit orbit = Orbit.of(RationalFunction.of(base), polynomial.degree());
    if (!orbit.isListed()) {
      throw new IllegalArgumentException(
          "no inverse is worked out for an orbit of " + orbit.size() + " images");
    }
    Polynomial equation = orbitPolynomial(base, orbit.images().size());
    if (equation.coefficient(0).isZero()) {
      return Optional.empty();
    }
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    for (int k = equation.degree(); k >= 1; k--) {
      sum = times(sum, base).plus(MultivariatePolynomial.constant(equation.coefficient(k)));
    }
    return Optional.of(sum.times(equation.coefficient(0).reciprocal().negate()));
  }

  /**
   * The monic polynomial of the given degree whose every root occurs equally often among the values
   * of the element at all choices of roots.
   */
  Polynomial orbitPolynomial(MultivariatePolynomial element, int degree) {
    MultivariatePolynomial base = normalForm(element);
    Rational share = Rational.of(degree).over(Rational.of(dimension()));
    MultivariatePolynomial power = MultivariatePolynomial.ONE;
    List<Rational> sums = new ArrayList<>();
    for (int k = 1; k <= degree; k++) {
      power = times(power, base);
      sums.add(trace(power).times(share));
    }
    return FromPowerSums.polynomial(sums);
  }
}
