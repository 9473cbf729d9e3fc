package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines by which a member is found from the roots of the characteristic polynomial. */
final class ClosedFormLines {

  /** Up to this index a member is confirmed as a sum of powers of the roots. */
  static final int HIGHEST_POWER = 60;

  private final Recurrence sequence;

  ClosedFormLines(Recurrence sequence) {
    this.sequence = sequence;
  }

  /** The characteristic polynomial and its roots. */
  private List<Step> roots(Polynomial p, List<ExactValue> values) {
    List<Step> steps = new ArrayList<>();
    Formula x = Formula.name("x");
    steps.add(
        Step.argument(
            Idea.SUBSTITUTE,
            sequence.constant().isZero()
                ? "x to the power k satisfies the recurrence exactly when"
                : "two neighbouring places subtracted: no constant any more; its powers satisfy it exactly when",
            Formula.equation(PolynomialFormula.of(p, x), Formula.number(0))));
    List<Formula> each =
        values.stream().map(value -> Formula.equation(x, value.toFormula())).toList();
    steps.add(
        new Step(
            each.size() == 1 ? each.get(0) : new Formula.Listing(each),
            "its roots",
            Idea.CASES,
            new Claim.SolutionSet(p, NumberDomain.COMPLEX, values)));
    return steps;
  }

  /** Through the powers of the roots; a member at the end, if one is wanted. */
  List<Step> closedForm(ClosedForm form, Recurrence fromZero, Optional<BigInteger> wanted) {
    Polynomial p = fromZero.characteristic();
    List<Step> steps =
        new ArrayList<>(roots(p, form.terms().stream().map(ClosedForm.Term::root).toList()));
    steps.addAll(form.isRational() ? rationalFactors(form, fromZero) : surdFactors(fromZero));
    Formula k = Formula.name(sequence.index());
    steps.add(
        Step.argument(
            Idea.RECURRENCE,
            "the same recurrence and the same first members, so the same sequence",
            Formula.equation(
                Formula.name(sequence.letter() + "_" + sequence.index()), form.formula(k))));
    wanted.ifPresent(at -> steps.add(put(form, fromZero, at)));
    return steps;
  }

  private Step put(ClosedForm form, Recurrence fromZero, BigInteger at) {
    Formula value = Formula.number(sequence.at(at));
    if (form.isRational()) {
      Formula written = form.formula(Formula.number(at));
      Step arithmetic =
          Step.equation(Setting.ofLetters(List.of()), Idea.ARITHMETIC, "put in", written, value);
      return new Step(
          Formula.equation(Formula.name(sequence.letter() + "_" + at), written, value),
          "put in",
          Idea.ARITHMETIC,
          arithmetic.claim());
    }
    Setting setting = surdSetting(fromZero);
    Formula powers = powers(at.intValueExact());
    return new Step(
        Formula.equation(Formula.name(sequence.letter() + "_" + at), powers, value),
        "symmetric in the two roots",
        Idea.EXPAND,
        Claim.equal(setting, powers, value));
  }

  private static Formula powers(int k) {
    Formula a = Formula.name("A");
    Formula b = Formula.name("B");
    Formula r = Formula.name("r");
    Formula s = Formula.name("s");
    return k == 0
        ? a.plus(b)
        : k == 1 ? a.times(r).plus(b.times(s)) : a.times(r.power(k)).plus(b.times(s.power(k)));
  }

  private static Setting surdSetting(Recurrence fromZero) {
    Formula r = Formula.name("r");
    Formula s = Formula.name("s");
    Formula u0 = Formula.number(fromZero.first().get(0));
    Formula u1 = Formula.number(fromZero.first().get(1));
    return Setting.of(fromZero.characteristic(), List.of("r", "s"))
        .withDefinition("A", u1.minus(u0.times(s)).over(r.minus(s)))
        .withDefinition("B", u1.minus(u0.times(r)).over(s.minus(r)));
  }

