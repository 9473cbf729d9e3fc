package rootwright.working.review.given;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.Refusal;

/** One thing that a line says. */
sealed interface Said {

  /**
   * A chain of equalities, inequalities or congruences.
   *
   * @param continued whether the first side was taken over from the line above
   */
  record Chain(Formula.Relation relation, boolean continued) implements Said {}

  /** That one of several equations holds. */
  record OneOf(List<Formula.Relation> alternatives) implements Said {
    public OneOf {
      alternatives = List.copyOf(alternatives);
    }
  }

  /** That a case is looked at; what stands behind it on the line is said for this case. */
  record Case(Formula.Relation supposed) implements Said {}

  /** That this case is thrown out. */
  record ThrownOut(Formula.Relation supposed) implements Said {}

  /** That all roots are called something: a − d, a, a + d. */
  record RootsCalled(List<Formula> roots) implements Said {
    public RootsCalled {
      roots = List.copyOf(roots);
    }
  }

  /** Formulas alone, such as an answer at the end. */
  record Alone(List<Formula> values) implements Said {
    public Alone {
      values = List.copyOf(values);
    }
  }

  /** That nothing satisfies what is asked for. */
  record Nothing() implements Said {}

  /** Words. */
  record Remark() implements Said {}

  /** What looks like a formula and cannot be read; empty where another form is expected. */
  record Unread(Optional<Refusal> refusal) implements Said {}
}
