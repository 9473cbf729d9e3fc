package rootwright.working.proof;

import java.util.Optional;

/**
 * One line of a proof: words, and where it is a computation the identity that is checked.
 *
 * @param words what is said; formulas stand between backquotes, places as in {@link Letters#fill}
 * @param claim what is computed; empty for an argument, which no computation confirms
 */
public record ProofLine(String words, Optional<General> claim) {

  /** A line that is computed. */
  public static ProofLine computed(String words, General claim) {
    return new ProofLine(words, Optional.of(claim));
  }

  /** A line of argument. */
  public static ProofLine argued(String words) {
    return new ProofLine(words, Optional.empty());
  }
}
