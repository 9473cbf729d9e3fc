package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.solve.Solution;

/**
 * What a working stands on: the unknowns, the equations that the statement sets for them, and what
 * the answer leaves of their solutions where the statement asks for real numbers or integers.
 *
 * @param solution the problem, worked by us
 * @param names the unknowns
 * @param polynomials those that lines may apply and whose roots are meant
 * @param unknown the letter of the polynomials
 * @param find what is asked for, as lines would write it
 * @param given the equations of the statement
 * @param answered polynomials that are zero at the answer and not at what the statement excludes
 * @param words what is said of the numbers in words
 */
record Ground(
    Solution solution,
    Names names,
    List<Applied> polynomials,
    String unknown,
    Formula find,
    List<Known> given,
    List<MultivariatePolynomial> answered,
    Set<String> words) {

  Ground {
    polynomials = List.copyOf(polynomials);
    given = List.copyOf(given);
    answered = List.copyOf(answered);
    words = Set.copyOf(words);
  }

  /** How formulas are written in the unknowns. */
  Writing writing() {
    return new Writing(names, polynomials);
  }

  /** The equations of the statement and of the root signs. */
  List<MultivariatePolynomial> equations() {
    List<MultivariatePolynomial> all = new ArrayList<>();
    given.forEach(known -> all.add(known.zero()));
    all.addAll(names.signs());
    return all;
  }

  /** Whether the statement says this of the numbers, in any of its words. */
  boolean says(String part) {
    return words.stream().anyMatch(word -> word.contains(part));
  }
}
