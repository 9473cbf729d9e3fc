package rootwright.working.interpolation;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The value as a sum of the given values with weights that depend on the places only. */
final class LagrangeLines {

  private LagrangeLines() {}

  /** The lines; with a known lead a, that of a times the product of the x − k first. */
  static List<Step> of(ValueData data, Polynomial p) {
    Rational t = data.at();
    Setting setting = data.setting(p);
    List<Formula> terms = new ArrayList<>();
    List<Formula> values = new ArrayList<>();
    Rational first = data.lead().map(a -> a.times(data.vanishing().at(t))).orElse(Rational.ZERO);
    if (!first.isZero()) {
      terms.add(Formula.number(first));
      values.add(Formula.number(first));
    }
    for (ValueData.Point point : data.used()) {
      Rational weight = Rational.ONE;
      for (ValueData.Point other : data.used()) {
        if (!other.equals(point)) {
          weight = weight.times(t.minus(other.at())).over(point.at().minus(other.at()));
        }
      }
      terms.add(Formula.number(weight).times(data.applied(point.at())));
      values.add(Formula.number(weight).times(Formula.number(point.value())));
    }
    return List.of(
        Step.equation(
            setting,
            Idea.INTERPOLATE,
            data.lead().isPresent()
                ? "the lead times the product of the differences, and Lagrange's weights"
                : "Lagrange's weights",
            data.applied(t),
            NormalForm.of(Formula.sum(terms))),
        Step.equation(
            setting,
            Idea.ARITHMETIC,
            "with the given values",
            data.applied(t),
            NormalForm.of(Formula.sum(values)),
            Formula.number(p.at(t))));
  }
}
