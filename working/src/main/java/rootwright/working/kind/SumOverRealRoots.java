package rootwright.working.kind;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Dyadic;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.real.IsolatedRoot;
import rootwright.algebra.real.RealRootIsolation;
import rootwright.algebra.roots.Inverse;
import rootwright.algebra.roots.OrbitPolynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.problem.RootFunction;

/**
 * The sum of f(r) over the real roots of a polynomial, each as often as it occurs.
 *
 * <p>An irreducible factor all of whose roots are real gives a trace. One with only m real roots
 * gives f(r_1) + … + f(r_m), a root of the polynomial of all such sums, found by its place.
 */
sealed interface SumOverRealRoots {

  /**
   * The sum.
   *
   * @param real how many real roots there are, with multiplicity
   */
  record Found(ExactValue value, int real) implements SumOverRealRoots {}

  /**
   * It has no single exact form here.
   *
   * @param why one plain sentence
   */
  record Unsaid(String why) implements SumOverRealRoots {}

  /** Most digits to which sums are told apart. */
  int MOST_DIGITS = 640;

  /** The sum for a polynomial of degree at least 1. */
  static SumOverRealRoots of(Polynomial polynomial, RootFunction f) {
    Rational rational = Rational.ZERO;
    int real = 0;
    List<IrreducibleFactor> mixed = new ArrayList<>();
    for (IrreducibleFactor factor : Factorisation.of(polynomial).factors()) {
      int count = RealRootIsolation.of(factor.polynomial()).size();
      real += count * factor.multiplicity();
      if (count > 0) {
        ResidueAlgebra algebra = ResidueAlgebra.of(factor.polynomial());
        Inverse inverse = algebra.inverse(f.denominator());
        if (!(inverse instanceof Inverse.Inverted inverted)) {
          return new Unsaid("a real root makes a denominator zero");
        }
        Polynomial value = algebra.times(f.numerator(), inverted.value());
        if (count == factor.polynomial().degree()) {
          rational = rational.plus(algebra.trace(value).times(Rational.of(factor.multiplicity())));
        } else {
          mixed.add(factor);
        }
      }
    }
    if (mixed.size() > 1) {
      return new Unsaid(
          "the polynomial has two irreducible factors of which only some roots are real, so the sum"
              + " has no short exact form");
    }
    return mixed.isEmpty()
        ? new Found(new RationalValue(rational), real)
        : ofMixed(mixed.get(0), f, rational, real);
  }

  private static SumOverRealRoots ofMixed(
      IrreducibleFactor factor, RootFunction f, Rational rest, int real) {
    Polynomial p = factor.polynomial();
    List<IsolatedRoot> roots = RealRootIsolation.of(p);
    RationalFunction sum = RationalFunction.of(rest);
    for (int k = 0; k < roots.size(); k++) {
      RationalFunction term =
          new RationalFunction(
              MultivariatePolynomial.of(f.numerator(), k),
              MultivariatePolynomial.of(f.denominator(), k));
      sum = sum.plus(term.times(RationalFunction.of(Rational.of(factor.multiplicity()))));
    }
    if (!(OrbitPolynomial.of(p, sum) instanceof OrbitPolynomial.Exact orbit)) {
      return new Unsaid(
          "the real roots are %d of the %d roots of an irreducible factor, and their sum has too many companions to be named"
              .formatted(roots.size(), p.degree()));
    }
    List<ExactValue> candidates =
        ExactValues.rootsOf(orbit.polynomial()).stream()
            .map(ExactRoot::value)
            .filter(ExactValue::isReal)
            .distinct()
            .toList();
    for (int digits = 20; digits <= MOST_DIGITS; digits *= 2) {
      ComplexBall near = near(roots, f, factor.multiplicity(), rest, digits);
      int precision = digits;
      List<ExactValue> meeting =
          candidates.stream().filter(c -> c.enclosure(precision).overlaps(near)).toList();
      if (meeting.size() == 1) {
        return new Found(meeting.get(0), real);
      }
    }
    return new Unsaid("the sum cannot be told from another one that is nearly the same");
  }

  /** An enclosure of the sum from intervals found by bisection. */
  private static ComplexBall near(
      List<IsolatedRoot> roots, RootFunction f, int multiplicity, Rational rest, int digits) {
    int bits = digits * 10 / 3 + 64;
    Rational width = new Rational(BigInteger.ONE, BigInteger.ONE.shiftLeft(bits));
    ComplexBall sum = ComplexBall.of(rest, bits);
    for (IsolatedRoot root : roots) {
      IsolatedRoot narrow = root.refinedTo(width);
      ComplexBall point =
          ComplexBall.of(
              RealBall.between(
                  Dyadic.of(narrow.low(), bits + 8, Dyadic.Rounding.FLOOR),
                  Dyadic.of(narrow.high(), bits + 8, Dyadic.Rounding.CEILING)));
      ComplexBall value =
          at(f.numerator(), point, bits).over(at(f.denominator(), point, bits), bits);
      sum = sum.plus(value.times(ComplexBall.exact(multiplicity)));
    }
    return sum;
  }

  private static ComplexBall at(Polynomial polynomial, ComplexBall point, int bits) {
    return IntStream.rangeClosed(0, polynomial.degree())
        .mapToObj(k -> polynomial.coefficient(polynomial.degree() - k))
        .reduce(
            ComplexBall.ZERO,
            (value, coefficient) -> value.times(point).plus(ComplexBall.of(coefficient, bits)),
            ComplexBall::plus);
  }
}