  /** A = (u₁ − u₀s)/(r − s) and B with r and s exchanged. */
  private List<Step> surdFactors(Recurrence fromZero) {
    Setting setting = surdSetting(fromZero);
    Formula r = Formula.name("r");
    Formula s = Formula.name("s");
    Formula u0 = Formula.number(fromZero.first().get(0));
    Formula u1 = Formula.number(fromZero.first().get(1));
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.equation(
            setting,
            Idea.ELIMINATE,
            "A and B, so that A + B and Ar + Bs are the members 0 and 1",
            Formula.name("A"),
            NormalForm.of(u1.minus(u0.times(s)).over(r.minus(s)))));
    steps.add(
        Step.equation(
            setting,
            Idea.ELIMINATE,
            "the other with r and s exchanged",
            Formula.name("B"),
            NormalForm.of(u1.minus(u0.times(r)).over(s.minus(r)))));
    steps.add(Step.equation(setting, Idea.ARITHMETIC, "member 0", powers(0), u0));
    steps.add(Step.equation(setting, Idea.ARITHMETIC, "member 1", powers(1), u1));
    return steps;
  }

  /** The linear equations for the factors, and their solution. */
  private List<Step> rationalFactors(ClosedForm form, Recurrence fromZero) {
    List<List<Rational>> columns = new ArrayList<>();
    List<Rational> solution = new ArrayList<>();
    for (ClosedForm.Term term : form.terms()) {
      Rational root = ((RationalValue) term.root()).number();
      for (int j = 0; j < term.factors().size(); j++) {
        List<Rational> column = new ArrayList<>();
        for (int k = 0; k < fromZero.order(); k++) {
          column.add(Rational.of(k).power(j).times(root.power(k)));
        }
        columns.add(column);
        solution.add(((RationalValue) term.factors().get(j)).number());
      }
    }
    List<MultivariatePolynomial> equations = new ArrayList<>();
    List<Formula> written = new ArrayList<>();
    List<Formula> letters =
        List.of("A", "B", "C", "D", "E", "F", "G", "H", "K").stream().map(Formula::name).toList();
    for (int k = 0; k < fromZero.order(); k++) {
      MultivariatePolynomial left = MultivariatePolynomial.ZERO;
      List<Formula> terms = new ArrayList<>();
      for (int j = 0; j < columns.size(); j++) {
        Rational c = columns.get(j).get(k);
        left = left.plus(MultivariatePolynomial.unknown(j + 1).times(c));
        if (!c.isZero()) {
          terms.add(c.isOne() ? letters.get(j) : Formula.number(c).times(letters.get(j)));
        }
      }
      Rational right = fromZero.first().get(k);
      equations.add(left.minus(MultivariatePolynomial.constant(right)));
      written.add(Formula.equation(NormalForm.of(Formula.sum(terms)), Formula.number(right)));
    }
    List<Formula> found = new ArrayList<>();
    for (int j = 0; j < solution.size(); j++) {
      found.add(Formula.equation(letters.get(j), Formula.number(solution.get(j))));
    }
    Formula shape = shape(form, letters);
    return List.of(
        Step.argument(
            Idea.SUBSTITUTE,
            form.terms().stream().anyMatch(term -> term.factors().size() > 1)
                ? "a root that occurs m times brings powers of the index up to m − 1"
                : "every sum of such powers satisfies it too",
            Formula.equation(Formula.name(sequence.letter() + "_" + sequence.index()), shape)),
        Step.argument(
            Idea.STATE,
            "the first members from index 0",
            written.size() == 1 ? written.get(0) : new Formula.Listing(written)),
        new Step(
            found.size() == 1 ? found.get(0) : new Formula.Listing(found),
            "solved",
            Idea.ELIMINATE,
            new Claim.SystemSolutions(columns.size(), equations, List.of(solution))));
  }

  private Formula shape(ClosedForm form, List<Formula> letters) {
    Formula k = Formula.name(sequence.index());
    List<Formula> terms = new ArrayList<>();
    int at = 0;
    for (ClosedForm.Term term : form.terms()) {
      Formula base = term.root().toFormula();
      List<Formula> factor = new ArrayList<>();
      for (int j = 0; j < term.factors().size(); j++) {
        Formula letter = letters.get(at++);
        factor.add(j == 0 ? letter : letter.times(j == 1 ? k : k.power(j)));
      }
      Formula sum = Formula.sum(factor);
      terms.add(base.equals(Formula.number(1)) ? sum : sum.times(new Formula.Power(base, k)));
    }
    return NormalForm.of(Formula.sum(terms));
  }

  /** The sequence is c times the power sums of the roots. */
  List<Step> powerSums(Recurrence fromZero, Rational factor, int wanted) {
    Polynomial p = fromZero.characteristic();
    List<String> names = List.of("r", "s", "t", "u", "v", "w", "r_7", "r_8", "r_9");
    Setting setting = Setting.of(p, names.subList(0, p.degree()));
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.SUBSTITUTE,
            "the power sums S₀, S₁, … of the roots of this polynomial satisfy the recurrence too",
            PolynomialFormula.of(p, Formula.name("x"))));
    for (int k = 0; k < p.degree(); k++) {
      Formula sum = new Formula.Family("S", Formula.number(k));
      Formula value = Formula.number(fromZero.first().get(k));
      steps.add(
          Step.equation(
              setting,
              Idea.NEWTON,
              k == 0 ? "as many as there are roots" : "",
              factor.isOne() ? sum : NormalForm.of(Formula.number(factor).times(sum)),
              value));
    }
    Formula sum = new Formula.Family("S", Formula.number(wanted));
    Formula value = Formula.number(sequence.at(BigInteger.valueOf(wanted)));
    Formula product = factor.isOne() ? sum : NormalForm.of(Formula.number(factor).times(sum));
    steps.add(
        new Step(
            Formula.equation(Formula.name(sequence.letter() + "_" + wanted), product, value),
            "the same first members, so the same sequence",
            Idea.RECURRENCE,
            Claim.equal(setting, product, value)));
    return steps;
  }

  /** The characteristic polynomial alone. */
  List<Step> characteristic(List<ExactValue> roots) {
    return roots(sequence.characteristic(), roots);
  }
}
