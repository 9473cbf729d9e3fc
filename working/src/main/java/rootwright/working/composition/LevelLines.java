package rootwright.working.composition;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.route.NamedForm;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines of the two ways to the roots of P(P(x)) = c. */
final class LevelLines {

  private final Composed composed;
  private final LevelAsk ask;
  private final Formula x;
  private final Formula r;

  LevelLines(Composed composed) {
    this.composed = composed;
    this.ask = composed.ask();
    this.x = Formula.name(composed.unknown());
    this.r = Formula.name(composed.unknown().equals("r") ? "s" : "r");
  }

  /** Level by level: P(x) = r for every root r of P(y) = c. */
  List<Step> byLevels() {
    List<Step> steps = new ArrayList<>();
    Setting setting =
        Setting.of(composed.levels(), List.of(((Formula.Name) r).spelling()))
            .withFunction(ask.function(), composed.inner());
    steps.add(
        Step.argument(
            Idea.CASES,
            "for one of the %d numbers %s with %s"
                .formatted(
                    composed.degree(),
                    write(r),
                    write(Formula.equation(ask.applied(r), Formula.number(ask.level())))),
            Formula.equation(ask.applied(x), r)));
    steps.add(
        Step.equation(
            setting.withFree(composed.unknown()),
            Idea.STATE,
            "only the last coefficient depends on the level",
            NormalForm.of(ask.applied(x).minus(r)),
            NormalForm.of(PolynomialFormula.of(composed.inner(), x).minus(r))));
    steps.addAll(ask.total() == LevelAsk.Total.SUM ? sums() : products(setting));
    return steps;
  }

  private List<Step> sums() {
    Polynomial p = composed.inner();
    int n = p.degree();
    Rational one = composed.total(p);
    return List.of(
        Step.equation(
            Setting.of(p, List.of()),
            Idea.READ_COEFFICIENTS,
            "the sum of the roots is the same on every level",
            NamedForm.elementary(1),
            Formula.number(one)),
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.SUM_OVER_ROOTS,
            "there are %d levels".formatted(n),
            NormalForm.of(Formula.number(n).times(Formula.number(one))),
            Formula.number(one.times(n))));
  }

  private List<Step> products(Setting setting) {
    Polynomial p = composed.inner();
    int n = p.degree();
    Rational sign = n % 2 == 0 ? p.lead() : p.lead().negate();
    Formula difference =
        p.coefficient(0).isZero() ? r.times(Formula.number(-1)) : constant(p.coefficient(0));
    Formula level =
        NormalForm.of(sign.isOne() ? difference : difference.over(Formula.number(sign)));
    Formula at = ask.applied(Formula.number(p.coefficient(0)));
    Formula above =
        ask.level().isZero() ? at : NormalForm.of(at.minus(Formula.number(ask.level())));
    Rational under = sign.power(n).times(p.lead());
    return List.of(
        Step.argument(Idea.READ_COEFFICIENTS, "the product of the roots on the level of r", level),
        Step.equation(
            setting,
            Idea.EVALUATE,
            "over all levels, as P(y) − c is a times the product of y − r",
            new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, level),
            NormalForm.of(under.isOne() ? above : above.over(Formula.number(under))),
            Formula.number(composed.value())));
  }

  private Formula constant(Rational last) {
    return Formula.number(last).minus(r);
  }

  /** Multiplied out, and one coefficient read off. */
  List<Step> byExpansion() {
    Polynomial whole = composed.whole();
    boolean sum = ask.total() == LevelAsk.Total.SUM;
    Setting function =
        Setting.ofLetters(List.of(composed.unknown()))
            .withFunction(ask.function(), composed.inner());
    Formula twice = ask.applied(ask.applied(x));
    return List.of(
        Step.equation(
            function,
            Idea.EXPAND,
            "multiplied out",
            ask.level().isZero() ? twice : NormalForm.of(twice.minus(Formula.number(ask.level()))),
            PolynomialFormula.of(whole, x)),
        Step.equation(
            Setting.of(whole, List.of()),
            Idea.READ_COEFFICIENTS,
            sum ? "the second coefficient over the first" : "the last coefficient over the first",
            NamedForm.elementary(sum ? 1 : whole.degree()),
            Formula.number(composed.value())));
  }

  private static String write(Formula formula) {
    return UnicodeWriter.write(formula);
  }
}
