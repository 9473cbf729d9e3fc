package rootwright.lesson.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.working.check.Verdict;
import rootwright.working.step.Idea;

/** Knows what the formulas of one step mean, and whether they hold. */
interface LineJudge {

  /** The line of ours that reads so, if there is one; it was confirmed when it was made. */
  Optional<Known> known(String written);

  /**
   * A line of ours.
   *
   * @param formula as it is shown
   * @param idea the thought behind it, if it has one
   * @param argument whether no computation confirms it
   */
  record Known(Formula formula, Optional<Idea> idea, boolean argument) {}

  /** The letters that mean something here. */
  Set<String> letters();

  /** The names of the roots, for a message. */
  List<String> roots();

  /** Whether all sides are equal. */
  Verdict equal(Formula.Relation equation);
}
