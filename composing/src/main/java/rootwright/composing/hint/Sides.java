package rootwright.composing.hint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;

/** The sides of a line: those in letters, and whether numbers have been put in. */
final class Sides {

  private Sides() {}

  /** The line up to its last side in letters, if at least two sides of it are in letters. */
  static Optional<Formula> open(Formula line) {
    if (!(line instanceof Formula.Relation relation)) {
      return Optional.empty();
    }
    List<Formula> sides = new ArrayList<>();
    for (Formula side : relation.sides()) {
      if (isClosed(side)) {
        break;
      }
      sides.add(side);
    }
    return sides.size() < 2
        ? Optional.empty()
        : Optional.of(
            new Formula.Relation(sides, relation.comparisons().subList(0, sides.size() - 1)));
  }

  /** Whether numbers have been put in: a side of it is a number, or nothing of it is in letters. */
  static boolean hasNumbers(Formula line) {
    return line instanceof Formula.Relation relation
        ? relation.sides().stream().anyMatch(Sides::isClosed)
        : isClosed(line);
  }

  private static boolean isClosed(Formula formula) {
    return ClosedValue.of(formula).isPresent();
  }
}
