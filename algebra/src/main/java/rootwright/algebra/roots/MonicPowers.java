package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.stop.Stop;

/**
 * Powers of the unknown modulo the monic integer polynomial whose roots are a·r, where r runs over
 * the roots of a polynomial and a is the lead of its primitive form: no fraction ever appears.
 */
final class MonicPowers {

  private static final long SURE_TO_GROW = 1 << 12;

  private final BigInteger lead;

  /** Q = y^n + tail[n−1]·y^(n−1) + … + tail[0]. */
  private final BigInteger[] tail;

  private final Optional<WordPowers> words;

  MonicPowers(Polynomial polynomial) {
    Polynomial primitive = polynomial.primitive();
    int degree = primitive.degree();
    lead = primitive.numerator(degree);
    tail = new BigInteger[degree];
    BigInteger scale = BigInteger.ONE;
    for (int k = degree - 1; k >= 0; k--) {
      tail[k] = primitive.numerator(k).multiply(scale);
      scale = scale.multiply(lead);
    }
    words = WordPowers.modulo(tail);
  }

  int degree() {
    return tail.length;
  }

  /** The factor a by which the roots are scaled; positive. */
  BigInteger scale() {
    return lead;
  }

  /** The power sums of the a·r for exponents 0 … last, by Newton's identities: O(n·last). */
  BigInteger[] upTo(int last) {
    int degree = degree();
    BigInteger[] all = new BigInteger[last + 1];
    all[0] = BigInteger.valueOf(degree);
    for (int k = 1; k <= last; k++) {
      BigInteger sum =
          k <= degree ? tail[degree - k].multiply(BigInteger.valueOf(k)) : BigInteger.ZERO;
      for (int i = 1; i <= Math.min(k - 1, degree); i++) {
        if (tail[degree - i].signum() != 0) {
          sum = sum.add(tail[degree - i].multiply(all[k - i]));
        }
      }
      all[k] = sum.negate();
    }
    return all;
  }

  /**
   * The power sum of the a·r with a non-negative exponent, or nothing if a number on the way is
   * longer than the limit. O(log k) products modulo Q; the last doubling, which costs most, is
   * replaced by the trace of a product, and up to degree three the trailing zero bits of the
   * exponent cost a few squares of numbers each.
   */
  Optional<BigInteger> sum(BigInteger exponent, long limit) {
    int degree = degree();
    if (exponent.compareTo(BigInteger.valueOf(2L * degree)) < 0) {
      return Optional.of(upTo(exponent.intValueExact())[exponent.intValueExact()]);
    }
    BigInteger[] sums = upTo(2 * degree - 1);
    int doublings = degree == 2 || degree == 3 ? exponent.getLowestSetBit() : 0;
    if (doublings > 0) {
      BigInteger odd = exponent.shiftRight(doublings);
      return power(odd, limit).flatMap(vector -> doubled(vector, odd, sums, doublings, limit));
    }
    return power(exponent.shiftRight(1), limit)
        .map(vector -> traceOfSquare(vector, exponent.testBit(0) ? 1 : 0, sums));
  }

  /**
   * With S, T and N the first three elementary polynomials of the k-th powers of three roots: those
   * of the 2k-th powers are S² − 2T, T² − 2NS and N². Two roots are three, one of them zero.
   */
  private Optional<BigInteger> doubled(
      BigInteger[] f, BigInteger exponent, BigInteger[] sums, int doublings, long limit) {
    BigInteger s = BigInteger.ZERO;
    for (int k = 0; k < f.length; k++) {
      s = s.add(f[k].multiply(sums[k]));
    }
    BigInteger t = s.multiply(s).subtract(traceOfSquare(f, 0, sums)).shiftRight(1);
    // The product of the roots is ±tail[0]; the power of a short number is as long as it says.
    BigInteger root = degree() == 3 ? tail[0].negate() : BigInteger.ZERO;
    if (exponent.shiftLeft(doublings).bitLength() > 31 && !isUnitOrZero(root)) {
      return Optional.empty();
    }
    BigInteger n = power(root, exponent);
    for (int left = doublings; left > 0; left--) {
      BigInteger next = s.multiply(s).subtract(t.shiftLeft(1));
      if (left > 1) {
        t = t.multiply(t).subtract(n.multiply(s).shiftLeft(1));
        n = n.multiply(n);
        long length = Math.max(t.bitLength(), n.bitLength());
        if (Math.max(length, 2L * next.bitLength()) > 2 * limit) {
          return Optional.empty();
        }
      }
      s = next;
    }
    return s.bitLength() > limit ? Optional.empty() : Optional.of(s);
  }

