package rootwright.algebra.real;

import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Descartes' rule of signs (La Géométrie, 1637): a bound for the number of positive and of negative
 * roots, counted with multiplicity, that is right up to an even number. It is not a count, unless
 * it is 0 or 1.
 *
 * @param positive changes of sign along the coefficients of P(x), zeros left out
 * @param negative changes of sign along the coefficients of P(−x)
 */
public record SignChanges(int positive, int negative) {

  /**
   * Counts the changes.
   *
   * @throws IllegalArgumentException for the zero polynomial
   */
  public static SignChanges of(Polynomial polynomial) {
    if (polynomial.isZero()) {
      throw new IllegalArgumentException("the zero polynomial has no signs");
    }
    int positive = 0;
    int negative = 0;
    int last = 0;
    int lastMirrored = 0;
    for (int k = 0; k <= polynomial.degree(); k++) {
      int sign = polynomial.numerator(k).signum();
      if (sign != 0) {
        int mirrored = k % 2 == 0 ? sign : -sign;
        positive += last * sign < 0 ? 1 : 0;
        negative += lastMirrored * mirrored < 0 ? 1 : 0;
        last = sign;
        lastMirrored = mirrored;
      }
    }
    return new SignChanges(positive, negative);
  }

  /** The numbers of positive roots the rule leaves open, descending. */
  public List<Integer> possiblePositive() {
    return possible(positive);
  }

  /** The numbers of negative roots the rule leaves open, descending. */
  public List<Integer> possibleNegative() {
    return possible(negative);
  }

  private static List<Integer> possible(int changes) {
    return IntStream.rangeClosed(0, changes / 2).mapToObj(k -> changes - 2 * k).toList();
  }
}
