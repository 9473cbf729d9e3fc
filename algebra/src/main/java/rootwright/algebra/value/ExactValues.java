package rootwright.algebra.value;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** Finds exact values and puts them in order. */
public final class ExactValues {

  private static final int FIRST_DIGITS = 20;

  /** Digits after which parts of numbers that are not real count as equal in an order. */
  private static final int LAST_DIGITS = 80;

  private ExactValues() {}

  /**
   * All roots with their multiplicities, which add up to the degree: those of linear and quadratic
   * factors explicitly, the others as {@link RootOf}. In the order of {@link #order()}.
   *
   * @throws IllegalArgumentException for the zero polynomial, or if a factor of degree 3 or more is
   *     above the degree limit of the enclosures
   */
  public static List<ExactRoot> rootsOf(Polynomial polynomial) {
    List<Placed> roots = new ArrayList<>();
    for (IrreducibleFactor factor : Factorisation.of(polynomial).factors()) {
      roots.addAll(rootsOf(factor));
    }
    roots.sort(Placed::compareTo);
    return roots.stream().map(Placed::root).toList();
  }

  private static List<Placed> rootsOf(IrreducibleFactor factor) {
    Polynomial polynomial = factor.polynomial();
    if (polynomial.degree() <= 2) {
      return rootsOfSmall(polynomial).stream()
          .map(value -> new Placed(value, factor.multiplicity(), value.enclosure(FIRST_DIGITS)))
          .toList();
    }
    List<EnclosedRoot> enclosed = RootEnclosures.of(polynomial, RootOf.STANDARD_DIGITS);
    List<Placed> roots = new ArrayList<>();
    for (int index = 0; index < enclosed.size(); index++) {
      roots.add(
          new Placed(
              new RootOf(polynomial, index), factor.multiplicity(), enclosed.get(index).disc()));
    }
    return roots;
  }

  /** A root with an enclosure reckoned once, so that sorting need not do it again and again. */
  private record Placed(ExactValue value, int multiplicity, ComplexBall disc)
      implements Comparable<Placed> {

    ExactRoot root() {
      return new ExactRoot(value, multiplicity);
    }

    private boolean real() {
      return disc.imaginaryCentre().isZero();
    }

    @Override
    public int compareTo(Placed other) {
      if (real() != other.real()) {
        return real() ? -1 : 1;
      }
      if (value instanceof RootOf a
          && other.value instanceof RootOf b
          && a.polynomial().equals(b.polynomial())) {
        return Integer.compare(a.index(), b.index());
      }
      return disc.real().overlaps(other.disc.real())
          ? order().compare(value, other.value)
          : disc.realCentre().compareTo(other.disc.realCentre());
    }
  }

  private static List<ExactValue> rootsOfSmall(Polynomial factor) {
    if (factor.degree() == 1) {
      return List.of(new RationalValue(factor.coefficient(0).over(factor.lead()).negate()));
    }
    Rational twice = factor.lead().times(2);
    Rational middle = factor.coefficient(1).over(twice).negate();
    Rational square =
        factor
            .coefficient(1)
            .times(factor.coefficient(1))
            .minus(factor.lead().times(factor.coefficient(0)).times(4));
    return List.of(
        QuadraticSurd.of(middle, twice.reciprocal().negate(), square),
        QuadraticSurd.of(middle, twice.reciprocal(), square));
  }

  /**
   * Compares two real numbers by size, exactly.
   *
   * @throws IllegalArgumentException if one of them is not real
   */
  public static int compareReal(ExactValue one, ExactValue other) {
    for (ExactValue value : List.of(one, other)) {
      if (!value.isReal()) {
        throw new IllegalArgumentException(value + " is not real and has no place in the order");
      }
    }
    if (one.equals(other)) {
      return 0;
    }
    if (one instanceof RationalValue a && other instanceof RationalValue b) {
      return a.number().compareTo(b.number());
    }
    if (one instanceof RootOf a
        && other instanceof RootOf b
        && a.polynomial().equals(b.polynomial())) {
      return Integer.compare(a.index(), b.index());
    }
    // The numbers differ, so small enough intervals come apart.
    for (int digits = FIRST_DIGITS; ; digits *= 2) {
      RealBall a = one.enclosure(digits).real();
      RealBall b = other.enclosure(digits).real();
      if (!a.overlaps(b)) {
        return a.centre().compareTo(b.centre());
      }
    }
  }

  /**
   * The order in which several values are written: real numbers ascending; then the others by real
   * part, by distance from the real axis, positive imaginary part first. Parts that agree to 80
   * digits count as equal in the second half of this rule.
   */
  public static Comparator<ExactValue> order() {
    return (one, other) -> {
      if (one.equals(other)) {
        return 0;
      }
      if (one.isReal() || other.isReal()) {
        return one.isReal() && other.isReal() ? compareReal(one, other) : one.isReal() ? -1 : 1;
      }
      return compareComplex(one, other);
    };
  }

  private static int compareComplex(ExactValue one, ExactValue other) {
    ComplexBall a = one.enclosure(LAST_DIGITS);
    ComplexBall b = other.enclosure(LAST_DIGITS);
    int byReal = compareParts(a.real(), b.real());
    if (byReal != 0) {
      return byReal;
    }
    int byHeight = compareParts(height(a), height(b));
    return byHeight != 0
        ? byHeight
        : Integer.compare(b.imaginaryCentre().signum(), a.imaginaryCentre().signum());
  }

  private static int compareParts(RealBall one, RealBall other) {
    return one.overlaps(other) ? 0 : one.centre().compareTo(other.centre());
  }

  private static RealBall height(ComplexBall ball) {
    return ball.imaginaryCentre().signum() < 0 ? ball.imaginary().negate() : ball.imaginary();
  }
}
