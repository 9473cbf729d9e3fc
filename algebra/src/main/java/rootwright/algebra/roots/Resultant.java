package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The resultant of two polynomials: a^deg Q · ∏ Q(r) over the roots r of P, where a is the lead of
 * P. It is zero exactly when the two share a root.
 *
 * <p>Computed by the subresultant chain, which keeps integers of polynomially bounded size: Cohen,
 * A Course in Computational Algebraic Number Theory (1993), Algorithm 3.3.7 (numbering from
 * memory).
 */
public final class Resultant {

  private Resultant() {}

  /**
   * The resultant; zero if either polynomial is zero, one if both are non-zero constants. O(n·m)
   * products of integers.
   */
  public static Rational of(Polynomial first, Polynomial second) {
    if (first.isZero() || second.isZero()) {
      return Rational.ZERO;
    }
    Polynomial a = first.primitive();
    Polynomial b = second.primitive();
    Rational scale =
        first
            .lead()
            .over(a.lead())
            .power(b.degree())
            .times(second.lead().over(b.lead()).power(a.degree()));
    return scale.times(Rational.of(ofPrimitive(integers(a), integers(b))));
  }

  private static BigInteger[] integers(Polynomial primitive) {
    BigInteger[] ascending = new BigInteger[primitive.degree() + 1];
    for (int k = 0; k < ascending.length; k++) {
      ascending[k] = primitive.numerator(k);
    }
    return ascending;
  }

  private static BigInteger ofPrimitive(BigInteger[] first, BigInteger[] second) {
    BigInteger[] a = first;
    BigInteger[] b = second;
    boolean negative = false;
    if (a.length < b.length) {
      a = second;
      b = first;
      negative = bothOdd(a, b);
    }
    BigInteger g = BigInteger.ONE;
    BigInteger h = BigInteger.ONE;
    while (b.length > 1) {
      int drop = a.length - b.length;
      negative ^= bothOdd(a, b);
      BigInteger[] rest = pseudoRemainder(a, b);
      if (rest.length == 0) {
        return BigInteger.ZERO;
      }
      BigInteger divisor = g.multiply(h.pow(drop));
      for (int k = 0; k < rest.length; k++) {
        rest[k] = rest[k].divide(divisor);
      }
      a = b;
      b = rest;
      g = a[a.length - 1];
      h = next(h, g, drop);
    }
    BigInteger last = next(h, b[0], a.length - 1);
    return negative ? last.negate() : last;
  }

  /** {@code h^(1 − drop)·g^drop}, a whole number in the chain. */
  private static BigInteger next(BigInteger h, BigInteger g, int drop) {
    return drop == 0 ? h : g.pow(drop).divide(h.pow(drop - 1));
  }

  private static boolean bothOdd(BigInteger[] a, BigInteger[] b) {
    return (a.length - 1) % 2 == 1 && (b.length - 1) % 2 == 1;
  }

  /** The remainder of {@code lead(b)^(deg a − deg b + 1)·a} on division by b. */
  private static BigInteger[] pseudoRemainder(BigInteger[] a, BigInteger[] b) {
    BigInteger[] rest = a.clone();
    int degree = b.length - 1;
    BigInteger lead = b[degree];
    for (int top = a.length - 1; top >= degree; top--) {
      BigInteger factor = rest[top];
      for (int k = 0; k < top; k++) {
        rest[k] = rest[k].multiply(lead);
      }
      for (int k = 0; k < degree; k++) {
        rest[top - degree + k] = rest[top - degree + k].subtract(factor.multiply(b[k]));
      }
    }
    int length = degree;
    while (length > 0 && rest[length - 1].signum() == 0) {
      length--;
    }
    return Arrays.copyOf(rest, length);
  }
}
