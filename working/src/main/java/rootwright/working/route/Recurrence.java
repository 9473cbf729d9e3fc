package rootwright.working.route;

import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * The table of power sums from S_0, …, S_(n−1) upwards: P(r) = 0 times a power of r, added up over
 * the roots, is a recurrence. Only the sums that are needed are worked out.
 */
final class Recurrence implements Route {

  private static final String TITLE = "a table of power sums by their recurrence";

  /** Longest table that is written. */
  private static final int LONGEST_TABLE = 30;

  @Override
  public String name() {
    return "recurrence";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "Power sums obey a recurrence with the coefficients of the polynomial.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.sumOverRoots().isEmpty()) {
      return new Attempt.Declined("the ask is no sum of powers of the roots");
    }
    RootFunction f = asked.sumOverRoots().get();
    int degree = asked.problem().degree();
    int last = f.numerator().degree();
    if (!f.isPolynomial()) {
      return Reasons.ROOT_IN_DENOMINATOR;
    } else if (last < degree) {
      return new Attempt.Declined(
          "the recurrence starts at the power %d, and the ask stays below".formatted(degree));
    } else if (last - degree >= LONGEST_TABLE) {
      return new Attempt.Declined(
          "the table would take %d lines; squaring powers gets there sooner"
              .formatted(last - degree + 1));
    }
    return new Table(asked, f.numerator()).worked();
  }

  /** One working in the making. */
  private static final class Table {

    private final Asked asked;
    private final Polynomial f;
    private final int degree;
    private final String root;
    private final Polynomial rule;
    private final PowerSumLines sums;
    private final Lines lines;

    Table(Asked asked, Polynomial f) {
      this.asked = asked;
      this.f = f;
      this.degree = asked.problem().degree();
      this.root = asked.problem().roots().get(0);
      this.rule = Polynomial.monomial(Rational.ONE, degree).remainder(asked.problem().polynomial());
      this.sums = PowerSumLines.of(asked, f.degree());
      this.lines = new Lines(asked.problem().setting());
    }

    Attempt worked() {
      SortedSet<Integer> needed = needed(PowerSumLines.indices(f));
      lines.add(Idea.VANISHING, "P(%s) = 0".formatted(root), power(degree), written(rule));
      if (needed.contains(0)) {
        lines.add(Idea.RECURRENCE, "one for every root", sums.name(0), Formula.number(degree));
      }
      sums.write(lines, needed.subSet(1, degree));
      boolean bare = f.equals(Polynomial.monomial(Rational.ONE, f.degree()));
      for (int k : needed.tailSet(degree)) {
        next(k, bare && k == f.degree() ? asked.formula() : sums.name(k));
      }
      if (!bare) {
        sums.total(lines, asked.formula(), f);
      }
      return Attempt.Worked.of(TITLE, lines.steps(), sums.value(f));
    }

    private SortedSet<Integer> needed(Collection<Integer> wanted) {
      TreeSet<Integer> needed = new TreeSet<>(wanted);
      for (int k = f.degree(); k >= degree; k--) {
        if (needed.contains(k)) {
          for (int j = 0; j < degree; j++) {
            if (!rule.coefficient(j).isZero()) {
              needed.add(k - degree + j);
            }
          }
        }
      }
      return needed;
    }

    private void next(int k, Formula called) {
      Combination named = new Combination();
      Combination worked = new Combination();
      for (int j = degree - 1; j >= 0; j--) {
        int index = k - degree + j;
        named.plus(rule.coefficient(j), sums.name(index));
        Rational value = sums.values().get(index);
        if (!value.isZero()) {
          worked.plus(rule.coefficient(j), Formula.number(value));
        }
      }
      lines.add(
          Idea.RECURRENCE,
          k == degree
              ? "added up over the roots"
              : "times %s, added up".formatted(UnicodeWriter.write(power(k - degree))),
          List.of(
              called,
              sums.name(k),
              named.formula(),
              worked.formula(),
              Formula.number(sums.values().get(k))));
    }

    private Formula power(int exponent) {
      return Combination.power(Formula.name(root), exponent);
    }

    private Formula written(Polynomial of) {
      return PolynomialFormula.of(of, root);
    }
  }
}
