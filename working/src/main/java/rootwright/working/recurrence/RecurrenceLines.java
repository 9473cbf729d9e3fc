package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
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

/** The lines of the ways to a member of a sequence. */
final class RecurrenceLines {

  /** So many members are written one by one. */
  static final int LONGEST_TABLE = 24;

  /** Up to this index a member is confirmed as a sum of powers of the roots. */
  static final int HIGHEST_POWER = 60;

  /** How a member is called in a claim. */
  private static final String CLAIMED = "u";

  private final Recurrence sequence;

  RecurrenceLines(Recurrence sequence) {
    this.sequence = sequence;
  }

  Formula member(int at) {
    return Formula.name(sequence.letter() + "_" + at);
  }

  /** The right side of the recurrence for one member, in the members before it. */
  private Formula rule(int at, String letter) {
    List<Formula> terms = new ArrayList<>();
    for (int k = 0; k < sequence.order(); k++) {
      Rational c = sequence.coefficients().get(k);
      if (!c.isZero()) {
        terms.add(Formula.number(c).times(Formula.name(letter + "_" + (at - 1 - k))));
      }
    }
    if (!sequence.constant().isZero()) {
      terms.add(Formula.number(sequence.constant()));
    }
    return NormalForm.of(Formula.sum(terms));
  }

  private Formula ruleInNumbers(int at, List<Rational> members) {
    List<Formula> terms = new ArrayList<>();
    for (int k = 0; k < sequence.order(); k++) {
      Rational c = sequence.coefficients().get(k);
      if (!c.isZero()) {
        Formula value = Formula.number(members.get(at - 1 - k - sequence.start()));
        terms.add(
            c.isOne()
                ? value
                : c.equals(Rational.MINUS_ONE)
                    ? new Formula.Negative(value)
                    : Formula.number(c).times(value));
      }
    }
    if (!sequence.constant().isZero()) {
      terms.add(Formula.number(sequence.constant()));
    }
    return Formula.sum(terms);
  }

  /**
   * The members with their meaning: the first ones are numbers, the others follow by the rule. In a
   * claim they are called u, as e, h, p and S have meanings of their own there.
   */
  private Setting setting(int last) {
    Setting setting = Setting.ofLetters(List.of());
    for (int k = 0; k < sequence.order(); k++) {
      setting =
          setting.withDefinition(
              CLAIMED + "_" + (sequence.start() + k), Formula.number(sequence.first().get(k)));
    }
    for (int at = sequence.start() + sequence.order(); at <= last; at++) {
      setting = setting.withDefinition(CLAIMED + "_" + at, rule(at, CLAIMED));
    }
    return setting;
  }

