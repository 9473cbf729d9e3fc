package rootwright.algebra.notation;

import java.util.Set;

/** The letters that name a family of symmetric polynomials when an index stands below them. */
final class Families {

  private static final Set<String> LETTERS = Set.of("S", "p", "e", "h");

  private Families() {}

  static boolean isReserved(String letter) {
    return LETTERS.contains(letter);
  }
}
