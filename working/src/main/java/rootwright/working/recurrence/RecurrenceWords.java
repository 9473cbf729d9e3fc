package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;

/** A sequence and what is asked of it, as a sheet would print them. */
final class RecurrenceWords {

  private RecurrenceWords() {}

  /** The ask as it is shown. */
  static Formula find(RecurrenceReader.Read read) {
    String letter = read.sequence().letter();
    RecurrenceAsk ask = read.ask();
    if (ask instanceof RecurrenceAsk.Member member) {
      return Formula.name(letter + "_" + member.index());
    } else if (ask instanceof RecurrenceAsk.Residue residue) {
      return new Formula.Modulo(
          Formula.name(letter + "_" + residue.index()), Formula.number(residue.modulus()));
    } else if (ask instanceof RecurrenceAsk.Period period) {
      return new Formula.Words("period mod " + period.modulus());
    }
    return new Formula.Words(
        ask instanceof RecurrenceAsk.ClosedForm ? "closed form" : "characteristic polynomial");
  }

  /** The first members and the rule. */
  static List<Formula> conditions(Recurrence sequence) {
    List<Formula> conditions = new ArrayList<>();
    for (int k = 0; k < sequence.order(); k++) {
      conditions.add(
          Formula.equation(
              Formula.name(sequence.letter() + "_" + (sequence.start() + k)),
              Formula.number(sequence.first().get(k))));
    }
    conditions.add(new Formula.Words(typedRule(sequence)));
    return conditions;
  }

  /** The rule as it may be typed: {@code u_{k+2} = 5*u_{k+1} - 6*u_k}. */
  private static String typedRule(Recurrence sequence) {
    return "%s = %s".formatted(running(sequence, sequence.order()), right(sequence));
  }

  private static String running(Recurrence sequence, int shift) {
    return shift == 0
        ? "%s_%s".formatted(sequence.letter(), sequence.index())
        : "%s_{%s+%d}".formatted(sequence.letter(), sequence.index(), shift);
  }

  private static String right(Recurrence sequence) {
    StringBuilder right = new StringBuilder();
    int d = sequence.order();
    for (int k = 0; k < d; k++) {
      append(right, sequence.coefficients().get(k), running(sequence, d - 1 - k));
    }
    append(right, sequence.constant(), "");
    return right.isEmpty() ? "0" : right.toString();
  }

  private static void append(StringBuilder text, Rational factor, String what) {
    if (factor.isZero()) {
      return;
    }
    boolean minus = factor.signum() < 0;
    text.append(text.isEmpty() ? (minus ? "−" : "") : minus ? " − " : " + ");
    Rational size = factor.absolute();
    String number =
        size.isInteger()
            ? size.toString()
            : what.isEmpty() ? size.toString() : "(%s)".formatted(size);
    text.append(what.isEmpty() ? number : size.isOne() ? what : number + what);
  }

  /** The problem as a sheet would print it. */
  static String statement(RecurrenceReader.Read read) {
    Recurrence sequence = read.sequence();
    List<String> first = new ArrayList<>();
    for (int k = 0; k < sequence.order(); k++) {
      first.add(
          UnicodeWriter.write(
              NormalForm.of(
                  Formula.equation(
                      Formula.name(sequence.letter() + "_" + (sequence.start() + k)),
                      Formula.number(sequence.first().get(k))))));
    }
    return "Let %s and %s for all %s ≥ %d. %s"
        .formatted(
            String.join(", ", first),
            typedRule(sequence),
            sequence.index(),
            sequence.start(),
            wanted(read));
  }

  private static String wanted(RecurrenceReader.Read read) {
    String letter = read.sequence().letter();
    RecurrenceAsk ask = read.ask();
    if (ask instanceof RecurrenceAsk.Member member) {
      return "Find %s.".formatted(UnicodeWriter.write(Formula.name(letter + "_" + member.index())));
    } else if (ask instanceof RecurrenceAsk.Residue residue) {
      String name = UnicodeWriter.write(Formula.name(letter + "_" + residue.index()));
      return residue.modulus().equals(BigInteger.TEN)
          ? "Find the last digit of %s.".formatted(name)
          : "Find the remainder when %s is divided by %d.".formatted(name, residue.modulus());
    } else if (ask instanceof RecurrenceAsk.Period period) {
      return "Find after how many places the remainders modulo %d return."
          .formatted(period.modulus());
    }
    return ask instanceof RecurrenceAsk.ClosedForm
        ? "Express %s_%s by %s.".formatted(letter, read.sequence().index(), read.sequence().index())
        : "Find the characteristic polynomial.";
  }
}
