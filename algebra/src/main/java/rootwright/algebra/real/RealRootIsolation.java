package rootwright.algebra.real;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rootwright.algebra.factor.SquarefreeDecomposition;
import rootwright.algebra.factor.SquarefreeFactor;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Isolating intervals for the real roots of a polynomial, by bisection with Descartes' rule: on an
 * interval where the rule gives 0 or 1 it is exact, and bisection comes to such intervals (Collins
 * and Akritas 1976, Proc. SYMSAC, pp 272–275).
 */
public final class RealRootIsolation {

  private RealRootIsolation() {}

  /**
   * The distinct real roots, ascending, in intervals without a common inner point.
   *
   * @throws IllegalArgumentException for the zero polynomial
   */
  public static List<IsolatedRoot> of(Polynomial polynomial) {
    List<IsolatedRoot> roots = new ArrayList<>();
    for (SquarefreeFactor factor : SquarefreeDecomposition.of(polynomial)) {
      roots.addAll(ofSquarefree(factor));
    }
    roots.sort(null);
    for (int k = 1; k < roots.size(); k++) {
      while (roots.get(k - 1).high().compareTo(roots.get(k).low()) > 0) {
        roots.set(k - 1, roots.get(k - 1).halved());
        roots.set(k, roots.get(k).halved());
      }
    }
    return List.copyOf(roots);
  }

  private static List<IsolatedRoot> ofSquarefree(SquarefreeFactor factor) {
    Polynomial polynomial = factor.polynomial();
    List<IsolatedRoot> roots = new ArrayList<>();
    int order = orderOfRootBound(polynomial);
    BigInteger[] scaled = new BigInteger[polynomial.degree() + 1];
    BigInteger[] mirrored = new BigInteger[polynomial.degree() + 1];
    for (int k = 0; k < scaled.length; k++) {
      int shift = order >= 0 ? k * order : (k - polynomial.degree()) * order;
      scaled[k] = polynomial.numerator(k).shiftLeft(shift);
      mirrored[k] = k % 2 == 0 ? scaled[k] : scaled[k].negate();
    }
    Rational reach =
        order >= 0
            ? Rational.of(BigInteger.ONE.shiftLeft(order))
            : new Rational(BigInteger.ONE, BigInteger.ONE.shiftLeft(-order));
    for (Interval interval : new Bisection().of(mirrored)) {
      Rational low = interval.high().times(reach).negate();
      Rational high = interval.low().times(reach).negate();
      roots.add(new IsolatedRoot(polynomial, low, high, factor.multiplicity()));
    }
    if (scaled[0].signum() == 0) {
      roots.add(new IsolatedRoot(polynomial, Rational.ZERO, Rational.ZERO, factor.multiplicity()));
    }
    for (Interval interval : new Bisection().of(scaled)) {
      roots.add(
          new IsolatedRoot(
              polynomial,
              interval.low().times(reach),
              interval.high().times(reach),
              factor.multiplicity()));
    }
    return roots;
  }

  /** A k such that every root is below 2^k in absolute value, by Fujiwara's bound (1916). */
  private static int orderOfRootBound(Polynomial polynomial) {
    int n = polynomial.degree();
    int order = Integer.MIN_VALUE;
    for (int k = 1; k <= n; k++) {
      BigInteger coefficient = polynomial.numerator(n - k);
      if (coefficient.signum() != 0) {
        int ratio = coefficient.bitLength() - polynomial.numerator(n).bitLength() + 1;
        order = Math.max(order, Math.floorDiv(ratio + k - 1, k));
      }
    }
    return order == Integer.MIN_VALUE ? 0 : order + 1;
  }

  /** Part of the interval from 0 to 1: inside lies one root, or {@code low = high} is one. */
  private record Interval(Rational low, Rational high) {}

  /** Splits the open interval from 0 to 1 until each part holds at most one root. */
  private static final class Bisection {

    private final List<Interval> found = new ArrayList<>();

    List<Interval> of(BigInteger[] ascending) {
      split(ascending, BigInteger.ZERO, 0);
      return found;
    }

    /** Roots in (place, place + 1)/2^depth are those of the polynomial in (0, 1). */
    private void split(BigInteger[] ascending, BigInteger place, int depth) {
      int changes = changesOnUnitInterval(ascending);
      if (changes == 0) {
        return;
      }
      boolean lowEndIsRoot = ascending[0].signum() == 0;
      BigInteger atOne = Arrays.stream(ascending).reduce(BigInteger.ZERO, BigInteger::add);
      if (changes == 1 && !lowEndIsRoot && atOne.signum() != 0) {
        found.add(new Interval(dyadic(place, depth), dyadic(place.add(BigInteger.ONE), depth)));
        return;
      }
      int n = ascending.length - 1;
      BigInteger[] left = new BigInteger[n + 1];
      Arrays.setAll(left, k -> ascending[k].shiftLeft(n - k));
      BigInteger[] right = shiftedByOne(left);
      split(left, place.shiftLeft(1), depth + 1);
      if (right[0].signum() == 0) {
        Rational middle = dyadic(place.shiftLeft(1).add(BigInteger.ONE), depth + 1);
        found.add(new Interval(middle, middle));
      }
      split(right, place.shiftLeft(1).add(BigInteger.ONE), depth + 1);
    }

    private static Rational dyadic(BigInteger place, int depth) {
      return new Rational(place, BigInteger.ONE.shiftLeft(depth));
    }

    /** Descartes' bound for the roots in (0, 1): the changes of sign of (1 + x)^n·Q(1/(1 + x)). */
    private static int changesOnUnitInterval(BigInteger[] ascending) {
      BigInteger[] reversed = new BigInteger[ascending.length];
      Arrays.setAll(reversed, k -> ascending[ascending.length - 1 - k]);
      int changes = 0;
      int last = 0;
      for (BigInteger coefficient : shiftedByOne(reversed)) {
        int sign = coefficient.signum();
        if (sign != 0) {
          changes += last * sign < 0 ? 1 : 0;
          last = sign;
        }
      }
      return changes;
    }

    /** The coefficients of Q(x + 1). */
    private static BigInteger[] shiftedByOne(BigInteger[] ascending) {
      BigInteger[] shifted = ascending.clone();
      for (int i = 0; i < shifted.length - 1; i++) {
        for (int k = shifted.length - 2; k >= i; k--) {
          shifted[k] = shifted[k].add(shifted[k + 1]);
        }
      }
      return shifted;
    }
  }
}
