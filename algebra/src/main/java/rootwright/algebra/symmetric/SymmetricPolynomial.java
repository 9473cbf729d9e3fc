package rootwright.algebra.symmetric;

import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A symmetric polynomial in n variables over the rational numbers, in the basis of monomial
 * symmetric polynomials: for each partition λ of at most n parts the coefficient of m_λ, the sum of
 * all monomials of that orbit. {@code equals} is equality of polynomials in the same n.
 */
public final class SymmetricPolynomial {

  private final int variables;
  private final NavigableMap<Partition, Rational> terms;

  private SymmetricPolynomial(int variables, NavigableMap<Partition, Rational> terms) {
    this.variables = variables;
    this.terms = Collections.unmodifiableNavigableMap(terms);
  }

  /**
   * The polynomial with these coefficients in the m-basis; zero coefficients are dropped.
   *
   * @throws IllegalArgumentException if there is no variable or a partition has more parts than
   *     variables
   */
  public static SymmetricPolynomial of(int variables, Map<Partition, Rational> terms) {
    if (variables < 1) {
      throw new IllegalArgumentException("a symmetric polynomial in " + variables + " variables");
    }
    NavigableMap<Partition, Rational> kept = new TreeMap<>(terms);
    kept.values().removeIf(Rational::isZero);
    for (Partition partition : kept.keySet()) {
      if (partition.length() > variables) {
        throw new IllegalArgumentException(
            "%s has more than %d parts".formatted(partition, variables));
      }
    }
    return new SymmetricPolynomial(variables, kept);
  }

  /** The constant polynomial. */
  public static SymmetricPolynomial constant(int variables, Rational value) {
    return of(variables, Map.of(Partition.EMPTY, value));
  }

  /**
   * The monomial symmetric polynomial m_λ, each monomial once.
   *
   * @throws IllegalArgumentException if λ has more parts than there are variables
   */
  public static SymmetricPolynomial monomial(int variables, Partition partition) {
    return of(variables, Map.of(partition, Rational.ONE));
  }

  /**
   * The power sum p_k; p_0 = n.
   *
   * @throws IllegalArgumentException if k is negative
   */
  public static SymmetricPolynomial powerSum(int variables, int k) {
    return k == 0
        ? constant(variables, Rational.of(variables))
        : monomial(variables, Partition.of(k));
  }

  /**
   * The elementary symmetric polynomial e_k; e_0 = 1, and 0 for k > n.
   *
   * @throws IllegalArgumentException if k is negative
   */
  public static SymmetricPolynomial elementary(int variables, int k) {
    requireIndex(k);
    return k > variables
        ? constant(variables, Rational.ZERO)
        : monomial(variables, Partition.column(k));
  }

  /**
   * The complete symmetric polynomial h_k, the sum of all monomials of degree k; h_0 = 1.
   *
   * @throws IllegalArgumentException if k is negative
   */
  public static SymmetricPolynomial complete(int variables, int k) {
    requireIndex(k);
    NavigableMap<Partition, Rational> terms = new TreeMap<>();
    for (Partition partition : Partition.all(k, variables)) {
      terms.put(partition, Rational.ONE);
    }
    return of(variables, terms);
  }

  private static void requireIndex(int k) {
    if (k < 0) {
      throw new IllegalArgumentException("negative index of a symmetric polynomial: " + k);
    }
  }

  /**
   * Reads a polynomial in n variables as a symmetric one, by its orbit sums.
   *
   * @throws IllegalArgumentException if an unknown with number n or above occurs
   */
  public static SymmetricRecognition recognise(MultivariatePolynomial expression, int variables) {
    return SymmetricRecognition.of(expression, variables);
  }

  /** The number of variables, n. */
  public int variables() {
    return variables;
  }

  /** Non-zero coefficients by partition, lexicographically ascending; unmodifiable. */
  public NavigableMap<Partition, Rational> terms() {
    return terms;
  }

  /** The coefficient of m_λ. */
  public Rational coefficient(Partition partition) {
    return terms.getOrDefault(partition, Rational.ZERO);
  }

  /** Whether this is the zero polynomial. */
  public boolean isZero() {
    return terms.isEmpty();
  }

