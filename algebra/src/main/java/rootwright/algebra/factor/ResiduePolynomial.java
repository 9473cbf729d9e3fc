package rootwright.algebra.factor;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A polynomial over the residues of a prime below 2^31, constant term first. What holds modulo a
 * prime that does not divide the lead often settles the question over the rational numbers in one
 * direction: squarefree, irreducible or without a root there means so here; never the converse.
 */
final class ResiduePolynomial {

  /** A prime near 2^31: a chance coincidence modulo it is rare. */
  private static final long LARGE_PRIME = 2147483629L;

  private final long[] ascending;
  private final long prime;

  private ResiduePolynomial(long[] coefficients, long prime) {
    int length = coefficients.length;
    while (length > 0 && coefficients[length - 1] == 0) {
      length--;
    }
    ascending = Arrays.copyOf(coefficients, length);
    this.prime = prime;
  }

  /** The residues of the coefficients of the primitive multiple. */
  static ResiduePolynomial of(Polynomial primitive, long prime) {
    long[] residues = new long[primitive.degree() + 1];
    BigInteger modulus = BigInteger.valueOf(prime);
    Arrays.setAll(residues, k -> primitive.numerator(k).mod(modulus).longValue());
    return new ResiduePolynomial(residues, prime);
  }

  /** Whether one large prime shows that no factor is repeated; false leaves it open. */
  static boolean provesSquarefree(Polynomial polynomial) {
    Polynomial primitive = polynomial.primitive();
    ResiduePolynomial residues = of(primitive, LARGE_PRIME);
    return residues.degree() == primitive.degree() && residues.isSquarefree();
  }

  int degree() {
    return ascending.length - 1;
  }

  long prime() {
    return prime;
  }

  boolean isSquarefree() {
    return gcd(derivative()).degree() == 0;
  }

  ResiduePolynomial derivative() {
    long[] derived = new long[Math.max(0, degree())];
    for (int k = 0; k < derived.length; k++) {
      derived[k] = ascending[k + 1] * (k + 1) % prime;
    }
    return new ResiduePolynomial(derived, prime);
  }

  /** A greatest common divisor, not made monic. */
  ResiduePolynomial gcd(ResiduePolynomial other) {
    ResiduePolynomial a = this;
    ResiduePolynomial b = other;
    while (b.degree() >= 0) {
      ResiduePolynomial next = a.remainder(b);
      a = b;
      b = next;
    }
    return a;
  }

  ResiduePolynomial remainder(ResiduePolynomial divisor) {
    long[] rest = ascending.clone();
    int low = divisor.degree();
    long inverse = inverse(divisor.ascending[low]);
    for (int k = degree(); k >= low; k--) {
      long factor = rest[k] * inverse % prime;
      if (factor != 0) {
        for (int j = 0; j <= low; j++) {
          rest[k - low + j] =
              Math.floorMod(rest[k - low + j] - factor * divisor.ascending[j] % prime, prime);
        }
      }
    }
    return new ResiduePolynomial(rest, prime);
  }

  ResiduePolynomial minus(ResiduePolynomial other) {
    long[] difference =
        Arrays.copyOf(ascending, Math.max(ascending.length, other.ascending.length));
    for (int k = 0; k < other.ascending.length; k++) {
      difference[k] = Math.floorMod(difference[k] - other.ascending[k], prime);
    }
    return new ResiduePolynomial(difference, prime);
  }

  ResiduePolynomial times(ResiduePolynomial other) {
    if (degree() < 0 || other.degree() < 0) {
      return new ResiduePolynomial(new long[0], prime);
    }
    long[] product = new long[degree() + other.degree() + 1];
    for (int k = 0; k < ascending.length; k++) {
      for (int j = 0; j < other.ascending.length; j++) {
        product[k + j] = (product[k + j] + ascending[k] * other.ascending[j]) % prime;
      }
    }
    return new ResiduePolynomial(product, prime);
  }

  /** The quotient by a divisor that leaves no remainder. */
  ResiduePolynomial over(ResiduePolynomial divisor) {
    long[] rest = ascending.clone();
    int low = divisor.degree();
    long[] quotient = new long[degree() - low + 1];
    long inverse = inverse(divisor.ascending[low]);
    for (int k = degree(); k >= low; k--) {
      long factor = rest[k] * inverse % prime;
      quotient[k - low] = factor;
      for (int j = 0; j <= low; j++) {
        rest[k - low + j] =
            Math.floorMod(rest[k - low + j] - factor * divisor.ascending[j] % prime, prime);
      }
    }
    return new ResiduePolynomial(quotient, prime);
  }

  /** The p-th power modulo a polynomial, p being the prime. */
  ResiduePolynomial frobenius(ResiduePolynomial modulus) {
    ResiduePolynomial result = new ResiduePolynomial(new long[] {1}, prime);
    for (int bit = Long.SIZE - 1 - Long.numberOfLeadingZeros(prime); bit >= 0; bit--) {
      result = result.times(result).remainder(modulus);
      if ((prime >> bit & 1) == 1) {
        result = result.times(this).remainder(modulus);
      }
    }
    return result;
  }

  /** The polynomial x. */
  static ResiduePolynomial unknown(long prime) {
    return new ResiduePolynomial(new long[] {0, 1}, prime);
  }

  long at(long point) {
    long value = 0;
    for (int k = degree(); k >= 0; k--) {
      value = (value * point + ascending[k]) % prime;
    }
    return value;
  }

  /** The roots among 0 … prime − 1, by trying all: for small primes. */
  List<Long> roots() {
    List<Long> roots = new ArrayList<>();
    for (long point = 0; point < prime; point++) {
      if (at(point) == 0) {
        roots.add(point);
      }
    }
    return roots;
  }

  private long inverse(long residue) {
    long result = 1;
    long square = residue;
    for (long left = prime - 2; left > 0; left >>= 1) {
      if ((left & 1) == 1) {
        result = result * square % prime;
      }
      square = square * square % prime;
    }
    return result;
  }
}
