package rootwright.composing.scan.filter;

import java.math.BigInteger;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Whether a polynomial has a rational root, for coefficients of any size.
 *
 * <p>With P primitive over Z and y = a_n·x the question is whether the monic Q(y) = a_n^{n−1}·P(y /
 * a_n) has an integer root. A root modulo a small prime that is simple there is the image of at
 * most one integer root, which Newton's iteration lifts modulo p², p⁴, … until the modulus is above
 * twice Cauchy's bound; the lifted number is then tried. (Hensel lifting: Zassenhaus 1969; Loos
 * 1983.)
 */
final class RationalRootSearch {

  private RationalRootSearch() {}

  static boolean hasRoot(Polynomial polynomial) {
    if (polynomial.degree() < 1) {
      return polynomial.isZero();
    }
    if (polynomial.numerator(0).signum() == 0) {
      return true;
    }
    BigInteger[] monic = monicInY(polynomial.squarefreePart().primitive());
    BigInteger bound = BigInteger.ZERO;
    for (BigInteger coefficient : monic) {
      bound = bound.max(coefficient.abs());
    }
    bound = bound.add(BigInteger.ONE).shiftLeft(1);
    int prime = primeWithSimpleRoots(monic);
    BigInteger modulus = BigInteger.valueOf(prime);
    for (int residue = 0; residue < prime; residue++) {
      BigInteger root = BigInteger.valueOf(residue);
      if (at(monic, root).mod(modulus).signum() == 0
          && isRoot(monic, lift(monic, root, modulus, bound))) {
        return true;
      }
    }
    return false;
  }

  /** The coefficients of Q, constant term first: a_k·a_n^{n−1−k}, and 1 in front. */
  private static BigInteger[] monicInY(Polynomial primitive) {
    int degree = primitive.degree();
    BigInteger lead = primitive.numerator(degree);
    BigInteger[] monic = new BigInteger[degree + 1];
    monic[degree] = BigInteger.ONE;
    BigInteger power = BigInteger.ONE;
    for (int k = degree - 1; k >= 0; k--) {
      monic[k] = primitive.numerator(k).multiply(power);
      power = power.multiply(lead);
    }
    return monic;
  }

  /** The least prime modulo which no root is repeated; it exists because Q is squarefree. */
  private static int primeWithSimpleRoots(BigInteger[] monic) {
    BigInteger prime = BigInteger.TWO;
    while (true) {
      boolean simple = true;
      for (int residue = 0; simple && residue < prime.intValueExact(); residue++) {
        BigInteger root = BigInteger.valueOf(residue);
        simple =
            at(monic, root).mod(prime).signum() != 0
                || slopeAt(monic, root).mod(prime).signum() != 0;
      }
      if (simple) {
        return prime.intValueExact();
      }
      prime = prime.nextProbablePrime();
    }
  }

  /** The integer of least size that is congruent to the lifted root. */
  private static BigInteger lift(
      BigInteger[] monic, BigInteger start, BigInteger prime, BigInteger bound) {
    BigInteger root = start;
    BigInteger modulus = prime;
    while (modulus.compareTo(bound) <= 0) {
      modulus = modulus.multiply(modulus);
      BigInteger slope = slopeAt(monic, root).modInverse(modulus);
      root = root.subtract(at(monic, root).multiply(slope)).mod(modulus);
    }
    return root.shiftLeft(1).compareTo(modulus) > 0 ? root.subtract(modulus) : root;
  }

  private static boolean isRoot(BigInteger[] monic, BigInteger number) {
    return at(monic, number).signum() == 0;
  }

  private static BigInteger at(BigInteger[] ascending, BigInteger point) {
    BigInteger value = BigInteger.ZERO;
    for (int k = ascending.length - 1; k >= 0; k--) {
      value = value.multiply(point).add(ascending[k]);
    }
    return value;
  }

  private static BigInteger slopeAt(BigInteger[] ascending, BigInteger point) {
    BigInteger value = BigInteger.ZERO;
    for (int k = ascending.length - 1; k > 0; k--) {
      value = value.multiply(point).add(ascending[k].multiply(BigInteger.valueOf(k)));
    }
    return value;
  }
}
