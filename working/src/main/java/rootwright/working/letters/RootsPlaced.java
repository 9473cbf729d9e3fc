package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.value.ExactValue;
import rootwright.working.step.RootPlace;

/**
 * How many of the distinct roots lie in a place.
 *
 * @param place where
 * @param amount how the number is meant
 * @param number how many; of no weight where all must lie there
 */
record RootsPlaced(RootPlace place, Amount amount, int number) {

  /** How a number of roots is meant. */
  enum Amount {
    ALL,
    EXACTLY,
    AT_LEAST,
    AT_MOST
  }

  /** All roots lie there. */
  static RootsPlaced all(RootPlace place) {
    return new RootsPlaced(place, Amount.ALL, 0);
  }

  /** Whether it is so for these distinct roots. */
  boolean holdsFor(List<ExactValue> roots) {
    long there = count(roots);
    return switch (amount) {
      case ALL -> there == roots.size();
      case EXACTLY -> there == number;
      case AT_LEAST -> there >= number;
      case AT_MOST -> there <= number;
    };
  }

  /** How many of these distinct roots lie there. */
  long count(List<ExactValue> roots) {
    return roots.stream().filter(place::contains).count();
  }

  /** As a clause: “both roots are positive”, “exactly one root is less than 2”. */
  String words(int degree) {
    if (amount == Amount.ALL) {
      return "%s are %s".formatted(degree == 2 ? "both roots" : "all roots", place.quality());
    } else if (number == 0) {
      return "no root is " + place.quality();
    }
    String how =
        switch (amount) {
          case AT_LEAST -> "at least ";
          case AT_MOST -> "at most ";
          default -> "exactly ";
        };
    return how
        + (number == 1 ? "one root is " : "%d distinct roots are ".formatted(number))
        + place.quality();
  }
}
