package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.modular.SmallModulus;
import rootwright.algebra.modular.WordModulus;
import rootwright.algebra.polynomial.Polynomial;

/**
 * One coefficient of the series Σ S_k x^k = N/D modulo m, where D is the reversed polynomial made
 * monic: halve the exponent by N·D(−x) and D·D(−x) until it is zero (Bostan and Mori, A simple and
 * fast algorithm for computing the N-th term of a linearly recurrent sequence, SOSA 2021).
 */
final class ModularPowerSum {

  private ModularPowerSum() {}

  /** S_k modulo m; the exponent is not negative and the lead is invertible modulo m. */
  static BigInteger of(Polynomial primitive, BigInteger exponent, BigInteger modulus) {
    BigInteger lead = primitive.numerator(primitive.degree());
    BigInteger inverse = lead.equals(BigInteger.ONE) ? BigInteger.ONE : lead.modInverse(modulus);
    if (modulus.bitLength() <= SmallModulus.BITS) {
      return modulus.equals(BigInteger.ONE)
          ? BigInteger.ZERO
          : word(primitive, inverse, exponent, SmallModulus.of(modulus.longValueExact()));
    }
    return modulus.bitLength() <= OddModulus.BITS && modulus.testBit(0)
        ? word(primitive, inverse, exponent, OddModulus.of(modulus.longValueExact()))
        : wide(primitive, inverse, exponent, modulus);
  }

  private static BigInteger word(
      Polynomial primitive, BigInteger inverse, BigInteger exponent, WordModulus modulus) {
    int degree = primitive.degree();
    long[] n = new long[degree];
    long[] d = new long[degree + 1];
    long[] mirrored = new long[degree + 1];
    long factor = modulus.represent(inverse);
    for (int k = 0; k <= degree; k++) {
      d[k] = modulus.times(factor, modulus.represent(primitive.numerator(degree - k)));
      if (k < degree) {
        n[k] = modulus.times(d[k], modulus.represent(BigInteger.valueOf(degree - (long) k)));
      }
    }
    long[] nextN = new long[degree];
    long[] nextD = new long[degree + 1];
    for (int bit = 0; bit < exponent.bitLength(); bit++) {
      for (int k = 0; k <= degree; k++) {
        mirrored[k] = k % 2 == 0 ? d[k] : modulus.negate(d[k]);
      }
      half(n, mirrored, exponent.testBit(bit) ? 1 : 0, nextN, modulus);
      half(d, mirrored, 0, nextD, modulus);
      long[] spareN = n;
      long[] spareD = d;
      n = nextN;
      d = nextD;
      nextN = spareN;
      nextD = spareD;
    }
    return BigInteger.valueOf(modulus.residue(n[0]));
  }

  /** The coefficients of a·b at the exponents 2k + parity. */
  private static void half(long[] a, long[] b, int parity, long[] result, WordModulus modulus) {
    for (int k = 0; k < result.length; k++) {
      int place = 2 * k + parity;
      int from = Math.max(0, place - b.length + 1);
      int stop = Math.min(a.length - 1, place);
      result[k] = stop < from ? 0 : modulus.convolution(a, from, b, place - from, stop - from + 1);
    }
  }

  private static BigInteger wide(
      Polynomial primitive, BigInteger inverse, BigInteger exponent, BigInteger modulus) {
    int degree = primitive.degree();
    BigInteger[] under = new BigInteger[degree + 1];
    BigInteger[] over = new BigInteger[degree];
    for (int k = 0; k <= degree; k++) {
      under[k] = primitive.numerator(degree - k).multiply(inverse).mod(modulus);
      if (k < degree) {
        over[k] = under[k].multiply(BigInteger.valueOf((long) degree - k)).mod(modulus);
      }
    }
    BigInteger[] n = over;
    BigInteger[] d = under;
    for (int bit = 0; bit < exponent.bitLength(); bit++) {
      n = half(n, d, exponent.testBit(bit) ? 1 : 0, over.length, modulus);
      d = half(d, d, 0, under.length, modulus);
    }
    return n[0].mod(modulus);
  }

  /** The coefficients of a(x)·d(−x) at the exponents 2k + parity. */
  private static BigInteger[] half(
      BigInteger[] a, BigInteger[] d, int parity, int length, BigInteger modulus) {
    BigInteger[] result = new BigInteger[length];
    Arrays.fill(result, BigInteger.ZERO);
    for (int k = 0; k < length; k++) {
      int place = 2 * k + parity;
      for (int i = Math.max(0, place - d.length + 1); i < Math.min(a.length, place + 1); i++) {
        BigInteger term = a[i].multiply(d[place - i]);
        result[k] = (place - i) % 2 == 0 ? result[k].add(term) : result[k].subtract(term);
      }
      result[k] = result[k].mod(modulus);
    }
    return result;
  }
}
