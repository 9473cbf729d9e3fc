package rootwright.working.fraction;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines of the two ways to the numerators of partial fractions. */
final class FractionLines {

  private final ExplicitFractions fractions;
  private final Formula whole;
  private final Map<String, Rational> values;
  private final Formula x;
  private final Setting setting;

  FractionLines(ExplicitFractions fractions, Formula whole, Map<String, Rational> values) {
    this.fractions = fractions;
    this.whole = whole;
    this.values = values;
    this.x = Formula.name(fractions.x());
    Setting named = Setting.ofLetters(List.of(fractions.x()));
    for (Map.Entry<String, Rational> value : values.entrySet()) {
      named = named.withDefinition(value.getKey(), Formula.number(value.getValue()));
    }
    this.setting = named;
  }

  /** The sum with letters or with the numbers put for them. */
  static Formula sum(ExplicitFractions fractions, Optional<Map<String, Rational>> values) {
    List<Formula> terms = new ArrayList<>();
    Polynomial quotient = fractions.division().quotient();
    if (!quotient.isZero()) {
      Formula written = PolynomialFormula.of(quotient, Formula.name(fractions.x()));
      terms.addAll(written instanceof Formula.Sum sum ? sum.terms() : List.of(written));
    }
    for (ExplicitFractions.Part part : fractions.parts()) {
      if (values.isEmpty()) {
        terms.add(part.numerator(fractions.x()).over(part.written()));
        continue;
      }
      List<Rational> ascending = new ArrayList<>();
      for (String letter : part.letters()) {
        ascending.add(0, values.get().getOrDefault(letter, Rational.ZERO));
      }
      Polynomial numerator = Polynomial.ofAscending(ascending);
      if (numerator.isZero()) {
        continue;
      }
      boolean minus = numerator.lead().signum() < 0;
      Polynomial size = minus ? numerator.negate() : numerator;
      Rational scale = Rational.of(size.denominator());
      Formula over = PolynomialFormula.of(size.times(scale), Formula.name(fractions.x()));
      Formula under = scale.isOne() ? part.written() : Formula.number(scale).times(part.written());
      Formula fraction = over.over(under);
      terms.add(minus ? new Formula.Negative(fraction) : fraction);
    }
    return NormalForm.of(Formula.sum(terms));
  }

  private List<Step> opening() {
    List<Step> steps = new ArrayList<>();
    Polynomial.Division division = fractions.division();
    if (!division.quotient().isZero()) {
      steps.add(
          Step.equation(
              setting,
              Idea.ARITHMETIC,
              "divide first: the numerator must have the lower degree",
              NormalForm.of(PolynomialFormula.of(fractions.above(), x)),
              NormalForm.of(
                  PolynomialFormula.of(fractions.below(), x)
                      .times(PolynomialFormula.of(division.quotient(), x))
                      .plus(PolynomialFormula.of(division.remainder(), x)))));
    }
    steps.add(
        Step.argument(
            Idea.PARTIAL_FRACTIONS,
            fractions.parts().stream().anyMatch(part -> !part.denominator().isSquarefree())
                ? "every power of a repeated factor gets a fraction"
                : "one fraction for every factor",
            Formula.equation(whole, sum(fractions, Optional.empty()))));
    List<Formula> products = new ArrayList<>();
    for (ExplicitFractions.Part part : fractions.parts()) {
      Formula numerator = part.numerator(fractions.x());
      Polynomial cofactor = fractions.cofactor(part);
      products.add(
          cofactor.equals(Polynomial.ONE) ? numerator : numerator.times(factored(cofactor)));
    }
    steps.add(
        Step.equation(
            setting,
            Idea.PARTIAL_FRACTIONS,
            "times the denominator: two equal polynomials, so equal at the excluded numbers too",
            NormalForm.of(PolynomialFormula.of(division.remainder(), x)),
            NormalForm.of(Formula.sum(products))));
    return steps;
  }

