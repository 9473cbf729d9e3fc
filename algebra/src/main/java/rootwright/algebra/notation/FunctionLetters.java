package rootwright.algebra.notation;

import java.util.Set;

/** Letters that are functions, not factors, when a bracket follows: P, Q, f, g. */
final class FunctionLetters {

  private static final Set<String> LETTERS = Set.of("P", "Q", "f", "g");

  private FunctionLetters() {}

  static boolean contains(String letter) {
    return LETTERS.contains(letter);
  }
}
