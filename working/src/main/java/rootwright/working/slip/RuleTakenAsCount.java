package rootwright.working.slip;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.RealRange;
import rootwright.working.step.Idea;

/** The changes of sign are taken for the number of roots, not for a bound. Common practice. */
final class RuleTakenAsCount implements Turning {

  @Override
  public String name() {
    return "rule-taken-as-count";
  }

  @Override
  public String text() {
    return "Descartes' rule is a bound: the number of roots may be smaller by an even number.";
  }

  @Override
  public Idea spot() {
    return Idea.CASES;
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  public List<? extends Answer> answers(Asked asked) {
    Polynomial p = asked.problem().polynomial();
    int positive = changes(p);
    int negative = changes(p.compose(Polynomial.X.negate()));
    int zero = p.coefficient(0).isZero() ? 1 : 0;
    String word = asked.formula() instanceof Formula.Application a ? a.function() : "";
    int count =
        word.equals(RealRange.POSITIVE.word())
            ? positive
            : word.equals(RealRange.NEGATIVE.word()) ? negative : positive + negative + zero;
    return List.of(new Answer.Count(BigInteger.valueOf(count)));
  }

  private static int changes(Polynomial p) {
    List<Integer> signs =
        IntStream.rangeClosed(0, p.degree())
            .mapToObj(k -> p.coefficient(k).signum())
            .filter(sign -> sign != 0)
            .toList();
    return (int)
        IntStream.range(1, signs.size())
            .filter(k -> !signs.get(k).equals(signs.get(k - 1)))
            .count();
  }
}
