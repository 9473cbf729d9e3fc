package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;

/**
 * Whether rows of numbers are all solutions of a system: linear ones by determinants, two letters
 * by enclosing, for every enclosed value of the second, the values of the first that every equation
 * allows.
 */
final class SystemByDeterminants {

  private static final int DIGITS = 60;
  private static final int BITS = 240;

  private SystemByDeterminants() {}

  static Verdict of(Claim.SystemSolutions claim) {
    boolean linear = claim.equations().stream().allMatch(equation -> equation.degree() <= 1);
    return linear ? linear(claim) : inTwo(claim);
  }

  /** Some square part has a determinant that is not zero, and Cramer's quotients fit the rest. */
  private static Verdict linear(Claim.SystemSolutions claim) {
    int n = claim.letters();
    List<MultivariatePolynomial> equations = claim.equations();
    for (int mask = 0; mask < 1 << equations.size(); mask++) {
      if (Integer.bitCount(mask) != n) {
        continue;
      }
      Rational[][] square = new Rational[n][n];
      Rational[] right = new Rational[n];
      int row = 0;
      for (int k = 0; k < equations.size(); k++) {
        if ((mask >> k & 1) == 1) {
          for (int j = 0; j < n; j++) {
            square[row][j] = equations.get(k).coefficient(Monomial.power(j + 1, 1));
          }
          right[row++] = equations.get(k).coefficient(Monomial.ONE).negate();
        }
      }
      Rational determinant = determinant(square);
      if (determinant.isZero()) {
        continue;
      }
      List<Rational> solution = new ArrayList<>();
      for (int j = 0; j < n; j++) {
        Rational[][] replaced = new Rational[n][];
        for (int k = 0; k < n; k++) {
          replaced[k] = square[k].clone();
          replaced[k][j] = right[k];
        }
        solution.add(determinant(replaced).over(determinant));
      }
      List<Rational> point = new ArrayList<>(List.of(Rational.ZERO));
      point.addAll(solution);
      boolean fits = equations.stream().allMatch(equation -> equation.at(point).isZero());
      List<List<Rational>> expected = fits ? List.of(solution) : List.of();
      return claim.rows().equals(expected)
          ? Verdict.confirmed("determinants")
          : new Verdict.Refuted("Cramer's quotients are " + solution);
    }
    return new Verdict.Undecided("no square part of the system has a determinant");
  }

  private static Rational determinant(Rational[][] matrix) {
    int n = matrix.length;
    if (n == 1) {
      return matrix[0][0];
    }
    Rational sum = Rational.ZERO;
    for (int column = 0; column < n; column++) {
      Rational[][] minor = new Rational[n - 1][n - 1];
      for (int row = 1; row < n; row++) {
        int place = 0;
        for (int k = 0; k < n; k++) {
          if (k != column) {
            minor[row - 1][place++] = matrix[row][k];
          }
        }
      }
      Rational term = matrix[0][column].times(determinant(minor));
      sum = column % 2 == 0 ? sum.plus(term) : sum.minus(term);
    }
    return sum;
  }

  /** Eliminates the first letter by Sylvester's determinant and looks at every enclosed root. */
  private static Verdict inTwo(Claim.SystemSolutions claim) {
    if (claim.letters() != 2 || claim.equations().size() < 2) {
      return new Verdict.Undecided("a system of higher degree in more than two letters");
    }
    Polynomial second = Polynomial.ZERO;
    for (int k = 1; k < claim.equations().size(); k++) {
      Polynomial one = sylvester(claim.equations().get(0), claim.equations().get(k));
      second = second.isZero() ? one : one.isZero() ? second : second.gcd(one);
    }
    if (second.isZero()) {
      return new Verdict.Undecided("the equations share a factor");
    }
    Set<List<Rational>> left = new HashSet<>(claim.rows());
    if (second.degree() >= 1) {
      for (EnclosedRoot root : RootEnclosures.of(second, DIGITS)) {
        List<List<Rational>> here =
            left.stream().filter(row -> root.disc().contains(row.get(1))).toList();
        Verdict verdict = atSecond(claim, root, here);
        if (!verdict.isConfirmed()) {
          return verdict;
        }
        here.forEach(left::remove);
      }
    }
    return left.isEmpty()
        ? Verdict.confirmed("enclosures after elimination in the other order", 30)
        : new Verdict.Refuted("a listed row solves nothing");
  }

  /** The first letters that every equation allows for one value of the second. */
  private static Verdict atSecond(
      Claim.SystemSolutions claim, EnclosedRoot root, List<List<Rational>> here) {
    if (here.isEmpty()) {
      return new Verdict.Undecided("a value of the second letter belongs to no row");
    }
    Rational value = here.get(0).get(1);
    Polynomial common = Polynomial.ZERO;
    for (MultivariatePolynomial equation : claim.equations()) {
      Polynomial first = atSecond(equation, value);
      common = common.isZero() ? first : first.isZero() ? common : common.gcd(first);
    }
    Set<Rational> wanted = new HashSet<>();
    here.forEach(row -> wanted.add(row.get(0)));
    List<EnclosedRoot> enclosed =
        common.degree() < 1 ? List.of() : RootEnclosures.of(common, DIGITS);
    for (EnclosedRoot first : enclosed) {
      if (!wanted.removeIf(number -> first.disc().overlaps(ComplexBall.of(number, BITS)))) {
        return new Verdict.Refuted("a solution near " + first.disc() + " is not listed");
      }
    }
    return wanted.isEmpty()
        ? Verdict.confirmed("enclosures")
        : new Verdict.Refuted("a listed row is no solution at " + root.disc());
  }

  private static Polynomial atSecond(MultivariatePolynomial equation, Rational value) {
    Rational[] ascending = new Rational[equation.degreeIn(1) + 1];
    Arrays.fill(ascending, Rational.ZERO);
    for (Map.Entry<Monomial, Rational> term : equation.terms().entrySet()) {
      int power = term.getKey().exponent(1);
      ascending[power] =
          ascending[power].plus(term.getValue().times(value.power(term.getKey().exponent(2))));
    }
    return Polynomial.ofAscending(List.of(ascending));
  }

  /** Sylvester's determinant for the first letter, as a polynomial in the second. */
  private static Polynomial sylvester(MultivariatePolynomial f, MultivariatePolynomial g) {
    int m = f.degreeIn(1);
    int n = g.degreeIn(1);
    if (m + n == 0 || m + n > 8) {
      throw new Unbounded("the system is of too high a degree");
    }
    int degree = m * g.degreeIn(2) + n * f.degreeIn(2);
    Polynomial sum = Polynomial.ZERO;
    Polynomial vanishing = Polynomial.ONE;
    for (int point = 0; point <= degree; point++) {
      Rational value = Rational.of(point);
      Rational found = determinant(matrix(atSecond(f, value), m, atSecond(g, value), n));
      sum = sum.plus(vanishing.times(found.minus(sum.at(value)).over(vanishing.at(value))));
      vanishing = vanishing.times(Polynomial.withRoots(List.of(value)));
    }
    return sum;
  }

  private static Rational[][] matrix(Polynomial f, int m, Polynomial g, int n) {
    Rational[][] matrix = new Rational[m + n][m + n];
    for (int row = 0; row < m + n; row++) {
      Arrays.fill(matrix[row], Rational.ZERO);
      Polynomial of = row < n ? f : g;
      int formal = row < n ? m : n;
      int shift = row < n ? row : row - n;
      for (int k = 0; k <= formal; k++) {
        matrix[row][shift + k] = of.coefficient(formal - k);
      }
    }
    return matrix;
  }
}