  private static BigInteger power(BigInteger root, BigInteger exponent) {
    if (isUnitOrZero(root)) {
      return exponent.testBit(0) ? root : root.abs();
    }
    return root.pow(exponent.intValueExact());
  }

  private static boolean isUnitOrZero(BigInteger number) {
    return number.abs().bitLength() <= 1;
  }

  /** The trace of f²·y^shift. */
  private static BigInteger traceOfSquare(BigInteger[] f, int shift, BigInteger[] sums) {
    BigInteger trace = BigInteger.ZERO;
    for (int i = 0; i < f.length; i++) {
      BigInteger weight = BigInteger.ZERO;
      for (int j = 0; j < f.length; j++) {
        weight = weight.add(f[j].multiply(sums[i + j + shift]));
      }
      trace = trace.add(f[i].multiply(weight));
    }
    return trace;
  }

  /** The remainder of y^exponent modulo Q, constant term first. */
  private Optional<BigInteger[]> power(BigInteger exponent, long limit) {
    // The highest bits of the exponent that stay under the degree need no reduction at all.
    int unread = Math.max(0, exponent.bitLength() - 31);
    while (exponent.shiftRight(unread).intValueExact() >= degree()) {
      unread++;
    }
    long[] first = new long[degree()];
    first[exponent.shiftRight(unread).intValueExact()] = 1;
    int bit = unread - 1;
    if (words.isPresent()) {
      Optional<long[]> next = Optional.of(first);
      for (; bit >= 0 && next.isPresent(); bit--) {
        first = next.get();
        next = words.get().squared(first, exponent.testBit(bit));
      }
      if (next.isPresent()) {
        first = next.get();
      } else {
        // The squaring that did not fit has still to be done.
        bit++;
      }
    }
    BigInteger[] value =
        Arrays.stream(first).mapToObj(BigInteger::valueOf).toArray(BigInteger[]::new);
    for (; bit >= 0; bit--) {
      Stop.ifUnwanted();
      value = square(value);
      if (exponent.testBit(bit)) {
        value = timesUnknown(value);
      }
      // Once long, the numbers double in length with every bit: see early what is coming.
      long length = longest(value);
      if (2 * length > limit || (length > SURE_TO_GROW && (length << Math.min(bit, 32)) > limit)) {
        return Optional.empty();
      }
    }
    return Optional.of(value);
  }

  private static int longest(BigInteger[] value) {
    int longest = 0;
    for (BigInteger coefficient : value) {
      longest = Math.max(longest, coefficient.bitLength());
    }
    return longest;
  }

  private BigInteger[] timesUnknown(BigInteger[] value) {
    int degree = degree();
    BigInteger[] shifted = new BigInteger[degree];
    BigInteger top = value[degree - 1];
    for (int k = 0; k < degree; k++) {
      BigInteger below = k == 0 ? BigInteger.ZERO : value[k - 1];
      shifted[k] = tail[k].signum() == 0 ? below : below.subtract(top.multiply(tail[k]));
    }
    return shifted;
  }

  private BigInteger[] square(BigInteger[] value) {
    int degree = degree();
    BigInteger[] product = new BigInteger[2 * degree - 1];
    Arrays.fill(product, BigInteger.ZERO);
    for (int i = 0; i < degree; i++) {
      if (value[i].signum() != 0) {
        product[2 * i] = product[2 * i].add(value[i].multiply(value[i]));
        for (int j = i + 1; j < degree; j++) {
          product[i + j] = product[i + j].add(value[i].multiply(value[j]).shiftLeft(1));
        }
      }
    }
    for (int k = product.length - 1; k >= degree; k--) {
      if (product[k].signum() != 0) {
        for (int j = 0; j < degree; j++) {
          if (tail[j].signum() != 0) {
            product[k - degree + j] =
                product[k - degree + j].subtract(product[k].multiply(tail[j]));
          }
        }
      }
    }
    return Arrays.copyOf(product, degree);
  }
}
