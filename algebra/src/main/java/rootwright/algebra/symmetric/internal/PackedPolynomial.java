package rootwright.algebra.symmetric.internal;

/**
 * A sparse sum of terms with {@code long} coefficients, each non-zero, and packed exponents, no
 * word twice, in no promised order. Read as a polynomial (words are exponents) or as a combination
 * of monomial symmetric functions (words are partitions).
 */
public final class PackedPolynomial {

  private final Packing packing;
  private final long[] keys;
  private final long[] coefficients;

  PackedPolynomial(Packing packing, long[] keys, long[] coefficients) {
    this.packing = packing;
    this.keys = keys;
    this.coefficients = coefficients;
  }

  /** One term. */
  public static PackedPolynomial term(Packing packing, long key, long coefficient) {
    return coefficient == 0
        ? new PackedPolynomial(packing, new long[0], new long[0])
        : new PackedPolynomial(packing, new long[] {key}, new long[] {coefficient});
  }

  /** How the words are to be read. */
  public Packing packing() {
    return packing;
  }

  /** The number of terms. */
  public int size() {
    return keys.length;
  }

  /** The word of a term. */
  public long key(int index) {
    return keys[index];
  }

  /** The coefficient of a term. */
  public long coefficient(int index) {
    return coefficients[index];
  }

  /**
   * The sum.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public PackedPolynomial plus(PackedPolynomial other) {
    Accumulator sum = new Accumulator();
    for (int index = 0; index < keys.length; index++) {
      sum.add(keys[index], coefficients[index]);
    }
    for (int index = 0; index < other.keys.length; index++) {
      sum.add(other.keys[index], other.coefficients[index]);
    }
    return sum.toPolynomial(packing);
  }

  /**
   * The product of polynomials. The caller knows that no exponent outgrows its slot.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public PackedPolynomial times(PackedPolynomial other) {
    Accumulator product = new Accumulator();
    addProduct(product, this, other, 1);
    return product.toPolynomial(packing);
  }

  static void addProduct(
      Accumulator sum, PackedPolynomial left, PackedPolynomial right, long factor) {
    for (int i = 0; i < left.keys.length; i++) {
      long key = left.keys[i];
      long coefficient = Math.multiplyExact(left.coefficients[i], factor);
      for (int j = 0; j < right.keys.length; j++) {
        sum.add(key + right.keys[j], Math.multiplyExact(coefficient, right.coefficients[j]));
      }
    }
  }

  /**
   * Every coefficient divided by an integer.
   *
   * @throws ArithmeticException if a division leaves a remainder
   */
  public PackedPolynomial over(long divisor) {
    long[] quotients = new long[coefficients.length];
    for (int index = 0; index < quotients.length; index++) {
      if (coefficients[index] % divisor != 0) {
        throw new ArithmeticException(coefficients[index] + " is not divisible by " + divisor);
      }
      quotients[index] = coefficients[index] / divisor;
    }
    return new PackedPolynomial(packing, keys, quotients);
  }
}
