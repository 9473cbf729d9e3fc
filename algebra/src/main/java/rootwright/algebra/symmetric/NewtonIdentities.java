package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * Values of power sums from elementary polynomials and back, one {@link NewtonIdentity} a value.
 */
public final class NewtonIdentities {

  private NewtonIdentities() {}

  /**
   * The power sums p_0 = n, p_1, …, p_last of n numbers.
   *
   * @param elementaries e_0 = 1, e_1, …, e_n of these numbers
   * @throws IllegalArgumentException if the list does not begin with e_0 = 1, has no e_1, or {@code
   *     last} is negative
   */
  public static List<Rational> powerSums(List<Rational> elementaries, int last) {
    if (elementaries.size() < 2 || !elementaries.get(0).isOne()) {
      throw new IllegalArgumentException("not e_0 = 1, e_1, …: " + elementaries);
    }
    if (last < 0) {
      throw new IllegalArgumentException("power sums up to p_" + last);
    }
    int variables = elementaries.size() - 1;
    List<Rational> sums = new ArrayList<>(last + 1);
    sums.add(Rational.of(variables));
    for (int k = 1; k <= last; k++) {
      sums.add(NewtonIdentity.forPowerSum(k, variables).at(elementaries, sums));
    }
    return List.copyOf(sums);
  }

  /**
   * The elementary polynomials e_0 = 1, e_1, …, e_n of n numbers.
   *
   * @param powerSums p_0 = n, p_1, …, p_n of these numbers
   * @throws IllegalArgumentException if the list does not begin with the number of those after it
   */
  public static List<Rational> elementaries(List<Rational> powerSums) {
    if (powerSums.isEmpty() || !powerSums.get(0).equals(Rational.of(powerSums.size() - 1L))) {
      throw new IllegalArgumentException("not p_0 = n, p_1, …, p_n: " + powerSums);
    }
    List<Rational> elementaries = new ArrayList<>(powerSums.size());
    elementaries.add(Rational.ONE);
    for (int k = 1; k < powerSums.size(); k++) {
      elementaries.add(
          NewtonIdentity.forElementary(k).at(elementaries, powerSums).over(Rational.of(k)));
    }
    return List.copyOf(elementaries);
  }
}
