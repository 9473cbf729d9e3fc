package rootwright.algebra.polynomial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;
import rootwright.algebra.stop.Stop;

/**
 * A polynomial in numbered unknowns x₀, x₁, … over the rational numbers, as a sparse map from
 * monomial to non-zero coefficient in lexicographic order; {@code equals} is equality of
 * polynomials.
 */
public final class MultivariatePolynomial {

  public static final MultivariatePolynomial ZERO =
      new MultivariatePolynomial(Collections.emptyNavigableMap());
  public static final MultivariatePolynomial ONE = constant(Rational.ONE);

  private final NavigableMap<Monomial, Rational> terms;

  private MultivariatePolynomial(NavigableMap<Monomial, Rational> terms) {
    this.terms = Collections.unmodifiableNavigableMap(terms);
  }

  /** The polynomial with these terms; zero coefficients are dropped. */
  public static MultivariatePolynomial of(Map<Monomial, Rational> terms) {
    NavigableMap<Monomial, Rational> kept = new TreeMap<>(terms);
    kept.values().removeIf(Rational::isZero);
    return new MultivariatePolynomial(kept);
  }

  /** The constant polynomial. */
  public static MultivariatePolynomial constant(Rational value) {
    return term(value, Monomial.ONE);
  }

  /** The unknown with this number. */
  public static MultivariatePolynomial unknown(int number) {
    return term(Rational.ONE, Monomial.power(number, 1));
  }

  /** One term. */
  public static MultivariatePolynomial term(Rational coefficient, Monomial monomial) {
    return of(Map.of(monomial, coefficient));
  }

  /** A polynomial in one unknown, read as a polynomial in the unknown with this number. */
  public static MultivariatePolynomial of(Polynomial polynomial, int unknown) {
    NavigableMap<Monomial, Rational> terms = new TreeMap<>();
    for (int k = 0; k <= polynomial.degree(); k++) {
      terms.put(Monomial.power(unknown, k), polynomial.coefficient(k));
    }
    return of(terms);
  }

  /** Non-zero coefficients by monomial, lexicographically ascending; unmodifiable. */
  public NavigableMap<Monomial, Rational> terms() {
    return terms;
  }

  /** The coefficient of a monomial. */
  public Rational coefficient(Monomial monomial) {
    return terms.getOrDefault(monomial, Rational.ZERO);
  }

  /** Whether this is the zero polynomial. */
  public boolean isZero() {
    return terms.isEmpty();
  }

  /** Whether no unknown occurs. */
  public boolean isConstant() {
    return terms.isEmpty() || (terms.size() == 1 && terms.containsKey(Monomial.ONE));
  }

  /** The greatest exponent of an unknown; 0 if it does not occur. */
  public int degreeIn(int unknown) {
    return terms.keySet().stream().mapToInt(m -> m.exponent(unknown)).max().orElse(0);
  }

  /** The greatest sum of exponents in a term; −1 for the zero polynomial. */
  public int degree() {
    return terms.keySet().stream().mapToInt(Monomial::degree).max().orElse(-1);
  }

  /** One more than the number of the last unknown that occurs. */
  public int unknowns() {
    return terms.keySet().stream().mapToInt(Monomial::length).max().orElse(0);
  }

  /** The sum. */
  public MultivariatePolynomial plus(MultivariatePolynomial other) {
    NavigableMap<Monomial, Rational> sum = new TreeMap<>(terms);
    other.terms.forEach(
        (monomial, coefficient) -> sum.merge(monomial, coefficient, Rational::plus));
    return of(sum);
  }

  /** The difference. */
  public MultivariatePolynomial minus(MultivariatePolynomial other) {
    return plus(other.negate());
  }

  /** The polynomial with every sign changed. */
  public MultivariatePolynomial negate() {
    return times(Rational.MINUS_ONE);
  }

  /** The product with a number. */
  public MultivariatePolynomial times(Rational factor) {
    NavigableMap<Monomial, Rational> product = new TreeMap<>();
    terms.forEach((monomial, coefficient) -> product.put(monomial, coefficient.times(factor)));
    return of(product);
  }

