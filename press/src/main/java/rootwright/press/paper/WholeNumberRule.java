package rootwright.press.paper;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.press.document.Piece;
import rootwright.working.answer.Answer;

/**
 * How an answer becomes a whole number from 0 to 999, and the sentence that makes this unique: m +
 * n for m/n in lowest terms with n positive, a + b + c for a + b√c with whole a and b and
 * squarefree c. Fractions in lowest terms with positive denominator are unique; so are a, b, c,
 * since √c is irrational.
 *
 * @param sentence added to the statement; empty where the answer is asked for itself
 * @param number what is to be written down
 */
public record WholeNumberRule(List<Piece> sentence, BigInteger number) {

  private static final BigInteger HIGHEST = BigInteger.valueOf(999);

  public WholeNumberRule {
    sentence = List.copyOf(sentence);
  }

  /** The rule for an answer, empty if no rule of ours leads to a number from 0 to 999. */
  public static Optional<WholeNumberRule> of(Answer answer) {
    return rule(answer)
        .filter(rule -> rule.number().signum() >= 0 && rule.number().compareTo(HIGHEST) <= 0);
  }

  private static Optional<WholeNumberRule> rule(Answer answer) {
    if (answer instanceof Answer.Count count) {
      return Optional.of(new WholeNumberRule(List.of(), count.number()));
    } else if (answer instanceof Answer.Residue residue) {
      return Optional.of(new WholeNumberRule(List.of(), residue.value()));
    } else if (answer instanceof Answer.Exact exact) {
      return value(exact.value());
    }
    return Optional.empty();
  }

  private static Optional<WholeNumberRule> value(ExactValue value) {
    if (value instanceof RationalValue rational) {
      return Optional.of(rational(rational.number()));
    } else if (value instanceof QuadraticSurd surd
        && surd.a().isInteger()
        && surd.b().isInteger()
        && surd.d().signum() > 0) {
      return Optional.of(surd(surd));
    }
    return Optional.empty();
  }

  private static WholeNumberRule rational(Rational value) {
    if (value.isInteger()) {
      return new WholeNumberRule(List.of(), value.numerator());
    }
    Formula m = Formula.name("m");
    Formula n = Formula.name("n");
    return new WholeNumberRule(
        Piece.line(
            " The answer is ",
            m.over(n),
            " in lowest terms, with ",
            n,
            " positive. Write down ",
            m.plus(n),
            "."),
        value.numerator().add(value.denominator()));
  }

  private static WholeNumberRule surd(QuadraticSurd surd) {
    Formula a = Formula.name("a");
    Formula b = Formula.name("b");
    Formula c = Formula.name("c");
    return new WholeNumberRule(
        Piece.line(
            " The answer is ",
            a.plus(b.times(new Formula.Radical(c, 2))),
            " with whole numbers ",
            a,
            ", ",
            b,
            ", ",
            c,
            ", where ",
            c,
            " is positive and no square above 1 divides it. Write down ",
            Formula.sum(List.of(a, b, c)),
            "."),
        surd.a().numerator().add(surd.b().numerator()).add(surd.d()));
  }
}
