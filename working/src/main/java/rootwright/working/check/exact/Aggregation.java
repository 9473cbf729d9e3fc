package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Inverse;
import rootwright.algebra.roots.Orbit;
import rootwright.algebra.roots.OrbitTotal;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.roots.RootValue;

/**
 * The value of a textbook Σ or Π: over all distinct images of an expression when the roots are
 * renamed in all ways.
 */
final class Aggregation {

  private final Polynomial polynomial;
  private final SumsOverChoices choices;

  Aggregation(Polynomial polynomial) {
    this.polynomial = polynomial;
    this.choices = new SumsOverChoices(polynomial);
  }

  /**
   * The sum of all images of a body with several roots in it, or none; its unknowns are numbered
   * roots.
   */
  Rational sum(RationalFunction body) {
    RationalFunction packed = packed(body);
    if (packed.unknowns() == 0) {
      return constant(packed);
    }
    if (packed.isPolynomial()) {
      return sumOfMonomialImages(packed);
    }
    return total(OrbitTotal.sum(polynomial, packed));
  }

  /** Refuses a function of one root whose denominator is zero at some root. */
  void requireDefined(RationalFunction f) {
    if (ResidueAlgebra.of(polynomial).inverse(under(packed(f))) instanceof Inverse.SharedFactor) {
      throw Unevaluable.zeroDenominator("a root makes a denominator zero");
    }
  }

  /** The sum of f(r) over all roots; f is given in one of the unknowns, or constant. */
  Rational sumOverRoots(RationalFunction f) {
    RationalFunction packed = packed(f);
    return value(
        ResidueAlgebra.of(polynomial).trace(Unknowns.inOne(packed.numerator(), 0), under(packed)));
  }

  /** The product of f(r) over all roots; f is given in one of the unknowns, or constant. */
  Rational productOverRoots(RationalFunction f) {
    RationalFunction packed = packed(f);
    return value(
        ResidueAlgebra.of(polynomial).norm(Unknowns.inOne(packed.numerator(), 0), under(packed)));
  }

  /** The product of all images of a body with several roots in it, or none. */
  Rational product(RationalFunction body) {
    RationalFunction packed = packed(body);
    if (packed.unknowns() == 0) {
      return constant(packed);
    }
    return squaredDifferences(packed)
        .orElseGet(() -> total(OrbitTotal.product(polynomial, packed)));
  }

  /** Every image of a polynomial is a sum of images of its terms, each met equally often. */
  private Rational sumOfMonomialImages(RationalFunction body) {
    int n = polynomial.degree();
    Rational total = Rational.ZERO;
    for (Map.Entry<Monomial, Rational> term : body.numerator().terms().entrySet()) {
      int[] exponents = new int[body.unknowns()];
      Arrays.setAll(exponents, term.getKey()::exponent);
      total = total.plus(term.getValue().times(choices.of(exponents)));
    }
    BigInteger injections = BigInteger.ONE;
    for (int k = 0; k < body.unknowns(); k++) {
      injections = injections.multiply(BigInteger.valueOf(n - k));
    }
    BigInteger images = Orbit.sizeOf(body, n);
    return total.times(new Rational(images, injections));
  }

  /**
   * ∏ c(r − s)² over all pairs from the product of P′(r) over all roots, for any degree: it is c to
   * the number of pairs times (−1)^(n(n−1)/2)·∏ P′(r) for the monic P.
   */
  private Optional<Rational> squaredDifferences(RationalFunction body) {
    Rational factor = body.numerator().coefficient(Monomial.of(2));
    MultivariatePolynomial difference =
        MultivariatePolynomial.unknown(0).minus(MultivariatePolynomial.unknown(1));
    if (factor.isZero()
        || !body.isPolynomial()
        || !body.numerator().equals(difference.power(2).times(factor))) {
      return Optional.empty();
    }
    int n = polynomial.degree();
    int pairs = n * (n - 1) / 2;
    Rational slopes = ResidueAlgebra.of(polynomial).norm(polynomial.monic().derivative());
    return Optional.of(factor.power(pairs).times(pairs % 2 == 0 ? slopes : slopes.negate()));
  }

  private static Rational total(OrbitTotal total) {
    if (total instanceof OrbitTotal.Exact found) {
      return found.value();
    } else if (total instanceof OrbitTotal.ZeroDenominator) {
      throw Unevaluable.zeroDenominator("a choice of roots makes a denominator zero");
    }
    throw Unevaluable.tooLarge("the expression has too many images under renaming the roots");
  }

  private static Rational value(RootValue value) {
    if (value instanceof RootValue.Exact known) {
      return known.value();
    }
    throw Unevaluable.zeroDenominator("a root makes a denominator zero");
  }

  /** The body with its occurring roots renumbered from 0 without gaps. */
  private static RationalFunction packed(RationalFunction body) {
    int[] images = new int[body.unknowns()];
    int next = 0;
    for (int k = 0; k < images.length; k++) {
      boolean occurs = body.numerator().degreeIn(k) > 0 || body.denominator().degreeIn(k) > 0;
      images[k] = occurs ? next++ : 0;
    }
    return body.rename(images);
  }

  private static Rational constant(RationalFunction body) {
    return body.numerator()
        .coefficient(Monomial.ONE)
        .over(body.denominator().coefficient(Monomial.ONE));
  }

  private static Polynomial under(RationalFunction body) {
    return Unknowns.inOne(body.denominator(), 0);
  }
}
