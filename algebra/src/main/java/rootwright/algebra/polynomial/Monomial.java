package rootwright.algebra.polynomial;

import java.util.Arrays;

/**
 * A product of powers of numbered unknowns, x₀^a₀·x₁^a₁·…, ordered lexicographically.
 *
 * <p>Trailing zero exponents are dropped, so a monomial does not know how many unknowns there are.
 */
public final class Monomial implements Comparable<Monomial> {

  public static final Monomial ONE = new Monomial(new int[0]);

  private final int[] exponents;

  private Monomial(int[] trimmed) {
    exponents = trimmed;
  }

  /**
   * The monomial with these exponents.
   *
   * @throws IllegalArgumentException if an exponent is negative
   */
  public static Monomial of(int... exponents) {
    int length = exponents.length;
    while (length > 0 && exponents[length - 1] == 0) {
      length--;
    }
    for (int exponent : exponents) {
      if (exponent < 0) {
        throw new IllegalArgumentException(
            "negative exponent in a monomial: " + Arrays.toString(exponents));
      }
    }
    return length == 0 ? ONE : new Monomial(Arrays.copyOf(exponents, length));
  }

  /** The power of one unknown. */
  public static Monomial power(int unknown, int exponent) {
    int[] exponents = new int[unknown + 1];
    exponents[unknown] = exponent;
    return of(exponents);
  }

  /** The exponent of an unknown; zero beyond {@link #length()}. */
  public int exponent(int unknown) {
    return unknown < exponents.length ? exponents[unknown] : 0;
  }

  /** One more than the number of the last unknown that occurs. */
  public int length() {
    return exponents.length;
  }

  /** The sum of the exponents. */
  public int degree() {
    int degree = 0;
    for (int exponent : exponents) {
      degree += exponent;
    }
    return degree;
  }

  /** The product. */
  public Monomial times(Monomial other) {
    int[] sum = new int[Math.max(length(), other.length())];
    for (int k = 0; k < sum.length; k++) {
      sum[k] = Math.addExact(exponent(k), other.exponent(k));
    }
    return of(sum);
  }

  /** Lexicographic: the first unknown with different exponents decides, the larger being later. */
  @Override
  public int compareTo(Monomial other) {
    int last = Math.max(length(), other.length());
    for (int k = 0; k < last; k++) {
      int order = Integer.compare(exponent(k), other.exponent(k));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Monomial that && Arrays.equals(exponents, that.exponents);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(exponents);
  }

  /** For a programmer's eye: {@code x0^2*x2}. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (int k = 0; k < exponents.length; k++) {
      if (exponents[k] > 0) {
        text.append(text.isEmpty() ? "" : "*").append('x').append(k);
        text.append(exponents[k] == 1 ? "" : "^" + exponents[k]);
      }
    }
    return text.isEmpty() ? "1" : text.toString();
  }
}
