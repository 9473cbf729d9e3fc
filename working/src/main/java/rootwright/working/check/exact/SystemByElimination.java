package rootwright.working.check.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.Resultant;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;

/**
 * Whether rows of numbers are all solutions of a system: linear ones by Gauss's elimination, two
 * equations in two letters by the resultant for the first letter.
 */
final class SystemByElimination {

  private SystemByElimination() {}

  static Verdict of(Claim.SystemSolutions claim) {
    if (new HashSet<>(claim.rows()).size() != claim.rows().size()) {
      return new Verdict.Refuted("a solution is listed twice");
    }
    for (List<Rational> row : claim.rows()) {
      for (MultivariatePolynomial equation : claim.equations()) {
        if (!equation.at(shifted(row)).isZero()) {
          return new Verdict.Refuted(row + " does not solve the system");
        }
      }
    }
    boolean linear = claim.equations().stream().allMatch(equation -> equation.degree() <= 1);
    if (linear) {
      return linear(claim);
    } else if (claim.letters() != 2) {
      return new Verdict.Undecided("a system of higher degree in more than two letters");
    }
    Optional<Set<List<Rational>>> all = inTwo(claim.equations(), 1, 2);
    if (all.isEmpty()) {
      return new Verdict.Undecided("the system may have solutions that are not rational");
    }
    return all.get().equals(new HashSet<>(claim.rows()))
        ? Verdict.confirmed("elimination by the resultant")
        : new Verdict.Refuted("the system has %d solutions".formatted(all.get().size()));
  }

  /** The value for letter k stands at place k; unknown 0 does not occur. */
  private static List<Rational> shifted(List<Rational> row) {
    List<Rational> point = new ArrayList<>(List.of(Rational.ZERO));
    point.addAll(row);
    return point;
  }

  private static Verdict linear(Claim.SystemSolutions claim) {
    int n = claim.letters();
    List<Rational[]> rows = new ArrayList<>();
    for (MultivariatePolynomial equation : claim.equations()) {
      Rational[] row = new Rational[n + 1];
      for (int k = 1; k <= n; k++) {
        row[k - 1] = equation.coefficient(Monomial.power(k, 1));
      }
      row[n] = equation.coefficient(Monomial.ONE).negate();
      rows.add(row);
    }
    int rank = 0;
    for (int column = 0; column < n; column++) {
      int pivot = rank;
      while (pivot < rows.size() && rows.get(pivot)[column].isZero()) {
        pivot++;
      }
      if (pivot == rows.size()) {
        continue;
      }
      Rational[] chosen = rows.get(pivot);
      rows.set(pivot, rows.get(rank));
      rows.set(rank, chosen);
      for (int k = rank + 1; k < rows.size(); k++) {
        Rational factor = rows.get(k)[column].over(chosen[column]);
        for (int j = column; j <= n; j++) {
          rows.get(k)[j] = rows.get(k)[j].minus(chosen[j].times(factor));
        }
      }
      rank++;
    }
    boolean contradiction = false;
    for (int k = rank; k < rows.size(); k++) {
      contradiction |= !rows.get(k)[n].isZero();
    }
    int expected = contradiction ? 0 : 1;
    if (!contradiction && rank < n) {
      return new Verdict.Refuted("the system leaves a letter open");
    }
    return claim.rows().size() == expected
        ? Verdict.confirmed("Gauss's elimination")
        : new Verdict.Refuted("the system has %d solutions".formatted(expected));
  }

  /**
   * All solutions of a system in the unknowns 1 and 2, if those for the kept unknown are rational.
   *
   * @param keep the unknown that is left by the resultant
   * @param drop the unknown that is eliminated first
   */
  static Optional<Set<List<Rational>>> inTwo(
      List<MultivariatePolynomial> equations, int keep, int drop) {
    Polynomial kept = Polynomial.ZERO;
    for (int i = 0; i < equations.size(); i++) {
      for (int j = i + 1; j < equations.size(); j++) {
        Polynomial one = eliminated(equations.get(i), equations.get(j), keep, drop);
        kept = kept.isZero() ? one : one.isZero() ? kept : kept.gcd(one);
      }
    }
    if (kept.isZero()) {
      return Optional.empty();
    }
    Set<List<Rational>> found = new HashSet<>();
    if (kept.degree() < 1) {
      return Optional.of(found);
    }
    for (IrreducibleFactor factor : Factorisation.of(kept).factors()) {
      if (factor.polynomial().degree() > 1) {
        return Optional.empty();
      }
      Rational value = factor.polynomial().coefficient(0).over(factor.polynomial().lead()).negate();
      Polynomial others = Polynomial.ZERO;
      for (MultivariatePolynomial equation : equations) {
        Polynomial at = at(equation, keep, value, drop);
        others = others.isZero() ? at : at.isZero() ? others : others.gcd(at);
      }
      if (others.isZero()) {
        return Optional.empty();
      }
      if (others.degree() < 1) {
        continue;
      }
      for (IrreducibleFactor other : Factorisation.of(others).factors()) {
        if (other.polynomial().degree() > 1) {
          return Optional.empty();
        }
        Rational second =
            other.polynomial().coefficient(0).over(other.polynomial().lead()).negate();
        found.add(keep == 1 ? List.of(value, second) : List.of(second, value));
      }
    }
    return Optional.of(found);
  }

  /** The resultant for one unknown by interpolation in the other. */
  private static Polynomial eliminated(
      MultivariatePolynomial f, MultivariatePolynomial g, int keep, int drop) {
    int m = f.degreeIn(drop);
    int n = g.degreeIn(drop);
    int degree = m * g.degreeIn(keep) + n * f.degreeIn(keep);
    Polynomial sum = Polynomial.ZERO;
    Polynomial vanishing = Polynomial.ONE;
    int found = 0;
    for (int point = 0; found <= degree; point++) {
      Rational value = Rational.of(point);
      Polynomial one = at(f, keep, value, drop);
      Polynomial other = at(g, keep, value, drop);
      if (one.degree() < m || other.degree() < n) {
        continue;
      }
      Rational resultant = resultant(one, other);
      sum = sum.plus(vanishing.times(resultant.minus(sum.at(value)).over(vanishing.at(value))));
      vanishing = vanishing.times(Polynomial.withRoots(List.of(value)));
      found++;
    }
    return sum;
  }

  private static Rational resultant(Polynomial one, Polynomial other) {
    if (one.isZero() || other.isZero()) {
      return Rational.ZERO;
    } else if (one.degree() == 0) {
      return one.coefficient(0).power(other.degree());
    } else if (other.degree() == 0) {
      return other.coefficient(0).power(one.degree());
    }
    return Resultant.of(one, other);
  }

  private static Polynomial at(
      MultivariatePolynomial polynomial, int keep, Rational value, int drop) {
    List<Rational> ascending = new ArrayList<>();
    for (MultivariatePolynomial part : polynomial.coefficientsIn(drop)) {
      Rational sum = Rational.ZERO;
      for (int power = part.degreeIn(keep); power >= 0; power--) {
        sum = sum.times(value).plus(part.coefficient(Monomial.power(keep, power)));
      }
      ascending.add(sum);
    }
    return Polynomial.ofAscending(ascending);
  }
}