  /** One member after the other. */
  List<Step> stepByStep(int last) {
    List<Rational> members = sequence.members(last - sequence.start() + 1);
    Setting setting = setting(last);
    List<Step> steps = new ArrayList<>();
    for (int at = sequence.start() + sequence.order(); at <= last; at++) {
      boolean first = steps.isEmpty();
      Formula value = Formula.number(members.get(at - sequence.start()));
      Formula numbers = ruleInNumbers(at, members);
      List<Formula> sides = new ArrayList<>(List.of(member(at)));
      if (first) {
        sides.add(rule(at, sequence.letter()));
      }
      sides.add(numbers);
      if (!numbers.equals(value)) {
        sides.add(value);
      }
      steps.add(
          new Step(
              Formula.equation(sides.toArray(Formula[]::new)),
              first ? "the recurrence" : "",
              Idea.RECURRENCE,
              Claim.equal(setting, Formula.name(CLAIMED + "_" + at), numbers, value)));
    }
    if (steps.isEmpty()) {
      Formula value = Formula.number(members.get(last - sequence.start()));
      steps.add(
          new Step(
              Formula.equation(member(last), value),
              "given",
              Idea.STATE,
              Claim.equal(setting, Formula.name(CLAIMED + "_" + last), value)));
    }
    return steps;
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

  /** The remainders one by one. */
  List<Step> remainders(Residues residues, int last) {
    List<BigInteger> table = residues.table(last - sequence.start() + 1);
    List<Step> steps = new ArrayList<>();
    for (int at = sequence.start() + sequence.order(); at <= last; at++) {
      List<Rational> before = table.stream().map(Rational::of).toList();
      Formula sum = ruleInNumbers(at, before);
      BigInteger remainder = table.get(at - sequence.start());
      Rational value = sequence.constant();
      for (int k = 0; k < sequence.order(); k++) {
        value =
            value.plus(
                sequence
                    .coefficients()
                    .get(k)
                    .times(Rational.of(table.get(at - 1 - k - sequence.start()))));
      }
      BigInteger quotient = value.numerator().subtract(remainder).divide(residues.modulus());
      Formula written =
          quotient.signum() == 0
              ? Formula.number(remainder)
              : Formula.number(quotient)
                  .times(Formula.number(residues.modulus()))
                  .plus(Formula.number(remainder));
      List<Formula> sides =
          sum.equals(written) ? List.of(sum, Formula.number(value)) : List.of(sum, written);
      steps.add(
          new Step(
              new Formula.Words(
                  "%s leaves %d: %s"
                      .formatted(
                          UnicodeWriter.write(member(at)),
                          remainder,
                          UnicodeWriter.write(Formula.equation(sides.toArray(Formula[]::new))))),
              steps.isEmpty() ? "multiples of %d taken away".formatted(residues.modulus()) : "",
              Idea.REDUCE,
              new Claim.Equal(Setting.ofLetters(List.of()), sides)));
    }
    return steps;
  }

  /** The remainders return. */
  List<Step> period(Residues residues, Residues.Cycle cycle, Optional<BigInteger> wanted) {
    List<Step> steps = new ArrayList<>();
    int shown = cycle.before() + cycle.length() + sequence.order();
    List<BigInteger> table = residues.table(shown);
    steps.add(
        Step.argument(
            Idea.RECURRENCE,
            "the remainders modulo %d from %s on"
                .formatted(residues.modulus(), UnicodeWriter.write(member(sequence.start()))),
            new Formula.Listing(table.stream().<Formula>map(Formula::number).toList())));
    steps.add(
        Step.argument(
            Idea.CASES,
            sequence.order() == 1
                ? "one remainder fixes the next, and here one returns"
                : "%d neighbours fix the next, and here the %s return"
                    .formatted(
                        sequence.order(),
                        cycle.before() == 0
                            ? "first ones"
                            : "ones from place %d on".formatted(cycle.before())),
            new Formula.Words("they repeat after %d places".formatted(cycle.length()))));
    wanted.ifPresent(
        at -> {
          BigInteger length = BigInteger.valueOf(cycle.length());
          BigInteger from = BigInteger.valueOf((long) sequence.start() + cycle.before());
          BigInteger[] parts = at.subtract(from).divideAndRemainder(length);
          BigInteger same = from.add(parts[1]);
          if (!same.equals(at)) {
            steps.add(
                Step.equation(
                    Setting.ofLetters(List.of()),
                    Idea.REDUCE,
                    "whole periods are left out",
                    Formula.number(at),
                    Formula.number(parts[0])
                        .times(Formula.number(length))
                        .plus(Formula.number(same))));
          }
          steps.add(
              Step.argument(
                  Idea.ARITHMETIC,
                  "from the table",
                  new Formula.Words(
                      "%s leaves the same remainder as %s, which is %d"
                          .formatted(
                              UnicodeWriter.write(Formula.name(sequence.letter() + "_" + at)),
                              UnicodeWriter.write(Formula.name(sequence.letter() + "_" + same)),
                              residues
                                  .table(same.intValueExact() - sequence.start() + 1)
                                  .get(same.intValueExact() - sequence.start())))));
        });
    return steps;
  }

  /** The characteristic polynomial alone. */
  List<Step> characteristic(List<ExactValue> roots) {
    return roots(sequence.characteristic(), roots);
  }

  /**
   * x^N modulo the characteristic polynomial and the modulus by squaring, then the first members in
   * place of 1, x, x², …; every line is an identity between polynomials.
   */
  List<Step> bySquaring(Residues residues, BigInteger wanted) {
    Recurrence plain = sequence.homogeneous();
    Polynomial p = plain.characteristic();
    Setting setting = Setting.ofLetters(List.of("x")).withFunction("P", p);
    Formula x = Formula.name("x");
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.SUBSTITUTE,
            "a polynomial that is a multiple of this one, put on the sequence, gives 0",
            Formula.equation(
                new Formula.Application("P", List.of(x)), PolynomialFormula.of(p, x))));
    BigInteger exponent = wanted.subtract(BigInteger.valueOf(plain.start()));
    Polynomial power = Polynomial.ONE;
    BigInteger reached = BigInteger.ZERO;
    for (int bit = exponent.bitLength() - 1; bit >= 0; bit--) {
      if (reached.signum() > 0) {
        power =
            line(
                steps, setting, p, power.times(power), power, true, residues, reached.shiftLeft(1));
        reached = reached.shiftLeft(1);
      }
      if (exponent.testBit(bit)) {
        Polynomial before = power;
        power =
            reached.signum() == 0
                ? Polynomial.X
                : line(
                    steps,
                    setting,
                    p,
                    power.times(Polynomial.X),
                    before,
                    false,
                    residues,
                    reached.add(BigInteger.ONE));
        reached = reached.add(BigInteger.ONE);
      }
    }
    List<Formula> terms = new ArrayList<>();
    Rational total = Rational.ZERO;
    for (int k = plain.order() - 1; k >= 0; k--) {
      Rational c = power.coefficient(k);
      if (!c.isZero()) {
        terms.add(Formula.number(c).times(Formula.number(plain.first().get(k))));
        total = total.plus(c.times(plain.first().get(k)));
      }
    }
    BigInteger[] parts = total.numerator().divideAndRemainder(residues.modulus());
    if (parts[1].signum() < 0) {
      parts[0] = parts[0].subtract(BigInteger.ONE);
      parts[1] = parts[1].add(residues.modulus());
    }
    Formula written =
        Formula.number(parts[0])
            .times(Formula.number(residues.modulus()))
            .plus(Formula.number(parts[1]));
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.ARITHMETIC,
            "the first members in place of the powers of x; the last number is the remainder",
            Formula.sum(terms),
            written));
    return steps;
  }

  /** One product, reduced by P and by the modulus. */
  private static Polynomial line(
      List<Step> steps,
      Setting setting,
      Polynomial p,
      Polynomial product,
      Polynomial before,
      boolean squared,
      Residues residues,
      BigInteger exponent) {
    Polynomial.Division division = product.divide(p);
    Polynomial reduced = Polynomial.ZERO;
    Polynomial multiples = Polynomial.ZERO;
    for (int k = 0; k <= division.remainder().degree(); k++) {
      BigInteger c = division.remainder().coefficient(k).numerator();
      BigInteger rest = c.mod(residues.modulus());
      reduced = reduced.plus(Polynomial.monomial(Rational.of(rest), k));
      multiples =
          multiples.plus(
              Polynomial.monomial(Rational.of(c.subtract(rest).divide(residues.modulus())), k));
    }
    Formula x = Formula.name("x");
    Formula old = PolynomialFormula.of(before, x);
    Formula left = squared ? old.power(2) : x.times(old);
    List<Formula> terms = new ArrayList<>();
    if (!division.quotient().isZero()) {
      terms.add(
          times(
              PolynomialFormula.of(division.quotient(), x),
              new Formula.Application("P", List.of(x))));
    }
    if (!multiples.isZero()) {
      terms.add(Formula.number(residues.modulus()).times(PolynomialFormula.of(multiples, x)));
    }
    if (!reduced.isZero()) {
      terms.add(PolynomialFormula.of(reduced, x));
    }
    Formula right = NormalForm.of(Formula.sum(terms));
    if (!NormalForm.of(left).equals(right)) {
      steps.add(
          new Step(
              Formula.equation(left, right),
              "x^%d leaves %s"
                  .formatted(exponent, UnicodeWriter.write(PolynomialFormula.of(reduced, x))),
              Idea.REDUCE,
              Claim.equal(setting, left, right)));
    }
    return reduced;
  }

  private static Formula times(Formula left, Formula right) {
    return left.equals(Formula.number(1)) ? right : left.times(right);
  }
}
