package rootwright.working.route;

import java.util.List;
import java.util.stream.IntStream;
import rootwright.working.problem.Problem;

/** Names for what a working introduces, different from those that a problem uses already. */
final class FreshNames {

  private static final List<String> LETTERS = List.of("y", "z", "w", "q", "m", "k", "d");

  private FreshNames() {}

  /** A letter with which neither the unknown nor a root begins. */
  static String letter(Problem problem) {
    return LETTERS.stream()
        .filter(letter -> !letter.equals(problem.unknown()))
        .filter(letter -> problem.roots().stream().noneMatch(root -> root.startsWith(letter)))
        .findFirst()
        .orElseThrow();
  }

  /** The letter with the indices 1 to n. */
  static List<String> indexed(String letter, int n) {
    return IntStream.rangeClosed(1, n).mapToObj(k -> letter + "_" + k).toList();
  }
}
