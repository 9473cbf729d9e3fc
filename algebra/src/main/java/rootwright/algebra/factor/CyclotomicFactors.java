package rootwright.algebra.factor;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The cyclotomic polynomials Φ_m that divide a polynomial: those whose roots are the primitive m-th
 * roots of unity. They are irreducible (Gauss; Dedekind for every m), so what is found here needs
 * no further splitting.
 */
public final class CyclotomicFactors {

  private static final int HIGHEST_DEGREE = 120;

  private static final List<Order> ORDERS = orders();

  private CyclotomicFactors() {}

  /**
   * The cyclotomic polynomial Φ_m: x^m − 1 without the Φ_d of the proper divisors d of m.
   *
   * @throws IllegalArgumentException if {@code m} is not positive
   */
  public static Polynomial cyclotomic(int m) {
    if (m < 1) {
      throw new IllegalArgumentException("no cyclotomic polynomial number " + m);
    }
    // For p prime to k: Φ_(kp)(x) = Φ_k(x^p)/Φ_k(x); for p dividing k: Φ_(kp)(x) = Φ_k(x^p).
    Polynomial polynomial = Polynomial.ofDescending(1, -1);
    int rest = m;
    for (int p = 2; rest > 1; p++) {
      for (boolean first = true; rest % p == 0; first = false) {
        Polynomial spread = polynomial.compose(Polynomial.monomial(Rational.ONE, p));
        polynomial = first ? spread.divide(polynomial).quotient() : spread;
        rest /= p;
      }
    }
    return polynomial;
  }

  /** Those of degree up to {@value #HIGHEST_DEGREE} that divide a squarefree polynomial. */
  static List<Polynomial> of(Polynomial polynomial) {
    List<Polynomial> found = new ArrayList<>();
    Polynomial rest = polynomial;
    BigInteger value = atTwo(rest);
    for (Order order : ORDERS) {
      // A multiple of Φ_m(x) has at 2 a multiple of Φ_m(2).
      if (order.degree() <= rest.degree() && value.mod(order.atTwo()).signum() == 0) {
        Polynomial candidate = cyclotomic(order.m());
        Polynomial.Division division = rest.divide(candidate);
        if (division.remainder().isZero()) {
          found.add(candidate);
          rest = division.quotient().primitive();
          value = atTwo(rest);
        }
      }
    }
    return found;
  }

  /** An order m with the degree φ(m) of Φ_m and its value at 2. */
  private record Order(int m, int degree, BigInteger atTwo) {}

  private static List<Order> orders() {
    List<Order> orders = new ArrayList<>();
    // φ(m) ≥ √(m/2), so no larger m has a Φ_m of this degree.
    for (int m = 1; m <= 2 * HIGHEST_DEGREE * HIGHEST_DEGREE; m++) {
      int degree = totient(m);
      if (degree <= HIGHEST_DEGREE) {
        orders.add(new Order(m, degree, valueAtTwo(m)));
      }
    }
    return List.copyOf(orders);
  }

  private static BigInteger atTwo(Polynomial polynomial) {
    BigInteger value = BigInteger.ZERO;
    for (int k = polynomial.degree(); k >= 0; k--) {
      value = value.shiftLeft(1).add(polynomial.numerator(k));
    }
    return value;
  }

  /** Φ_m(2) = ∏ (2^d − 1)^μ(m/d) over the divisors d of m. */
  private static BigInteger valueAtTwo(int m) {
    BigInteger over = BigInteger.ONE;
    BigInteger under = BigInteger.ONE;
    for (int d = 1; d <= m; d++) {
      if (m % d == 0) {
        BigInteger factor = BigInteger.ONE.shiftLeft(d).subtract(BigInteger.ONE);
        switch (moebius(m / d)) {
          case 1 -> over = over.multiply(factor);
          case -1 -> under = under.multiply(factor);
          default -> {}
        }
      }
    }
    return over.divide(under);
  }

  /** μ(n): 0 if a square divides n, else −1 to the number of its prime factors. */
  private static int moebius(int n) {
    int rest = n;
    int sign = 1;
    for (int p = 2; p * p <= rest; p++) {
      if (rest % p == 0) {
        rest /= p;
        sign = -sign;
        if (rest % p == 0) {
          return 0;
        }
      }
    }
    return rest > 1 ? -sign : sign;
  }

  /** φ(n): how many of 1 … n are prime to n. */
  private static int totient(int n) {
    int rest = n;
    int totient = n;
    for (int p = 2; p * p <= rest; p++) {
      if (rest % p == 0) {
        totient -= totient / p;
        while (rest % p == 0) {
          rest /= p;
        }
      }
    }
    return rest > 1 ? totient - totient / rest : totient;
  }
}
