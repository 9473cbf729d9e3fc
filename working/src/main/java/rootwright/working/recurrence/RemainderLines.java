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
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines by which the remainder of a member is found. */
final class RemainderLines {

  private final Recurrence sequence;
  private final RecurrenceLines members;

  RemainderLines(Recurrence sequence) {
    this.sequence = sequence;
    this.members = new RecurrenceLines(sequence);
  }

  /** The remainders one by one. */
  List<Step> remainders(Residues residues, int last) {
    List<BigInteger> table = residues.table(last - sequence.start() + 1);
    List<Step> steps = new ArrayList<>();
    for (int at = sequence.start() + sequence.order(); at <= last; at++) {
      List<Rational> before = table.stream().map(Rational::of).toList();
      Formula sum = members.ruleInNumbers(at, before);
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
                          UnicodeWriter.write(members.member(at)),
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
                .formatted(
                    residues.modulus(), UnicodeWriter.write(members.member(sequence.start()))),
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