  /** The product. */
  public MultivariatePolynomial times(MultivariatePolynomial other) {
    NavigableMap<Monomial, Rational> product = new TreeMap<>();
    terms.forEach(
        (left, a) -> {
          Stop.ifUnwanted();
          other.terms.forEach(
              (right, b) -> product.merge(left.times(right), a.times(b), Rational::plus));
        });
    return of(product);
  }

  /**
   * The power with a non-negative exponent.
   *
   * @throws IllegalArgumentException if the exponent is negative
   */
  public MultivariatePolynomial power(int exponent) {
    return RepeatedSquaring.power(this, exponent, ONE, (left, right) -> left.times(right));
  }

  /** The value at a point: the k-th number is put for the k-th unknown. */
  public Rational at(List<Rational> point) {
    Rational[] sum = {Rational.ZERO};
    terms.forEach(
        (monomial, coefficient) -> {
          Rational value = coefficient;
          for (int k = 0; k < monomial.length(); k++) {
            if (monomial.exponent(k) > 0) {
              value = value.times(point.get(k).power(monomial.exponent(k)));
            }
          }
          sum[0] = sum[0].plus(value);
        });
    return sum[0];
  }

  /** The polynomial with polynomials put for the unknowns, in order. */
  public MultivariatePolynomial substitute(List<MultivariatePolynomial> images) {
    MultivariatePolynomial[] sum = {ZERO};
    BiConsumer<Monomial, Rational> add =
        (monomial, coefficient) -> {
          MultivariatePolynomial value = constant(coefficient);
          for (int k = 0; k < monomial.length(); k++) {
            if (monomial.exponent(k) > 0) {
              value = value.times(images.get(k).power(monomial.exponent(k)));
            }
          }
          sum[0] = sum[0].plus(value);
        };
    terms.forEach(add);
    return sum[0];
  }

  /** The polynomial with unknown k renamed to {@code images[k]}. */
  public MultivariatePolynomial rename(int... images) {
    NavigableMap<Monomial, Rational> renamed = new TreeMap<>();
    int size = 0;
    for (int image : images) {
      size = Math.max(size, image + 1);
    }
    for (Map.Entry<Monomial, Rational> term : terms.entrySet()) {
      int[] exponents = new int[size];
      for (int k = 0; k < term.getKey().length(); k++) {
        exponents[images[k]] += term.getKey().exponent(k);
      }
      renamed.merge(Monomial.of(exponents), term.getValue(), Rational::plus);
    }
    return of(renamed);
  }

  /** The coefficients as polynomials in the other unknowns, by the power of this unknown. */
  public List<MultivariatePolynomial> coefficientsIn(int unknown) {
    List<NavigableMap<Monomial, Rational>> parts = new ArrayList<>();
    for (int k = 0; k <= degreeIn(unknown); k++) {
      parts.add(new TreeMap<>());
    }
    terms.forEach(
        (monomial, coefficient) -> {
          int[] exponents = new int[Math.max(monomial.length(), unknown + 1)];
          for (int k = 0; k < monomial.length(); k++) {
            exponents[k] = monomial.exponent(k);
          }
          int power = exponents[unknown];
          exponents[unknown] = 0;
          parts.get(power).put(Monomial.of(exponents), coefficient);
        });
    return parts.stream().map(MultivariatePolynomial::of).toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MultivariatePolynomial that && terms.equals(that.terms);
  }

  @Override
  public int hashCode() {
    return terms.hashCode();
  }

  /** For a programmer's eye, lexicographically descending. */
  @Override
  public String toString() {
    if (isZero()) {
      return "0";
    }
    StringBuilder text = new StringBuilder();
    terms
        .descendingMap()
        .forEach(
            (monomial, coefficient) ->
                text.append(text.isEmpty() ? "" : " + ")
                    .append(coefficient)
                    .append('*')
                    .append(monomial));
    return text.toString();
  }
}
