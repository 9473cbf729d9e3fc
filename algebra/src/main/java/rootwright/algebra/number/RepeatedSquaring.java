package rootwright.algebra.number;

import java.math.BigInteger;
import java.util.function.BinaryOperator;
import rootwright.algebra.stop.Stop;

/** Powers by squaring: as many products as the exponent has digits in base two, twice at most. */
public final class RepeatedSquaring {

  private RepeatedSquaring() {}

  /**
   * The power of an element of anything with an associative product.
   *
   * @param one what the empty product is
   * @throws IllegalArgumentException if the exponent is negative
   */
  public static <T> T power(T base, BigInteger exponent, T one, BinaryOperator<T> times) {
    if (exponent.signum() < 0) {
      throw new IllegalArgumentException("a negative exponent: " + exponent);
    }
    if (exponent.signum() == 0) {
      return one;
    }
    T result = base;
    for (int bit = exponent.bitLength() - 2; bit >= 0; bit--) {
      Stop.ifUnwanted();
      result = times.apply(result, result);
      if (exponent.testBit(bit)) {
        result = times.apply(result, base);
      }
    }
    return result;
  }

  /** The power with an exponent that fits a machine word. */
  public static <T> T power(T base, int exponent, T one, BinaryOperator<T> times) {
    return power(base, BigInteger.valueOf(exponent), one, times);
  }
}
