package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.roots.RootValue;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.RealRootSum;
import rootwright.working.step.Idea;

/** All roots are added up where only the real ones are asked for. Tong, Uyen, Thi and Lai 2017. */
final class AllRoots implements Turning {

  @Override
  public String name() {
    return "all-roots";
  }

  @Override
  public String text() {
    return "Only the real roots are asked for: find out which pairs are real before you add up.";
  }

  @Override
  public Idea spot() {
    return Idea.DOMAIN;
  }

  @Override
  public int weight() {
    return 20;
  }

  @Override
  public List<? extends Answer> answers(Asked asked) {
    return RealRootSum.of(asked.problem())
        .map(
            f ->
                ResidueAlgebra.of(asked.problem().polynomial())
                    .trace(f.numerator(), f.denominator()))
        .filter(RootValue.Exact.class::isInstance)
        .map(value -> List.of(Answer.exact(((RootValue.Exact) value).value())))
        .orElse(List.of());
  }
}
