package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.enclosure.BallContainsZeroException;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.Inverse;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;

/**
 * A polynomial with one letter, at an exact number put for that letter.
 *
 * <p>At an irrational number the coefficients are elements of the field that the number generates,
 * written as polynomials in it of lower degree than its minimal polynomial.
 */
final class NumberAt {

  private static final int FIRST_DIGITS = 30;

  private final LetteredPolynomial polynomial;
  private final ExactValue number;
  private final ResidueAlgebra field;

  /** A polynomial with one letter at a number. */
  NumberAt(LetteredPolynomial polynomial, ExactValue number) {
    this.polynomial = polynomial;
    this.number = number;
    field = ResidueAlgebra.of(number.minimalPolynomial());
  }

  /** The value of a polynomial in the letter, if it is rational or the number is quadratic. */
  static Optional<ExactValue> value(Polynomial function, ExactValue number) {
    if (number instanceof RationalValue rational) {
      return Optional.of(new RationalValue(function.at(rational.number())));
    }
    Polynomial reduced = function.remainder(number.minimalPolynomial());
    if (reduced.degree() <= 0) {
      return Optional.of(new RationalValue(reduced.coefficient(0)));
    } else if (number instanceof QuadraticSurd surd) {
      ExactValue scaled = surd.times(reduced.coefficient(1));
      return Optional.of(
          scaled instanceof QuadraticSurd kept ? kept.plus(reduced.coefficient(0)) : scaled);
    }
    return Optional.empty();
  }

  /** Whether a polynomial in the letter is zero at the number. */
  static boolean isZero(Polynomial function, ExactValue number) {
    return function.isZero() || function.remainder(number.minimalPolynomial()).isZero();
  }

  /** Whether the lead coefficient is zero. */
  boolean leadVanishes() {
    return isZero(InLetters.inOne(polynomial.lead(), 1), number);
  }

  /** The polynomial at a rational number. */
  Optional<Polynomial> rational() {
    return number instanceof RationalValue rational
        ? Optional.of(polynomial.at(Map.of(polynomial.letters().get(0), rational.number())))
        : Optional.empty();
  }

  /** The distinct roots; empty if the polynomial is constant there. */
  List<ExactValue> distinctRoots() {
    Optional<Polynomial> special = rational();
    if (special.isPresent()) {
      return special.get().degree() < 1
          ? List.of()
          : ExactValues.rootsOf(special.get()).stream().map(ExactRoot::value).toList();
    }
    List<Polynomial> coefficients = coefficients();
    int degree = coefficients.size() - 1;
    int distinct = degree - commonDegree(coefficients, derivative(coefficients));
    List<ExactValue> candidates =
        ExactValues.rootsOf(norm()).stream().map(ExactRoot::value).toList();
    // Those that are no roots are told apart by narrow enough enclosures.
    for (int digits = FIRST_DIGITS; ; digits *= 2) {
      int precision = digits;
      List<ExactValue> left =
          candidates.stream().filter(value -> mayBeRoot(value, coefficients, precision)).toList();
      if (left.size() == distinct) {
        return left;
      }
      if (left.size() < distinct) {
        throw new IllegalStateException(
            "%d of %d distinct roots are found at %s".formatted(left.size(), distinct, number));
      }
      candidates = left;
    }
  }

  /** How many roots, with multiplicity, two polynomials share at the number. */
  static int common(LetteredPolynomial one, LetteredPolynomial other, ExactValue number) {
    NumberAt first = new NumberAt(one, number);
    NumberAt second = new NumberAt(other, number);
    return Math.max(0, first.commonDegree(first.coefficients(), second.coefficients()));
  }

