package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;

/**
 * A value of the letter that solves the equations.
 *
 * @param value the value
 * @param roots the distinct roots of the polynomial at that value
 * @param objection why it is thrown out; empty for one that is kept
 */
record Candidate(ExactValue value, List<ExactValue> roots, Optional<Objection> objection) {

  Candidate {
    roots = List.copyOf(roots);
  }

  boolean kept() {
    return objection.isEmpty();
  }

  /**
   * Why a value is thrown out.
   *
   * @param sort what it fails
   * @param words the reason as a clause
   */
  record Objection(Sort sort, String words) {
    /** What a value fails. */
    enum Sort {
      LEAD,
      DENOMINATOR,
      LETTER,
      ROOTS
    }
  }
}
