package rootwright.working.review;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.Refusal;

/** One thing that a line says. */
sealed interface LinePiece {

  /**
   * That formulas are equal.
   *
   * @param continued whether the first side was taken over from the line above
   */
  record Equality(List<Formula> sides, boolean continued) implements LinePiece {
    public Equality {
      sides = List.copyOf(sides);
    }
  }

  /** The given equation once more, or a multiple of it. */
  record Restated(Formula equation) implements LinePiece {}

  /** That a new letter stands for something. */
  record Naming(String letter, Formula meaning) implements LinePiece {}

  /** That a named root has this value. */
  record RootValue(String root, Formula value) implements LinePiece {}

  /**
   * That something is one of these numbers: x = 1 or x = −3/2.
   *
   * @param left what it is; absent for the ask
   */
  record Alternatives(Optional<Formula> left, List<Formula> values) implements LinePiece {
    public Alternatives {
      values = List.copyOf(values);
    }
  }

  /** Numbers, each less than the next. */
  record Ascending(List<Formula> sides) implements LinePiece {
    public Ascending {
      sides = List.copyOf(sides);
    }
  }

  /** A formula alone, such as an answer at the end. */
  record Alone(Formula formula) implements LinePiece {}

  /** Words. */
  record Remark() implements LinePiece {}

  /** What looks like a formula and cannot be read. */
  record Unread(Refusal refusal) implements LinePiece {}
}
