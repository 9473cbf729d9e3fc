package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** A sum over unordered pairs taken over ordered ones, or the other way round. Common practice. */
final class PairsTwiceOrHalf implements Slip {

  @Override
  public String name() {
    return "pairs-twice-or-half";
  }

  @Override
  public String text() {
    return "Count the pairs: each unordered pair is one term, unless both orders give different terms.";
  }

  @Override
  public Idea spot() {
    return Idea.EXPAND;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  public List<Rational> on(Asked asked) {
    boolean pairs =
        asked.formula() instanceof Formula.Aggregate aggregate
            && aggregate.operation() == Formula.Aggregate.Operation.SUM
            && asked.problem().roots().stream().filter(root -> occurs(root, aggregate)).count()
                == 2;
    return pairs
        ? asked
            .quotient()
            .flatMap(sum -> sum.at(asked.problem().polynomial()))
            .map(sum -> List.of(sum.times(2), sum.over(Rational.TWO)))
            .orElse(List.of())
        : List.of();
  }

  private static boolean occurs(String root, Formula formula) {
    return formula.contains(
        part -> part instanceof Formula.Name name && name.spelling().equals(root));
  }
}
