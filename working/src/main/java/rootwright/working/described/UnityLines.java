package rootwright.working.described;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Angle;
import rootwright.working.route.Working;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The way by a root of unity: every value written in ζ, multiplied out, and Φ_N(ζ) = 0 used. */
final class UnityLines {

  static final String ROUTE = "unity";

  private UnityLines() {}

  static List<Step> of(Formula ask, AngleField field, Polynomial minimal, ExactValue value) {
    Formula zeta = Formula.name(AngleField.ZETA);
    Formula angle = Angle.written(Rational.of(2, field.order()));
    Formula meaning =
        new Formula.Application("cos", List.of(angle))
            .plus(
                new Formula.ImaginaryUnit().times(new Formula.Application("sin", List.of(angle))));
    Setting setting =
        Setting.ofLetters(List.of()).withDefinition(AngleField.ZETA, NormalForm.of(meaning));
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.equation(setting, Idea.SUBSTITUTE, "a root of unity", zeta, NormalForm.of(meaning)));
    Set<Formula> atoms = new LinkedHashSet<>();
    collect(ask, atoms);
    for (Formula atom : atoms) {
      steps.add(
          Step.equation(
              setting, Idea.SUBSTITUTE, "de Moivre", atom, NormalForm.of(field.inZeta(atom))));
    }
    steps.add(
        Step.equation(
            setting,
            Idea.VANISHING,
            "the equation of the primitive roots of unity of order " + field.order(),
            PolynomialFormula.of(field.cyclotomic(), AngleField.ZETA),
            Formula.number(0)));
    Polynomial element = field.residue(ask).orElseThrow();
    List<Formula> sides =
        new ArrayList<>(List.of(ask, PolynomialFormula.of(element, AngleField.ZETA)));
    steps.add(
        Step.equation(
            setting,
            Idea.REDUCE,
            "put in, multiply out, lower the powers",
            sides.toArray(Formula[]::new)));
    if (!(value instanceof RationalValue)) {
      Setting named = setting.withDefinition("A", ask);
      steps.add(
          Step.equation(
              named,
              Idea.CONJUGATE,
              "A is the ask; its powers are reduced in the same way until they depend on each other",
              PolynomialFormula.of(minimal, "A"),
              Formula.number(0)));
      steps.add(
          Step.argument(
              Idea.DOMAIN,
              "the root that has the right size",
              Formula.equation(Formula.name("A"), value.toFormula())));
    }
    return steps;
  }

  static Working working(List<Step> steps, Answer answer) {
    return Working.of(
        ROUTE,
        "write everything by a root of unity",
        "Values at angles are sums of powers of a root of unity.",
        steps,
        answer);
  }

  private static void collect(Formula formula, Set<Formula> atoms) {
    if (formula instanceof Formula.Application application
        && Angle.argument(application).isPresent()) {
      atoms.add(formula);
    } else {
      formula.parts().forEach(part -> collect(part, atoms));
    }
  }
}
