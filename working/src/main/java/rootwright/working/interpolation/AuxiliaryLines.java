package rootwright.working.interpolation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * The auxiliary polynomial: where P(k) = U(k)/V(k), the polynomial V·P − U is zero at all the
 * places, so it is c times the product of the x − k.
 *
 * @param data what is given
 * @param p the polynomial
 * @param above U
 * @param below V, a number or linear
 * @param factor c, not zero
 */
record AuxiliaryLines(
    ValueData data, Polynomial p, Polynomial above, Polynomial below, Rational factor) {

  private static final Formula X = Formula.name("x");

  /** The lines, where there is one rule and c is fixed by what is given. */
  static Optional<AuxiliaryLines> of(ValueData data, Polynomial p) {
    if (data.rule().isEmpty()) {
      return Optional.empty();
    }
    ValueData.Rule rule = data.rule().get();
    RationalFunction function;
    try {
      function = FormulaExpansion.expand(rule.expression(), Map.of(rule.letter(), 0)).lowestTerms();
    } catch (UnreadableException noFraction) {
      return Optional.empty();
    }
    Polynomial above = inOne(function.numerator());
    Polynomial below = inOne(function.denominator());
    Polynomial auxiliary = below.times(p).minus(above);
    Polynomial.Division division = auxiliary.divide(data.vanishing());
    boolean fixed =
        below.degree() == 1
            || data.lead().isPresent()
            || above.degree() > data.degree() + below.degree();
    return below.degree() > 1
            || !fixed
            || !division.remainder().isZero()
            || division.quotient().degree() != 0
            || below.at(data.at()).isZero()
        ? Optional.empty()
        : Optional.of(
            new AuxiliaryLines(data, p, above, below, division.quotient().coefficient(0)));
  }

  private static Polynomial inOne(MultivariatePolynomial p) {
    Polynomial sum = Polynomial.ZERO;
    List<MultivariatePolynomial> coefficients = p.coefficientsIn(0);
    for (int k = 0; k < coefficients.size(); k++) {
      sum = sum.plus(Polynomial.monomial(coefficients.get(k).coefficient(Monomial.ONE), k));
    }
    return sum;
  }

  List<Step> steps() {
    Rational t = data.at();
    Polynomial auxiliary = below.times(p).minus(above);
    String name = data.function().equals("Q") ? "P" : "Q";
    Setting setting =
        data.setting(p).withFunction(name, auxiliary).withDefinition("c", Formula.number(factor));
    Formula c = Formula.name("c");
    List<Formula> factors = new ArrayList<>(List.of(c));
    data.used().forEach(point -> factors.add(X.minus(Formula.number(point.at()))));
    List<Step> steps = new ArrayList<>();
    Formula product = data.applied(X);
    steps.add(
        Step.equation(
            setting,
            Idea.SUBSTITUTE,
            "zero for x = " + data.places(),
            applied(name, X),
            NormalForm.of(
                (below.equals(Polynomial.ONE)
                        ? product
                        : PolynomialFormula.of(below, X).times(product))
                    .minus(PolynomialFormula.of(above, X)))));
    steps.add(
        Step.equation(
            setting,
            Idea.VANISHING,
            "of degree %d, so it has no other zeros".formatted(auxiliary.degree()),
            applied(name, X),
            NormalForm.of(Formula.product(factors))));
    if (below.degree() == 1) {
      Rational zero = below.coefficient(0).over(below.coefficient(1)).negate();
      steps.add(
          Step.equation(
              setting,
              Idea.EVALUATE,
              "at x = %s the unknown value drops out".formatted(zero),
              Formula.number(above.at(zero).negate()),
              NormalForm.of(c.times(Formula.number(data.vanishing().at(zero))))));
    }
    steps.add(
        Step.equation(
            setting,
            Idea.READ_COEFFICIENTS,
            below.degree() == 1 ? "so c is known" : "the lead coefficients agree",
            c,
            Formula.number(factor)));
    steps.add(
        Step.equation(
            setting,
            Idea.EVALUATE,
            "x = " + t,
            applied(name, Formula.number(t)),
            NormalForm.of(Formula.number(factor).times(Formula.number(data.vanishing().at(t)))),
            Formula.number(auxiliary.at(t))));
    Formula sum = NormalForm.of(Formula.number(auxiliary.at(t)).plus(Formula.number(above.at(t))));
    steps.add(
        Step.equation(
            setting,
            Idea.ARITHMETIC,
            "solved for the value",
            data.applied(t),
            below.at(t).isOne() ? sum : NormalForm.of(sum.over(Formula.number(below.at(t)))),
            Formula.number(p.at(t))));
    return steps;
  }

  /** The value that comes out with another number in the place of c. */
  Rational valueWith(Rational other) {
    Rational t = data.at();
    return other.times(data.vanishing().at(t)).plus(above.at(t)).over(below.at(t));
  }

  private static Formula applied(String name, Formula to) {
    return new Formula.Application(name, List.of(to));
  }
}
