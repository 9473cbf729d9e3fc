package rootwright.working.inequality;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.NumberDomain;

/**
 * “Prove a ≥ b” for real or positive numbers, perhaps with one equation given.
 *
 * @param letters the letters, numbered in this order
 * @param claim as it was written
 * @param difference the greater side minus the other, all letters in it
 * @param strict whether equality is excluded
 * @param domain real or positive, if it is said
 * @param condition an equation that is linear in its last letter, solved for it: the letter and
 *     what it is equal to
 * @param given the condition as it was written
 * @param apart what is said not to be 0, as a difference
 */
record Inequality(
    List<String> letters,
    Formula.Relation claim,
    Formula difference,
    boolean strict,
    Optional<NumberDomain> domain,
    Optional<Map.Entry<String, RationalFunction>> condition,
    Optional<Formula> given,
    Optional<Formula> apart) {

  Inequality {
    letters = List.copyOf(letters);
  }

  /** Whether all numbers are said to be positive. */
  boolean positive() {
    return domain.filter(one -> one == NumberDomain.POSITIVE).isPresent();
  }
}