  private boolean mayBeRoot(ExactValue value, List<Polynomial> coefficients, int digits) {
    int bits = digits * 10 / 3 + 16;
    try {
      ComplexBall k = number.enclosure(digits);
      ComplexBall x = value.enclosure(digits);
      ComplexBall sum = ComplexBall.ZERO;
      for (int power = coefficients.size() - 1; power >= 0; power--) {
        ComplexBall coefficient = ComplexBall.ZERO;
        Polynomial inNumber = coefficients.get(power);
        for (int j = inNumber.degree(); j >= 0; j--) {
          coefficient = coefficient.times(k).plus(ComplexBall.of(inNumber.coefficient(j), bits));
        }
        sum = sum.times(x).plus(coefficient);
      }
      return sum.containsZero();
    } catch (BallContainsZeroException wide) {
      return true;
    }
  }

  /** The coefficients by ascending power, reduced, the last not zero. */
  private List<Polynomial> coefficients() {
    List<Polynomial> coefficients = new ArrayList<>();
    for (int power = 0; power <= polynomial.degree(); power++) {
      coefficients.add(field.reduce(InLetters.inOne(polynomial.coefficient(power), 1)));
    }
    return trimmed(coefficients);
  }

  private static List<Polynomial> derivative(List<Polynomial> coefficients) {
    List<Polynomial> derivative = new ArrayList<>();
    for (int power = 1; power < coefficients.size(); power++) {
      derivative.add(coefficients.get(power).times(Rational.of(power)));
    }
    return trimmed(derivative);
  }

  private static List<Polynomial> trimmed(List<Polynomial> coefficients) {
    int size = coefficients.size();
    while (size > 0 && coefficients.get(size - 1).isZero()) {
      size--;
    }
    return List.copyOf(coefficients.subList(0, size));
  }

  /** The degree of the greatest common divisor, by Euclid over the field. */
  private int commonDegree(List<Polynomial> first, List<Polynomial> second) {
    List<Polynomial> a = first;
    List<Polynomial> b = second;
    while (!b.isEmpty()) {
      List<Polynomial> rest = remainder(a, b);
      a = b;
      b = rest;
    }
    return a.size() - 1;
  }

  private List<Polynomial> remainder(List<Polynomial> over, List<Polynomial> under) {
    List<Polynomial> rest = new ArrayList<>(over);
    Inverse lead = field.inverse(under.get(under.size() - 1));
    if (!(lead instanceof Inverse.Inverted inverted)) {
      throw new IllegalStateException("a field has a number without inverse: " + lead);
    }
    while (rest.size() >= under.size()) {
      Polynomial factor = field.times(rest.get(rest.size() - 1), inverted.value());
      int shift = rest.size() - under.size();
      for (int k = 0; k < under.size(); k++) {
        rest.set(k + shift, rest.get(k + shift).minus(field.times(factor, under.get(k))));
      }
      rest.remove(rest.size() - 1);
      rest = new ArrayList<>(trimmed(rest));
    }
    return rest;
  }

  /** The product of the polynomials at all conjugates of the number, by interpolation. */
  private Polynomial norm() {
    Polynomial minimal = number.minimalPolynomial();
    int degree = polynomial.degree() * minimal.degree();
    Polynomial sum = Polynomial.ZERO;
    Polynomial vanishing = Polynomial.ONE;
    for (int point = 0; point <= degree; point++) {
      Rational x = Rational.of(point);
      Rational value = field.norm(at(x));
      Rational scale = value.minus(sum.at(x)).over(vanishing.at(x));
      sum = sum.plus(vanishing.times(scale));
      vanishing = vanishing.times(Polynomial.withRoots(List.of(x)));
    }
    return sum;
  }

  /** The polynomial in the letter that stands there with a number put for the unknown. */
  private Polynomial at(Rational x) {
    Polynomial value = Polynomial.ZERO;
    for (int power = polynomial.degree(); power >= 0; power--) {
      MultivariatePolynomial coefficient = polynomial.coefficient(power);
      value = value.times(x).plus(InLetters.inOne(coefficient, 1));
    }
    return field.reduce(value);
  }
}
