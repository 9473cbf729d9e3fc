package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.real.SturmSequence;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/** Only the real roots are added up. Tong, Uyen, Thi and Lai 2017 report the confusion. */
final class RealRootsOnly implements Slip {

  @Override
  public String name() {
    return "real-roots-only";
  }

  @Override
  public String text() {
    return "Roots that are not real count as well, unless the statement says otherwise.";
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
  public List<Rational> on(Asked asked) {
    return asked
        .sumOverRoots()
        .filter(RootFunction::isPolynomial)
        .map(f -> overRational(asked, f))
        .orElse(List.of());
  }

  /** Where the real roots are exactly the rational ones, so that a student can find them. */
  private static List<Rational> overRational(Asked asked, RootFunction f) {
    List<RationalRoot> roots = RationalRoots.of(asked.problem().polynomial());
    int real = SturmSequence.of(asked.problem().polynomial()).count();
    int counted = roots.stream().mapToInt(RationalRoot::multiplicity).sum();
    if (roots.isEmpty() || roots.size() != real || counted == asked.problem().degree()) {
      return List.of();
    }
    Rational sum = Rational.ZERO;
    for (RationalRoot root : roots) {
      sum = sum.plus(f.numerator().at(root.value()).times(root.multiplicity()));
    }
    return List.of(sum);
  }
}
