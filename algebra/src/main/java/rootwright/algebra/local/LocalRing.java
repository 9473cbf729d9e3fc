package rootwright.algebra.local;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * The ring Z/p^e[y]/(g) for a monic g of degree m that is irreducible modulo p: the integers of the
 * unramified extension of degree m of the p-adic numbers, cut off at p^e. An element is an array of
 * m numbers from 0 to p^e − 1, constant term first.
 */
public final class LocalRing {

  private final BigInteger modulus;
  private final BigInteger[] tail;

  /** The ring for g = y^m + Σ tail[k]·y^k. */
  LocalRing(BigInteger modulus, BigInteger[] tail) {
    this.modulus = modulus;
    this.tail = tail;
  }

  /** The number p^e. */
  public BigInteger modulus() {
    return modulus;
  }

  /** The number m of parts of an element. */
  public int degree() {
    return tail.length;
  }

  /** A whole number as an element. */
  public BigInteger[] constant(BigInteger value) {
    BigInteger[] element = new BigInteger[degree()];
    Arrays.fill(element, BigInteger.ZERO);
    element[0] = value.mod(modulus);
    return element;
  }

  /** The sum. */
  public BigInteger[] plus(BigInteger[] a, BigInteger[] b) {
    BigInteger[] sum = new BigInteger[degree()];
    for (int k = 0; k < sum.length; k++) {
      BigInteger part = a[k].add(b[k]);
      sum[k] = part.compareTo(modulus) < 0 ? part : part.subtract(modulus);
    }
    return sum;
  }

  /** The difference. */
  public BigInteger[] minus(BigInteger[] a, BigInteger[] b) {
    BigInteger[] difference = new BigInteger[degree()];
    for (int k = 0; k < difference.length; k++) {
      BigInteger part = a[k].subtract(b[k]);
      difference[k] = part.signum() >= 0 ? part : part.add(modulus);
    }
    return difference;
  }

  /** The product with a whole number. */
  public BigInteger[] times(BigInteger[] a, BigInteger factor) {
    BigInteger[] product = new BigInteger[degree()];
    Arrays.setAll(product, k -> a[k].multiply(factor).mod(modulus));
    return product;
  }

  /** The product: O(m²) products of numbers. */
  public BigInteger[] times(BigInteger[] a, BigInteger[] b) {
    int degree = degree();
    if (degree == 1) {
      return new BigInteger[] {a[0].multiply(b[0]).mod(modulus)};
    }
    BigInteger[] product = new BigInteger[2 * degree - 1];
    Arrays.fill(product, BigInteger.ZERO);
    for (int i = 0; i < degree; i++) {
      if (a[i].signum() != 0) {
        for (int j = 0; j < degree; j++) {
          product[i + j] = product[i + j].add(a[i].multiply(b[j]));
        }
      }
    }
    for (int top = product.length - 1; top >= degree; top--) {
      BigInteger factor = product[top].mod(modulus);
      for (int k = 0; k < degree; k++) {
        product[top - degree + k] = product[top - degree + k].subtract(factor.multiply(tail[k]));
      }
    }
    BigInteger[] reduced = new BigInteger[degree];
    Arrays.setAll(reduced, k -> product[k].mod(modulus));
    return reduced;
  }

  /** The same ring cut off at another power of p. */
  LocalRing cutAt(BigInteger power) {
    return new LocalRing(power, tail);
  }
}
