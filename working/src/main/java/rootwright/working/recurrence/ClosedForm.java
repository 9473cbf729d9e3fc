package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;

/**
 * u_k = Σ A(k)·rᵏ over the distinct roots r of the characteristic polynomial, A of lower degree
 * than the multiplicity of r.
 *
 * @param terms one for every distinct root
 */
record ClosedForm(List<Term> terms) {

  ClosedForm {
    terms = List.copyOf(terms);
  }

  /**
   * A(k)·rᵏ.
   *
   * @param root r
   * @param factors the coefficients of A by ascending power; a single one if r is irrational
   */
  record Term(ExactValue root, List<ExactValue> factors) {
    Term {
      factors = List.copyOf(factors);
    }

    boolean isZero() {
      return factors.stream().allMatch(new RationalValue(Rational.ZERO)::equals);
    }
  }

  /**
   * The form of a sequence from index 0, if all roots are rational or there are two that are not.
   */
  static Optional<ClosedForm> of(Recurrence fromZero) {
    List<ExactRoot> roots = ExactValues.rootsOf(fromZero.characteristic());
    if (roots.stream().allMatch(root -> root.value() instanceof RationalValue)) {
      return Optional.of(rational(fromZero, roots));
    }
    boolean quadratic = fromZero.order() == 2 && roots.get(0).value() instanceof QuadraticSurd;
    return quadratic
        ? Optional.of(quadratic(fromZero, (QuadraticSurd) roots.get(0).value()))
        : Optional.empty();
  }

  private static ClosedForm quadratic(Recurrence sequence, QuadraticSurd root) {
    Rational u0 = sequence.first().get(0);
    Rational u1 = sequence.first().get(1);
    Rational d = Rational.of(root.d());
    // A = (u₁ − u₀·s)/(r − s) with r = a + b√d and s its conjugate.
    Rational half = u0.over(Rational.TWO);
    Rational slope = u1.minus(u0.times(root.a())).over(root.b().times(d).times(2));
    ExactValue first = QuadraticSurd.of(half, slope, root.d());
    ExactValue second = QuadraticSurd.of(half, slope.negate(), root.d());
    return new ClosedForm(
        List.of(new Term(root, List.of(first)), new Term(root.conjugate(), List.of(second))));
  }

  private static ClosedForm rational(Recurrence sequence, List<ExactRoot> roots) {
    List<ExactRoot> ordered = new ArrayList<>(roots);
    ordered.sort(
        Comparator.comparing((ExactRoot root) -> number(root).absolute())
            .thenComparing(ClosedForm::number)
            .reversed());
    List<List<Rational>> rows = new ArrayList<>();
    for (int k = 0; k < sequence.order(); k++) {
      List<Rational> row = new ArrayList<>();
      for (ExactRoot root : ordered) {
        for (int j = 0; j < root.multiplicity(); j++) {
          row.add(Rational.of(k).power(j).times(number(root).power(k)));
        }
      }
      row.add(sequence.first().get(k));
      rows.add(row);
    }
    List<Rational> solution = solved(rows);
    List<Term> terms = new ArrayList<>();
    int at = 0;
    for (ExactRoot root : ordered) {
      List<ExactValue> factors = new ArrayList<>();
      for (int j = 0; j < root.multiplicity(); j++) {
        factors.add(new RationalValue(solution.get(at++)));
      }
      terms.add(new Term(root.value(), factors));
    }
    return new ClosedForm(terms);
  }

  private static Rational number(ExactRoot root) {
    return ((RationalValue) root.value()).number();
  }

  /** The solution of a regular system, right sides last; Gauss. */
  private static List<Rational> solved(List<List<Rational>> system) {
    int n = system.size();
    List<List<Rational>> rows = new ArrayList<>();
    system.forEach(row -> rows.add(new ArrayList<>(row)));
    for (int column = 0; column < n; column++) {
      int pivot = column;
      while (rows.get(pivot).get(column).isZero()) {
        pivot++;
      }
      Collections.swap(rows, column, pivot);
      Rational lead = rows.get(column).get(column);
      rows.get(column).replaceAll(entry -> entry.over(lead));
      for (int row = 0; row < n; row++) {
        Rational factor = rows.get(row).get(column);
        if (row != column && !factor.isZero()) {
          for (int k = 0; k <= n; k++) {
            Rational taken = rows.get(column).get(k).times(factor);
            rows.get(row).set(k, rows.get(row).get(k).minus(taken));
          }
        }
      }
    }
    return rows.stream().map(row -> row.get(n)).toList();
  }

  /** Whether all roots are rational. */
  boolean isRational() {
    return terms.stream().allMatch(term -> term.root() instanceof RationalValue);
  }

  /** As it is written for an index, which is a letter or a number. */
  Formula formula(Formula k) {
    List<Formula> written = new ArrayList<>();
    for (Term term : terms) {
      if (!term.isZero()) {
        written.add(written(term, k));
      }
    }
    return NormalForm.of(Formula.sum(written));
  }

  private static Formula written(Term term, Formula k) {
    Formula power = power(term.root(), k);
    List<Rational> rational =
        term.factors().stream()
            .filter(RationalValue.class::isInstance)
            .map(factor -> ((RationalValue) factor).number())
            .toList();
    Formula factor =
        rational.size() == term.factors().size()
            ? PolynomialFormula.of(Polynomial.ofAscending(rational), k)
            : term.factors().get(0).toFormula();
    if (power.equals(Formula.number(1))) {
      return factor;
    } else if (factor.equals(Formula.number(1))) {
      return power;
    } else if (factor.equals(Formula.number(-1))) {
      return new Formula.Negative(power);
    }
    return factor.times(power);
  }

  private static Formula power(ExactValue root, Formula k) {
    Formula base = root.toFormula();
    if (base.equals(Formula.number(1))) {
      return base;
    }
    return new Formula.Power(base, k);
  }

  /** The member of an index in balls, so many digits. */
  ComplexBall enclosure(int k, int digits) {
    ComplexBall sum = ComplexBall.ZERO;
    for (Term term : terms) {
      ComplexBall factor = ComplexBall.ZERO;
      for (int j = term.factors().size() - 1; j >= 0; j--) {
        factor =
            factor
                .times(new RationalValue(Rational.of(k)).enclosure(digits))
                .plus(term.factors().get(j).enclosure(digits));
      }
      ComplexBall root = term.root().enclosure(digits);
      for (int j = 0; j < k; j++) {
        factor = factor.times(root);
      }
      sum = sum.plus(factor);
    }
    return sum;
  }

  /** Discriminants of irrational roots, to say what stands under the root sign. */
  Optional<BigInteger> radicand() {
    return terms.get(0).root() instanceof QuadraticSurd surd
        ? Optional.of(surd.d())
        : Optional.empty();
  }
}
