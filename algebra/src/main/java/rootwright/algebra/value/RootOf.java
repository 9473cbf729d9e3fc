package rootwright.algebra.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A root of an irreducible polynomial of degree 3 or more, named by its place: real roots come
 * first, ascending; then the others by real part, each with positive imaginary part directly before
 * its conjugate. The place is fixed by enclosures of {@value #STANDARD_DIGITS} digits, which depend
 * on nothing but the polynomial.
 *
 * @param polynomial irreducible over the rational numbers (the caller's word is taken for it),
 *     primitive, with positive lead, of degree at least 3
 * @param index the place of the root, from 0
 */
public record RootOf(Polynomial polynomial, int index) implements ExactValue {

  /** Digits of the enclosures by which the roots are put in order. */
  static final int STANDARD_DIGITS = 20;

  /**
   * Checks what is cheap to check.
   *
   * @throws IllegalArgumentException if the polynomial is not primitive with positive lead, its
   *     degree is below 3, or there is no root of that index
   */
  public RootOf {
    if (polynomial.degree() < 3 || !polynomial.equals(polynomial.primitive())) {
      throw new IllegalArgumentException(
          "not a primitive polynomial of degree 3 or more: " + polynomial);
    }
    if (index < 0 || index >= polynomial.degree()) {
      throw new IllegalArgumentException("no root number %d of %s".formatted(index, polynomial));
    }
  }

  @Override
  public boolean isReal() {
    return standard().real();
  }

  private EnclosedRoot standard() {
    return RootEnclosures.of(polynomial, STANDARD_DIGITS).get(index);
  }

  @Override
  public ComplexBall enclosure(int digits) {
    ComplexBall known = standard().disc();
    if (digits <= STANDARD_DIGITS) {
      return known;
    }
    for (int finer = digits; ; finer *= 2) {
      // The root lies in both discs, so exactly one finer disc meets the known one once they are
      // small enough.
      List<ComplexBall> meeting =
          RootEnclosures.of(polynomial, finer).stream()
              .map(EnclosedRoot::disc)
              .filter(known::overlaps)
              .toList();
      if (meeting.size() == 1) {
        return meeting.get(0);
      }
    }
  }

  @Override
  public Polynomial minimalPolynomial() {
    return polynomial;
  }

  @Override
  public Optional<String> decimal(int digits) {
    return Optional.of(
        isReal() ? Rounding.ofIrrational(this, digits) : Rounding.ofComplex(this, digits));
  }

  /** The root as a sum of square roots, where it is one and is known to be. */
  public Optional<SurdSum> inSurds() {
    return QuarticSurds.of(this);
  }

  /**
   * A sum of square roots where it is one; else {@code root(x^3 - x - 1, 1)}: the polynomial and
   * the place, counted from 1.
   */
  @Override
  public Formula toFormula() {
    return inSurds().map(SurdSum::toFormula).orElseGet(this::byPlace);
  }

  private Formula byPlace() {
    return new Formula.Application(
        "root", List.of(written(polynomial), Formula.number(index + 1L)));
  }

  private static Formula written(Polynomial polynomial) {
    List<Formula> terms = new ArrayList<>();
    for (int k = polynomial.degree(); k >= 0; k--) {
      Rational coefficient = polynomial.coefficient(k);
      if (!coefficient.isZero()) {
        Formula term = term(coefficient.absolute(), k);
        terms.add(coefficient.signum() < 0 ? new Formula.Negative(term) : term);
      }
    }
    return Formula.sum(terms);
  }

  private static Formula term(Rational size, int power) {
    if (power == 0) {
      return Formula.number(size);
    }
    Formula x = Formula.name("x");
    Formula bare = power == 1 ? x : x.power(power);
    return size.isOne() ? bare : Formula.number(size).times(bare);
  }

  @Override
  public String toString() {
    return "root " + (index + 1) + " of " + polynomial;
  }
}
