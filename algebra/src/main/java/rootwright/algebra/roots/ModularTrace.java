package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import rootwright.algebra.modular.Lifting;
import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.modular.WordPrimes;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Σ A(r)/B(r) over the roots of P, modulo 61-bit primes, for A and B of lower degree than P.
 *
 * <p>With whole coefficients, P primitive of degree n with lead a, and d the larger degree of A and
 * B, both R = a^d·∏ B(r) and R·Σ A(r)/B(r) are whole numbers, of size at most ‖B‖^n·‖P‖^d and
 * n·‖A‖·‖B‖^(n−1)·‖P‖^d, with the sums of absolute values for A and B and the Euclidean norm for P
 * (Landau 1905). So as many primes as exceed twice that give the quotient.
 */
final class ModularTrace {

  private final Polynomial primitive;
  private final Polynomial over;
  private final Polynomial under;
  private final int degree;
  private final int reach;

  ModularTrace(Polynomial primitive, Polynomial over, Polynomial under) {
    this.primitive = primitive;
    this.over = over;
    this.under = under;
    degree = primitive.degree();
    reach = Math.max(0, Math.max(over.degree(), under.degree()));
  }

  /** The sum, or nothing if a root makes B zero. */
  Optional<Rational> value() {
    BigInteger shared = landau().pow(reach).multiply(size(under).pow(degree - 1));
    BigInteger bound =
        shared.multiply(size(under).max(size(over).multiply(BigInteger.valueOf(degree))));
    BigInteger range = bound.shiftLeft(1);
    Lifting lifting = new Lifting(2);
    BigInteger vanished = BigInteger.ONE;
    for (int number = 0; lifting.range().compareTo(range) <= 0; number++) {
      OddModulus field = WordPrimes.get(number);
      if (field.represent(primitive.numerator(degree)) != 0) {
        long[] pair = modulo(field);
        if (pair[0] != 0) {
          lifting.add(field, pair);
        } else {
          // A whole number that more primes divide than it has room for is zero.
          vanished = vanished.multiply(BigInteger.valueOf(field.modulus()));
          if (vanished.compareTo(bound) > 0) {
            return Optional.empty();
          }
        }
      }
    }
    BigInteger[] values = lifting.values();
    Rational scale =
        new Rational(under.denominator(), over.denominator())
            .times(new Rational(values[1], values[0]));
    return Optional.of(scale);
  }

  private BigInteger landau() {
    BigInteger squares = BigInteger.ZERO;
    for (int k = 0; k <= degree; k++) {
      squares = squares.add(primitive.numerator(k).pow(2));
    }
    return squares.sqrt().add(BigInteger.ONE);
  }

  private static BigInteger size(Polynomial polynomial) {
    BigInteger size = BigInteger.ONE;
    for (int k = 0; k <= polynomial.degree(); k++) {
      size = size.add(polynomial.numerator(k).abs());
    }
    return size;
  }

  private static long[] reduce(Polynomial polynomial, int length, OddModulus field) {
    long[] reduced = new long[length];
    Arrays.setAll(reduced, k -> field.represent(polynomial.numerator(k)));
    return reduced;
  }

  /** R and R·Σ A(r)/B(r) modulo the prime; the first is zero if a root makes B zero there. */
  private long[] modulo(OddModulus field) {
    long[] modulus = reduce(primitive, degree + 1, field);
    long lead = modulus[degree];
    // Euclid without division: now = factor·B (mod P), and resultant bookkeeping in two factors.
    long[] before = modulus;
    long[] now = reduce(under, Math.max(under.degree() + 1, 1), field);
    int beforeDegree = degree;
    int nowDegree = degreeOf(now, now.length - 1);
    long[] factorBefore = new long[reach + degree + 1];
    long[] factor = new long[reach + degree + 1];
    factor[0] = field.one();
    long up = field.power(lead, reach - Math.max(nowDegree, 0));
    long down = field.one();
    while (nowDegree > 0) {
      long[] rest = before.clone();
      long[] restFactor = factorBefore.clone();
      long top = now[nowDegree];
      int steps = beforeDegree - nowDegree + 1;
      for (int shift = beforeDegree - nowDegree; shift >= 0; shift--) {
        long head = rest[shift + nowDegree];
        for (int k = 0; k < shift + nowDegree; k++) {
          rest[k] = field.times(rest[k], top);
        }
        for (int k = 0; k < nowDegree; k++) {
          rest[shift + k] = field.minus(rest[shift + k], field.times(head, now[k]));
        }
        for (int k = 0; k < restFactor.length; k++) {
          restFactor[k] = field.times(restFactor[k], top);
        }
        for (int k = shift; k < restFactor.length; k++) {
          restFactor[k] = field.minus(restFactor[k], field.times(head, factor[k - shift]));
        }
      }
      int restDegree = degreeOf(rest, nowDegree - 1);
      if (restDegree < 0) {
        return new long[2];
      }
      // Res(F, G) = (−1)^(f·g)·Res(G, F) = (−1)^(f·g)·top^(f − r − steps·g)·Res(G, rest).
      if (beforeDegree % 2 == 1 && nowDegree % 2 == 1) {
        up = field.negate(up);
      }
      int exponent = beforeDegree - restDegree - steps * nowDegree;
      up = exponent > 0 ? field.times(up, field.power(top, exponent)) : up;
      down = exponent < 0 ? field.times(down, field.power(top, -exponent)) : down;
      before = now;
      beforeDegree = nowDegree;
      now = rest;
      nowDegree = restDegree;
      factorBefore = factor;
      factor = restFactor;
    }
    if (nowDegree < 0) {
      return new long[2];
    }
    up = field.times(up, field.power(now[0], beforeDegree));
    long inverse = field.inverse(field.times(down, now[0]));
    long norm = field.times(field.times(up, inverse), now[0]);
    long trace = field.times(field.times(trace(field, factor), down), inverse);
    return new long[] {norm, field.times(norm, trace)};
  }

  private static int degreeOf(long[] polynomial, int from) {
    int degree = from;
    while (degree >= 0 && polynomial[degree] == 0) {
      degree--;
    }
    return degree;
  }

  /** Σ A(r)·f(r), from the power sums: no product is reduced modulo P. */
  private long trace(OddModulus field, long[] factor) {
    int length = degreeOf(factor, factor.length - 1) + 1;
    long[] sums = ModularPowerSums.upTo(Math.max(0, length - 1 + over.degree()), primitive, field);
    long trace = 0;
    for (int j = 0; j <= over.degree(); j++) {
      long inner = 0;
      for (int i = 0; i < length; i++) {
        inner = field.plus(inner, field.times(factor[i], sums[i + j]));
      }
      trace = field.plus(trace, field.times(inner, field.represent(over.numerator(j))));
    }
    return trace;
  }
}
