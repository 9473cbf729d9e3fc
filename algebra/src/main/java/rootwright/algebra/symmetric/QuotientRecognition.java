package rootwright.algebra.symmetric;

/** What became of reading a rational function as a symmetric one. */
public sealed interface QuotientRecognition {

  /** It is symmetric. */
  record Symmetric(SymmetricQuotient quotient) implements QuotientRecognition {}

  /**
   * It is not: exchanging these two variables gives another function.
   *
   * @param first number of one variable, counted from 0
   * @param second number of the other
   */
  record NotSymmetric(int first, int second) implements QuotientRecognition {}

  /**
   * Undecided: multiplying out would take too long.
   *
   * @param why one plain clause for a person, with the size and the limit
   */
  record TooLarge(String why) implements QuotientRecognition {}
}
