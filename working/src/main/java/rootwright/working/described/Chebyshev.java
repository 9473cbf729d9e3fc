package rootwright.working.described;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Angle;

/** The polynomials by which multiples of an angle are known (Chebyshev 1854; de Moivre 1722). */
final class Chebyshev {

  private Chebyshev() {}

  /** T_n with cos nθ = T_n(cos θ): T_0 = 1, T_1 = x, T_n = 2x·T_(n−1) − T_(n−2). */
  static Polynomial first(int n) {
    Polynomial last = Polynomial.ONE;
    Polynomial current = Polynomial.X;
    if (n == 0) {
      return last;
    }
    for (int k = 2; k <= n; k++) {
      Polynomial next = Polynomial.X.times(current).times(Rational.TWO).minus(last);
      last = current;
      current = next;
    }
    return current;
  }

  /** The imaginary part of (1 + it)^n: nt − C(n,3)·t³ + …. */
  static Polynomial tangent(int n) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k <= n; k++) {
      ascending.add(k % 2 == 0 ? Rational.ZERO : signedBinomial(n, k));
    }
    return Polynomial.ofAscending(ascending);
  }

  /** The imaginary part of (t + i)^n: n·t^(n−1) − C(n,3)·t^(n−3) + …. */
  static Polynomial cotangent(int n) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k <= n; k++) {
      ascending.add((n - k) % 2 == 0 ? Rational.ZERO : signedBinomial(n, n - k));
    }
    return Polynomial.ofAscending(ascending);
  }

  private static Rational signedBinomial(int n, int k) {
    BigInteger binomial = BigInteger.ONE;
    for (int j = 1; j <= k; j++) {
      binomial = binomial.multiply(BigInteger.valueOf(n - j + 1L)).divide(BigInteger.valueOf(j));
    }
    return Rational.of(k % 4 == 1 ? binomial : binomial.negate());
  }

  /** sin(q·π) where it is rational: only 0, ±1/2 and ±1 are (Niven 1956, from memory). */
  static Optional<Rational> rationalSine(Rational q) {
    Rational twelfths = Angle.withinOneTurn(q).times(6);
    if (!twelfths.isInteger()) {
      return Optional.empty();
    }
    return switch (twelfths.intValueExact()) {
      case 0, 6 -> Optional.of(Rational.ZERO);
      case 1, 5 -> Optional.of(Rational.of(1, 2));
      case 3 -> Optional.of(Rational.ONE);
      case 7, 11 -> Optional.of(Rational.of(-1, 2));
      case 9 -> Optional.of(Rational.MINUS_ONE);
      default -> Optional.empty();
    };
  }
}
