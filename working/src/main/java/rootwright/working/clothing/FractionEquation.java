package rootwright.working.clothing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** An equation with the unknown below a stroke: cleared, and what makes a denominator zero left. */
final class FractionEquation {

  private FractionEquation() {}

  /** The equation left = 0 as a polynomial; empty if it has another form. */
  static Optional<Undressed> of(Formula left, String unknown) {
    boolean below =
        left.contains(
            part ->
                part instanceof Formula.Quotient quotient
                    && quotient.under().contains(one -> one.equals(Formula.name(unknown))));
    return below
        ? Fractions.of(left, unknown)
            .filter(fraction -> fraction.over().degree() > 0)
            .map(fraction -> undressed(left, fraction, unknown))
        : Optional.empty();
  }

  private static Undressed undressed(Formula left, Fractions fraction, String unknown) {
    Polynomial polynomial = fraction.over().primitive();
    Formula under = PolynomialFormula.of(fraction.under(), unknown);
    Formula over = PolynomialFormula.of(fraction.over(), unknown);
    List<Step> lines = new ArrayList<>();
    lines.add(
        Step.equation(
            Setting.ofLetters(List.of(unknown)),
            Idea.COMMON_DENOMINATOR,
            "everything on one side, over the common denominator",
            NormalForm.of(left),
            NormalForm.of(over.over(under))));
    lines.add(
        Step.argument(
            Idea.COMMON_DENOMINATOR,
            "a fraction is zero where its numerator is and its denominator is not",
            Undressed.zero(PolynomialFormula.of(polynomial, unknown))));
    List<ExactValue> kept = new ArrayList<>();
    List<Undressed.Rejected> rejected = new ArrayList<>();
    for (ExactRoot root : ExactValues.rootsOf(polynomial)) {
      boolean pole = fraction.under().remainder(root.value().minimalPolynomial()).isZero();
      if (pole) {
        rejected.add(
            new Undressed.Rejected(
                root.value(),
                "it makes a denominator zero: " + UnicodeWriter.write(under) + " = 0"));
      } else {
        kept.add(root.value());
      }
    }
    return new Undressed(polynomial, unknown, lines, kept, rejected, 1);
  }
}
