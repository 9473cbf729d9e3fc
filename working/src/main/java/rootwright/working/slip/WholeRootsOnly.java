package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** Only whole numbers are tried as roots, although the lead is not 1. Common practice. */
final class WholeRootsOnly implements Turning {

  @Override
  public String name() {
    return "whole-roots-only";
  }

  @Override
  public String text() {
    return "A root may be a fraction: its denominator divides the lead.";
  }

  @Override
  public Idea spot() {
    return Idea.RATIONAL_ROOT;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  public List<? extends Answer> answers(Asked asked) {
    Polynomial polynomial = asked.problem().polynomial();
    List<RationalRoot> roots = RationalRoots.of(polynomial);
    List<ExactValue> whole =
        roots.stream()
            .map(RationalRoot::value)
            .filter(root -> root.isInteger())
            .<ExactValue>map(RationalValue::new)
            .toList();
    int counted = roots.stream().mapToInt(RationalRoot::multiplicity).sum();
    return whole.isEmpty() || counted != polynomial.degree()
        ? List.of()
        : List.of(new Answer.Solutions(whole));
  }
}
