package rootwright.algebra.modular;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Whole numbers put together from their residues modulo several coprime moduli, by Garner's mixed
 * digits. The numbers between −M/2 and M/2 are told apart, where M is the product of the moduli; it
 * is for the caller to prove that the wanted numbers lie there.
 */
public final class Lifting {

  private final int length;
  private final List<OddModulus> moduli = new ArrayList<>();
  private final List<long[]> digits = new ArrayList<>();

  /** A lifting of that many numbers at once. */
  public Lifting(int length) {
    this.length = length;
  }

  /**
   * Adds the residues modulo one more number.
   *
   * @param values representatives, as the modulus hands them out; as many as there are numbers
   */
  public void add(OddModulus modulus, long[] values) {
    long[] mixed = Arrays.copyOf(values, length);
    for (int k = 0; k < moduli.size(); k++) {
      long inverse = modulus.inverse(modulus.represent(moduli.get(k).modulus()));
      long[] earlier = digits.get(k);
      for (int i = 0; i < length; i++) {
        mixed[i] = modulus.times(modulus.minus(mixed[i], modulus.represent(earlier[i])), inverse);
      }
    }
    for (int i = 0; i < length; i++) {
      mixed[i] = modulus.residue(mixed[i]);
    }
    moduli.add(modulus);
    digits.add(mixed);
  }

  /** The product of the moduli. */
  public BigInteger range() {
    BigInteger product = BigInteger.ONE;
    for (OddModulus modulus : moduli) {
      product = product.multiply(BigInteger.valueOf(modulus.modulus()));
    }
    return product;
  }

  /** The numbers from −M/2 to M/2 with these residues. */
  public BigInteger[] values() {
    BigInteger range = range();
    BigInteger half = range.shiftRight(1);
    BigInteger[] values = new BigInteger[length];
    for (int i = 0; i < length; i++) {
      BigInteger value = BigInteger.ZERO;
      for (int k = moduli.size() - 1; k >= 0; k--) {
        value =
            value
                .multiply(BigInteger.valueOf(moduli.get(k).modulus()))
                .add(BigInteger.valueOf(digits.get(k)[i]));
      }
      values[i] = value.compareTo(half) > 0 ? value.subtract(range) : value;
    }
    return values;
  }
}