  /** The excluded numbers put in, then coefficients for what is left. */
  List<Step> coverUp() {
    List<Step> steps = new ArrayList<>(opening());
    List<String> open = new ArrayList<>(fractions.letters());
    boolean together = false;
    Polynomial rest = fractions.division().remainder();
    for (IrreducibleFactor factor : Factorisation.of(fractions.below()).factors()) {
      if (factor.polynomial().degree() != 1) {
        continue;
      }
      Rational at = factor.polynomial().coefficient(0).over(factor.polynomial().lead()).negate();
      List<ExplicitFractions.Part> left =
          fractions.parts().stream()
              .filter(part -> !fractions.cofactor(part).at(at).isZero())
              .toList();
      if (left.size() == 1 && left.get(0).letters().size() == 1) {
        String letter = left.get(0).letters().get(0);
        Rational c = fractions.cofactor(left.get(0)).at(at);
        Formula product =
            c.isOne() ? Formula.name(letter) : Formula.number(c).times(Formula.name(letter));
        Formula number = Formula.number(rest.at(at));
        steps.add(
            found(
                letter,
                "%s = %s, where all other terms vanish: %s"
                    .formatted(
                        fractions.x(),
                        at.toString().replace('-', '−'),
                        write(Formula.equation(NormalForm.of(product), number))),
                Idea.EVALUATE,
                Claim.equal(setting, product, number)));
        open.remove(letter);
      }
    }
    for (int power = fractions.below().degree() - 1; power >= 0 && !open.isEmpty(); power--) {
      int row = fractions.below().degree() - 1 - power;
      List<String> occurring = occurring(row);
      if (occurring.stream().noneMatch(open::contains)) {
        continue;
      }
      Step equation = coefficient(row, power);
      List<String> found = occurring.stream().filter(open::contains).toList();
      if (found.size() == 1) {
        steps.add(
            found(
                found.get(0),
                "%s: %s".formatted(equation.reason(), write(equation.shown())),
                Idea.READ_COEFFICIENTS,
                equation.claim()));
        open.remove(found.get(0));
      } else {
        steps.add(equation);
        together = true;
      }
    }
    if (together) {
      steps.add(solved());
    }
    steps.add(end());
    return steps;
  }

  /** All coefficients compared. */
  List<Step> compare() {
    List<Step> steps = new ArrayList<>(opening());
    for (int power = fractions.below().degree() - 1; power >= 0; power--) {
      steps.add(coefficient(fractions.below().degree() - 1 - power, power));
    }
    steps.add(solved());
    steps.add(end());
    return steps;
  }

  private List<String> occurring(int row) {
    var equation = fractions.equations().get(row);
    List<String> occurring = new ArrayList<>();
    for (int k = 0; k < fractions.letters().size(); k++) {
      if (equation.degreeIn(k + 1) > 0) {
        occurring.add(fractions.letters().get(k));
      }
    }
    return occurring;
  }

  private Step coefficient(int row, int power) {
    var equation = fractions.equations().get(row);
    List<Formula> terms = new ArrayList<>();
    for (int k = 0; k < fractions.letters().size(); k++) {
      Rational c = equation.coefficient(Monomial.power(k + 1, 1));
      Formula letter = Formula.name(fractions.letters().get(k));
      if (!c.isZero()) {
        terms.add(
            c.isOne()
                ? letter
                : c.equals(Rational.MINUS_ONE)
                    ? new Formula.Negative(letter)
                    : Formula.number(c).times(letter));
      }
    }
    Formula number = Formula.number(fractions.division().remainder().coefficient(power));
    String which =
        power == 0
            ? "the constant terms"
            : "the coefficients of " + UnicodeWriter.write(power == 1 ? x : x.power(power));
    return Step.equation(
        setting, Idea.READ_COEFFICIENTS, which, NormalForm.of(Formula.sum(terms)), number);
  }

  /** A letter with its value; what is claimed is the equation it comes from. */
  private Step found(String letter, String reason, Idea idea, Claim equation) {
    return new Step(
        Formula.equation(
            Formula.name(letter), Formula.number(values.getOrDefault(letter, Rational.ZERO))),
        reason,
        idea,
        equation);
  }

  private static String write(Formula formula) {
    return UnicodeWriter.write(formula);
  }

  /** All letters, and that nothing else solves the equations. */
  private Step solved() {
    List<Formula> found = new ArrayList<>();
    List<Rational> row = new ArrayList<>();
    for (String letter : fractions.letters()) {
      Rational value = values.getOrDefault(letter, Rational.ZERO);
      row.add(value);
      found.add(Formula.equation(Formula.name(letter), Formula.number(value)));
    }
    return new Step(
        found.size() == 1 ? found.get(0) : new Formula.Listing(found),
        "together",
        Idea.ELIMINATE,
        new Claim.SystemSolutions(row.size(), fractions.equations(), List.of(row)));
  }

  private Step end() {
    return Step.equation(
        setting,
        Idea.PARTIAL_FRACTIONS,
        "the partial fractions",
        whole,
        sum(fractions, Optional.of(values)));
  }

  private Formula factored(Polynomial polynomial) {
    List<Formula> factors = new ArrayList<>();
    Rational lead = polynomial.lead();
    for (IrreducibleFactor factor : Factorisation.of(polynomial).factors()) {
      Polynomial primitive = factor.polynomial().primitive();
      lead = lead.over(primitive.lead().power(factor.multiplicity()));
      Formula written = PolynomialFormula.of(primitive, x);
      factors.add(factor.multiplicity() == 1 ? written : written.power(factor.multiplicity()));
    }
    if (!lead.isOne()) {
      factors.add(0, Formula.number(lead));
    }
    return Formula.product(factors);
  }
}
