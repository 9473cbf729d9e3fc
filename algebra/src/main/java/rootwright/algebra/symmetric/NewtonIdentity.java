package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * One of Newton's identities (Arithmetica universalis, 1707) with its terms, as a working writes
 * it.
 */
public sealed interface NewtonIdentity {

  /** The index of the power sum or elementary polynomial that it yields. */
  int k();

  /** The right side, in the order in which it is written. */
  List<Term> terms();

  /**
   * The product factor·e_elementary·p_powerSum.
   *
   * @param factor ±1, or ±k in the term without a power sum
   * @param elementary index of the elementary polynomial; 0 if none stands there
   * @param powerSum index of the power sum; 0 if none stands there
   */
  record Term(int factor, int elementary, int powerSum) {

    /** The value, from values of e_0, e_1, … and p_0, p_1, …. */
    public Rational at(List<Rational> elementaries, List<Rational> powerSums) {
      Rational value = elementaries.get(elementary).times(factor);
      return powerSum == 0 ? value : value.times(powerSums.get(powerSum));
    }
  }

  /**
   * p_k = e_1·p_(k−1) − e_2·p_(k−2) + …: for k ≤ n down to ±k·e_k, for k > n down to ±e_n·p_(k−n).
   */
  record ForPowerSum(int k, List<Term> terms) implements NewtonIdentity {
    public ForPowerSum {
      terms = List.copyOf(terms);
    }
  }

  /** k·e_k = e_(k−1)·p_1 − e_(k−2)·p_2 + … ± p_k. */
  record ForElementary(int k, List<Term> terms) implements NewtonIdentity {
    public ForElementary {
      terms = List.copyOf(terms);
    }
  }

  /**
   * The identity that yields p_k of n variables from those before it.
   *
   * @throws IllegalArgumentException if k or n is not positive
   */
  static NewtonIdentity forPowerSum(int k, int variables) {
    if (k < 1 || variables < 1) {
      throw new IllegalArgumentException(
          "no identity for p_%d of %d variables".formatted(k, variables));
    }
    List<Term> terms = new ArrayList<>();
    for (int i = 1; i <= Math.min(k, variables); i++) {
      int sign = i % 2 == 1 ? 1 : -1;
      terms.add(i == k ? new Term(sign * k, k, 0) : new Term(sign, i, k - i));
    }
    return new ForPowerSum(k, terms);
  }

  /**
   * The identity that yields e_k from p_1, …, p_k and the e before it, for any number of variables.
   *
   * @throws IllegalArgumentException if k is not positive
   */
  static NewtonIdentity forElementary(int k) {
    if (k < 1) {
      throw new IllegalArgumentException("no identity for e_" + k);
    }
    List<Term> terms = new ArrayList<>();
    for (int i = 1; i <= k; i++) {
      terms.add(new Term(i % 2 == 1 ? 1 : -1, k - i, i));
    }
    return new ForElementary(k, terms);
  }

  /** The value of the right side, from values of e_0, e_1, … and p_0, p_1, …. */
  default Rational at(List<Rational> elementaries, List<Rational> powerSums) {
    return terms().stream()
        .map(term -> term.at(elementaries, powerSums))
        .reduce(Rational.ZERO, Rational::plus);
  }
}
