package rootwright.working.clothing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * An equation c·√A + R = 0 with polynomials A and R: squared, every root put back. A root of c²A −
 * R² makes c·√A + R or −c·√A + R zero; which one is decided by the sign of the other.
 */
final class RadicalEquation {

  private static final int DIGITS = 60;

  private RadicalEquation() {}

  /** The equation left = 0 as a polynomial; empty if it has another form. */
  static Optional<Undressed> of(Formula left, String unknown) {
    Map<Formula, Rational> radicals = new LinkedHashMap<>();
    List<Formula> rest = new ArrayList<>();
    List<Formula> terms = left instanceof Formula.Sum sum ? sum.terms() : List.of(left);
    for (Formula term : terms) {
      Optional<Map.Entry<Formula, Rational>> radical = radical(term, unknown);
      if (radical.isPresent()) {
        radicals.merge(radical.get().getKey(), radical.get().getValue(), Rational::plus);
      } else {
        rest.add(term);
      }
    }
    if (radicals.size() != 1) {
      return Optional.empty();
    }
    try {
      Map.Entry<Formula, Rational> one = radicals.entrySet().iterator().next();
      Polynomial inside = FormulaExpansion.polynomial(one.getKey(), unknown);
      Polynomial outside = FormulaExpansion.polynomial(Formula.sum(rest), unknown);
      Polynomial squared =
          inside.times(one.getValue().times(one.getValue())).minus(outside.times(outside));
      return squared.degree() > 0
          ? Optional.of(undressed(unknown, one, outside, squared))
          : Optional.empty();
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }

  /** A and c, if the term is c·√A with the unknown in A. */
  private static Optional<Map.Entry<Formula, Rational>> radical(Formula term, String unknown) {
    if (term instanceof Formula.Negative negative) {
      return radical(negative.of(), unknown)
          .map(found -> Map.entry(found.getKey(), found.getValue().negate()));
    } else if (term instanceof Formula.Product product
        && product.factors().size() == 2
        && product.factors().get(0) instanceof Formula.Numeral numeral) {
      return radical(product.factors().get(1), unknown)
          .map(found -> Map.entry(found.getKey(), found.getValue().times(numeral.value())));
    }
    return term instanceof Formula.Radical radical
            && radical.index() == 2
            && radical.contains(part -> part.equals(Formula.name(unknown)))
        ? Optional.of(Map.entry(radical.radicand(), Rational.ONE))
        : Optional.empty();
  }

  private static Undressed undressed(
      String unknown,
      Map.Entry<Formula, Rational> radical,
      Polynomial outside,
      Polynomial squared) {
    Polynomial polynomial = squared.primitive();
    Rational c = radical.getValue();
    Formula root = new Formula.Radical(radical.getKey(), 2);
    Formula alone = c.isOne() ? root : Formula.number(c).times(root);
    List<Step> lines = new ArrayList<>();
    lines.add(
        Step.argument(
            Idea.ELIMINATE,
            "the square root alone on its side",
            NormalForm.of(
                Formula.equation(alone, PolynomialFormula.of(outside.negate(), unknown)))));
    Rational scale = polynomial.lead().over(squared.lead());
    Polynomial side = outside.lead().signum() < 0 ? outside.negate() : outside;
    Formula square = PolynomialFormula.of(side, unknown).power(2);
    Formula inside =
        c.absolute().isOne()
            ? radical.getKey()
            : Formula.number(c.times(c)).times(radical.getKey());
    boolean turned = scale.equals(Rational.MINUS_ONE);
    Formula difference = turned ? square.minus(inside) : inside.minus(square);
    lines.add(
        Step.equation(
            Setting.ofLetters(List.of(unknown)),
            Idea.ELIMINATE,
            "square both sides and bring everything to one side",
            NormalForm.of(
                turned || scale.isOne() ? difference : Formula.number(scale).times(difference)),
            PolynomialFormula.of(polynomial, unknown)));
    List<ExactValue> kept = new ArrayList<>();
    List<Undressed.Rejected> rejected = new ArrayList<>();
    for (ExactRoot one : ExactValues.rootsOf(polynomial)) {
      ExactValue value = one.value();
      if (!value.isReal()) {
        rejected.add(new Undressed.Rejected(value, "it is not real"));
      } else if (solves(value, c, outside)) {
        kept.add(value);
      } else {
        rejected.add(
            new Undressed.Rejected(
                value, "put back, the two sides have different signs; squaring hid that"));
      }
    }
    return new Undressed(polynomial, unknown, lines, kept, rejected, 1);
  }

  /** c·√A = −R: both sides have the same square, so only the sign of −R/c decides. */
  private static boolean solves(ExactValue value, Rational c, Polynomial outside) {
    Polynomial wanted = outside.times(c.reciprocal()).negate();
    return signAt(wanted, value) >= 0;
  }

  /** The sign of a polynomial at a real number, exactly. */
  private static int signAt(Polynomial polynomial, ExactValue value) {
    if (polynomial.isZero() || polynomial.remainder(value.minimalPolynomial()).isZero()) {
      return 0;
    }
    if (value instanceof RationalValue rational) {
      return polynomial.at(rational.number()).signum();
    }
    // The value is no root of the polynomial, so a fine enough enclosure shows the sign.
    for (int digits = DIGITS; ; digits *= 2) {
      ComplexBall x = value.enclosure(digits);
      ComplexBall sum = ComplexBall.ZERO;
      for (int k = polynomial.degree(); k >= 0; k--) {
        sum = sum.times(x).plus(ComplexBall.of(polynomial.coefficient(k), digits * 4));
      }
      if (!sum.real().containsZero()) {
        return sum.realCentre().signum();
      }
    }
  }
}
