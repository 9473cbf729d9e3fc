package rootwright.press.deliverable;

import java.util.List;
import java.util.Optional;

/** The documents we make of a paper. A new one is registered here and nowhere else. */
public final class Deliverables {

  /** In the order in which they are offered. */
  public static final List<Deliverable> ALL =
      List.of(
          new Worksheet(),
          new AnswerKey(),
          new ScoredSheet(),
          new StudentSolutions(),
          new ColleagueSolutions(),
          new HintSheet(),
          new MarkingScheme(),
          new Handout(),
          new ComparisonSheet());

  private Deliverables() {}

  /** The one of this name, empty if there is none. */
  public static Optional<Deliverable> named(String name) {
    return ALL.stream().filter(one -> one.name().equals(name)).findFirst();
  }
}
