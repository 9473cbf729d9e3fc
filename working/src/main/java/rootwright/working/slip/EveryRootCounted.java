package rootwright.working.slip;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.RealRange;
import rootwright.working.step.Idea;

/** The degree is given for the number of real roots. Tong, Uyen, Thi and Lai 2017. */
final class EveryRootCounted implements Turning {

  @Override
  public String name() {
    return "all-roots";
  }

  @Override
  public String text() {
    return "The degree counts all roots; those that are not real are not asked for.";
  }

  @Override
  public Idea spot() {
    return Idea.DOMAIN;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  public List<? extends Answer> answers(Asked asked) {
    boolean real =
        asked.formula() instanceof Formula.Application a
            && a.function().equals(RealRange.ALL.word());
    return real
        ? List.of(new Answer.Count(BigInteger.valueOf(asked.problem().degree())))
        : List.of();
  }
}
