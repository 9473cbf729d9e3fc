package rootwright.working.integers;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.RationalValue;

/** Why only finitely many values of the letter can give integer roots. */
sealed interface Finiteness {

  /** Every value of the letter for which the wish can come true, found through this reason. */
  List<Found> candidates(LetterProblem problem);

  /**
   * At c the letter drops out: P(c) = value for every k, so the differences c − r divide it.
   *
   * @param value P(c) over the lead, a whole number other than 0
   */
  record LetterDropsOut(BigInteger point, BigInteger value) implements Finiteness {
    @Override
    public List<Found> candidates(LetterProblem problem) {
      List<Found> found = new ArrayList<>();
      int n = problem.degree();
      if (problem.wish().oneIsEnough()) {
        for (BigInteger divisor : Divisors.of(value)) {
          one(problem, point.subtract(divisor)).ifPresent(found::add);
        }
        return tidy(found);
      }
      for (List<BigInteger> factors : Divisors.products(value, n)) {
        List<BigInteger> roots = factors.stream().map(point::subtract).sorted().toList();
        match(problem, roots).ifPresent(found::add);
      }
      return tidy(found);
    }
  }

  /**
   * The sum of the squares of the roots does not hold the letter.
   *
   * @param squares that sum
   */
  record SquaresKnown(BigInteger squares) implements Finiteness {
    @Override
    public List<Found> candidates(LetterProblem problem) {
      List<Found> found = new ArrayList<>();
      if (squares.signum() >= 0) {
        long reach = squares.sqrt().longValueExact();
        for (long r = -reach; r <= reach; r++) {
          one(problem, BigInteger.valueOf(r)).ifPresent(found::add);
        }
      }
      return tidy(found);
    }
  }

  /** The reason that applies to a problem, if there is one. */
  static Optional<Finiteness> of(LetterProblem problem) {
    return dropsOut(problem)
        .or(() -> problem.wish().oneIsEnough() ? Optional.empty() : squares(problem));
  }

  private static Optional<Finiteness> dropsOut(LetterProblem problem) {
    if (problem.slope().degree() < 1) {
      return Optional.empty();
    }
    return RationalRoots.of(problem.slope()).stream()
        .map(root -> root.value())
        .filter(Rational::isInteger)
        .flatMap(
            c -> {
              Rational value = problem.base().at(c).over(problem.base().lead());
              boolean usable =
                  !value.isZero()
                      && value.isInteger()
                      && value.numerator().abs().compareTo(Divisors.LARGEST) <= 0;
              return usable
                  ? Optional.<Finiteness>of(new LetterDropsOut(c.numerator(), value.numerator()))
                      .stream()
                  : Stream.<Finiteness>empty();
            })
        .findFirst();
  }

  private static Optional<Finiteness> squares(LetterProblem problem) {
    int n = problem.degree();
    boolean known = problem.slope().degree() < n - 2;
    if (!known || n < 3) {
      return Optional.empty();
    }
    Rational a = problem.base().lead();
    Rational one = problem.base().coefficient(n - 1).over(a).negate();
    Rational two = problem.base().coefficient(n - 2).over(a);
    Rational squares = one.times(one).minus(two.times(2));
    return squares.isInteger() && squares.numerator().compareTo(BigInteger.valueOf(1_000_000)) <= 0
        ? Optional.of(new SquaresKnown(squares.numerator()))
        : Optional.empty();
  }

  /** The letter for which r is a root, and whether then all is as wished. */
  private static Optional<Found> one(LetterProblem problem, BigInteger r) {
    Rational at = Rational.of(r);
    Rational under = problem.slope().at(at);
    if (under.isZero()) {
      return Optional.empty();
    }
    Rational k = problem.base().at(at).over(under).negate();
    return accepted(problem, k) && problem.fits(k)
        ? Optional.of(new Found(k, problem.integerRoots(k)))
        : Optional.empty();
  }

  /** The letter for which exactly these are the roots. */
  private static Optional<Found> match(LetterProblem problem, List<BigInteger> roots) {
    Polynomial wanted =
        Polynomial.withRoots(roots.stream().map(Rational::of).toList())
            .times(problem.base().lead());
    Polynomial difference = wanted.minus(problem.base());
    int d = problem.slope().degree();
    Rational k = difference.coefficient(d).over(problem.slope().coefficient(d));
    return difference.equals(problem.slope().times(k))
            && accepted(problem, k)
            && problem.fits(roots)
        ? Optional.of(new Found(k, roots))
        : Optional.empty();
  }

  /** The letter must be a number of the kind that is said. */
  private static boolean accepted(LetterProblem problem, Rational k) {
    return problem.domain().map(domain -> domain.contains(new RationalValue(k))).orElse(true);
  }

  private static List<Found> tidy(List<Found> found) {
    TreeSet<Rational> seen = new TreeSet<>();
    return found.stream()
        .sorted(Comparator.comparing(Found::letter))
        .filter(each -> seen.add(each.letter()))
        .toList();
  }
}
