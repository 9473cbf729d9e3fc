package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Valuation;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * A repeated root is counted once. Seen with quadratics by Vaiyavutjamai and Clements (from
 * memory).
 */
final class DoubleRootOnce implements Slip {

  @Override
  public String name() {
    return "double-root-once";
  }

  @Override
  public String text() {
    return "A double root counts twice: every formula for e₁, e₂, … counts roots as often as they occur.";
  }

  @Override
  public Idea spot() {
    return Idea.READ_COEFFICIENTS;
  }

  @Override
  public int weight() {
    return 10;
  }

  /** The ask over the distinct roots; nothing if it names more roots than there are of them. */
  @Override
  public List<Rational> on(Asked asked) {
    Polynomial distinct = asked.problem().polynomial().squarefreePart();
    return distinct.degree() == asked.problem().degree()
        ? List.of()
        : value(asked, distinct).map(List::of).orElse(List.of());
  }

  private static Optional<Rational> value(Asked asked, Polynomial distinct) {
    Setting setting = Setting.of(distinct, asked.problem().roots().subList(0, distinct.degree()));
    return Valuation.of(asked.formula(), setting) instanceof Valuation.Determined determined
        ? Optional.of(determined.value())
        : Optional.empty();
  }
}
