package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.factor.CyclotomicFactors;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The numbering of unknowns in one evaluation: the n roots first, then a root of unity if there are
 * angles, then square roots of numbers as they are met, the imaginary unit being the square root of
 * −1 or, where there are angles, a quarter turn.
 */
final class Unknowns {

  private static final int LARGEST_TRIAL = 10_000;

  private final int roots;
  private final int order;
  private final List<Rational> squares = new ArrayList<>();

  Unknowns(int roots) {
    this(roots, 1);
  }

  /**
   * @param order of the root of unity by which angles are expressed, a multiple of 4; 1 for none
   */
  Unknowns(int roots, int order) {
    this.roots = roots;
    this.order = order;
  }

  /** The functions of angles; empty if none was announced. */
  Optional<Turns> turns() {
    return order == 1 ? Optional.empty() : Optional.of(new Turns(order, roots));
  }

  private int firstSquareRoot() {
    return order == 1 ? roots : roots + 1;
  }

  /**
   * The square root of a number by square roots of primes and of −1, each an unknown; of the part
   * of the number without a prime factor below {@value #LARGEST_TRIAL} by an unknown of its own.
   */
  MultivariatePolynomial squareRootOf(Rational square) {
    if (square.isZero()) {
      return MultivariatePolynomial.ZERO;
    }
    BigInteger rest = square.numerator().multiply(square.denominator());
    MultivariatePolynomial root =
        MultivariatePolynomial.term(Rational.of(square.denominator()).reciprocal(), Monomial.ONE);
    if (rest.signum() < 0) {
      rest = rest.negate();
      root =
          root.times(
              order > 1 ? new Turns(order, roots).quarter() : unknownFor(Rational.MINUS_ONE));
    }
    for (long p = 2; p <= LARGEST_TRIAL && rest.compareTo(BigInteger.valueOf(p * p)) >= 0; p++) {
      BigInteger prime = BigInteger.valueOf(p);
      int times = 0;
      while (rest.mod(prime).signum() == 0) {
        rest = rest.divide(prime);
        times++;
      }
      root = root.times(Rational.of(prime.pow(times / 2)));
      root = times % 2 == 1 ? root.times(unknownFor(Rational.of(p))) : root;
    }
    BigInteger[] whole = rest.sqrtAndRemainder();
    if (whole[1].signum() == 0) {
      return root.times(Rational.of(whole[0]));
    }
    return root.times(unknownFor(Rational.of(rest)));
  }

  /** The unknown whose square is this number; the same number gives the same unknown. */
  private MultivariatePolynomial unknownFor(Rational square) {
    int known = squares.indexOf(square);
    if (known < 0) {
      known = squares.size();
      squares.add(square);
    }
    return MultivariatePolynomial.unknown(firstSquareRoot() + known);
  }

  /** Whether this polynomial is in roots alone. */
  boolean isInRootsAlone(MultivariatePolynomial polynomial) {
    return polynomial.unknowns() <= roots;
  }

  /** The numbers of the roots that occur above or below the stroke, ascending. */
  List<Integer> rootsIn(RationalFunction function) {
    SortedSet<Integer> occurring = new TreeSet<>(rootsIn(function.numerator()));
    occurring.addAll(rootsIn(function.denominator()));
    return List.copyOf(occurring);
  }

  /** The numbers of the roots that occur, ascending. */
  List<Integer> rootsIn(MultivariatePolynomial polynomial) {
    List<Integer> occurring = new ArrayList<>();
    for (int k = 0; k < Math.min(roots, polynomial.unknowns()); k++) {
      if (polynomial.degreeIn(k) > 0) {
        occurring.add(k);
      }
    }
    return occurring;
  }

  /**
   * The coefficients, polynomials in the roots, after every square of a square root has been
   * replaced by its number and the root of unity reduced by its cyclotomic polynomial: if all are
   * zero the polynomial is zero.
   */
  List<MultivariatePolynomial> coefficientsOverRoots(MultivariatePolynomial polynomial) {
    List<MultivariatePolynomial> parts =
        order == 1
            ? List.of(polynomial)
            : remainder(polynomial.coefficientsIn(roots), CyclotomicFactors.cyclotomic(order));
    for (int k = 0; k < squares.size(); k++) {
      List<MultivariatePolynomial> next = new ArrayList<>();
      for (MultivariatePolynomial part : parts) {
        next.addAll(evenAndOdd(part.coefficientsIn(firstSquareRoot() + k), squares.get(k)));
      }
      parts = next;
    }
    return parts;
  }

  /** The coefficients of the remainder of a polynomial in one unknown by a monic one. */
  private static List<MultivariatePolynomial> remainder(
      List<MultivariatePolynomial> coefficients, Polynomial monic) {
    List<MultivariatePolynomial> rest = new ArrayList<>(coefficients);
    int n = monic.degree();
    for (int k = rest.size() - 1; k >= n; k--) {
      MultivariatePolynomial top = rest.remove(k);
      for (int j = 0; j < n && !top.isZero(); j++) {
        if (!monic.coefficient(j).isZero()) {
          rest.set(k - n + j, rest.get(k - n + j).minus(top.times(monic.coefficient(j))));
        }
      }
    }
    return rest;
  }

  private static List<MultivariatePolynomial> evenAndOdd(
      List<MultivariatePolynomial> coefficients, Rational square) {
    MultivariatePolynomial even = MultivariatePolynomial.ZERO;
    MultivariatePolynomial odd = MultivariatePolynomial.ZERO;
    for (int power = 0; power < coefficients.size(); power++) {
      MultivariatePolynomial part = coefficients.get(power).times(square.power(power / 2));
      if (power % 2 == 0) {
        even = even.plus(part);
      } else {
        odd = odd.plus(part);
      }
    }
    return List.of(even, odd);
  }

  /** A polynomial in the unknown with this number alone, as a polynomial in x. */
  static Polynomial inOne(MultivariatePolynomial polynomial, int unknown) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k <= polynomial.degreeIn(unknown); k++) {
      ascending.add(polynomial.coefficient(Monomial.power(unknown, k)));
    }
    return Polynomial.ofAscending(ascending);
  }
}