  /** The sum. */
  public SymmetricPolynomial plus(SymmetricPolynomial other) {
    requireSameVariables(other);
    NavigableMap<Partition, Rational> sum = new TreeMap<>(terms);
    other.terms.forEach(
        (partition, coefficient) -> sum.merge(partition, coefficient, Rational::plus));
    return of(variables, sum);
  }

  /** The difference. */
  public SymmetricPolynomial minus(SymmetricPolynomial other) {
    return plus(other.times(Rational.MINUS_ONE));
  }

  /** The product with a number. */
  public SymmetricPolynomial times(Rational factor) {
    NavigableMap<Partition, Rational> product = new TreeMap<>();
    terms.forEach((partition, coefficient) -> product.put(partition, coefficient.times(factor)));
    return of(variables, product);
  }

  /** The product, orbit by orbit. */
  public SymmetricPolynomial times(SymmetricPolynomial other) {
    requireSameVariables(other);
    NavigableMap<Partition, Rational> product = new TreeMap<>();
    terms.forEach(
        (left, a) ->
            other.terms.forEach(
                (right, b) -> OrbitProduct.add(product, variables, left, right, a.times(b))));
    return of(variables, product);
  }

  /**
   * The power with a non-negative exponent.
   *
   * @throws IllegalArgumentException if the exponent is negative
   */
  public SymmetricPolynomial power(int exponent) {
    requireIndex(exponent);
    SymmetricPolynomial result = constant(variables, Rational.ONE);
    for (int factor = 0; factor < exponent; factor++) {
      result = result.times(this);
    }
    return result;
  }

  /**
   * The expression in e_1, …, e_n that equals this polynomial; there is exactly one (Gauss, 1816).
   * Power sums take one step for each term of the result. Anything else takes at most as many steps
   * as the square of {@link Partition#count} of its weight: ask it first where weights are large.
   */
  public ElementaryForm toElementary() {
    return ElementaryReduction.of(this);
  }

  /** An expression in power sums p_1, p_2, … that equals this polynomial. */
  public PowerSumForm toPowerSums() {
    return PowerSumForm.of(this);
  }

  /**
   * The polynomial written out, unknown k − 1 being the k-th variable.
   *
   * @throws IllegalArgumentException if it has more than a million terms
   */
  public MultivariatePolynomial expand() {
    BigInteger size =
        terms.keySet().stream()
            .map(partition -> partition.orbitSize(variables))
            .reduce(BigInteger.ZERO, BigInteger::add);
    if (size.compareTo(BigInteger.valueOf(1_000_000)) > 0) {
      throw new IllegalArgumentException("the expansion has " + size + " terms");
    }
    NavigableMap<Monomial, Rational> expansion = new TreeMap<>();
    terms.forEach(
        (partition, coefficient) ->
            OrbitProduct.monomials(partition, variables)
                .forEach(monomial -> expansion.put(monomial, coefficient)));
    return MultivariatePolynomial.of(expansion);
  }

  /**
   * The value at n numbers. Takes one step for each monomial of each orbit: meant for checking.
   *
   * @throws IllegalArgumentException if the point does not have n numbers
   */
  public Rational at(List<Rational> point) {
    if (point.size() != variables) {
      throw new IllegalArgumentException(
          "%d numbers for %d variables".formatted(point.size(), variables));
    }
    return expand().at(point);
  }

  private void requireSameVariables(SymmetricPolynomial other) {
    if (variables != other.variables) {
      throw new IllegalArgumentException(
          "%d variables do not match %d".formatted(variables, other.variables));
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SymmetricPolynomial that
        && variables == that.variables
        && terms.equals(that.terms);
  }

  @Override
  public int hashCode() {
    return 31 * terms.hashCode() + variables;
  }

  /** For a programmer's eye, lexicographically descending: {@code 2*m(2.1) + 6*m(1.1.1)}. */
  @Override
  public String toString() {
    if (isZero()) {
      return "0";
    }
    StringBuilder text = new StringBuilder();
    terms
        .descendingMap()
        .forEach(
            (partition, coefficient) ->
                text.append(text.isEmpty() ? "" : " + ")
                    .append(coefficient)
                    .append("*m(")
                    .append(partition)
                    .append(')'));
    return text.toString();
  }
}
