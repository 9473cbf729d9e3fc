package rootwright.working.inequality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;

/**
 * A quadratic form written as a sum of squares of linear forms with positive factors.
 *
 * @param terms its terms; their sum is the form
 */
record Squares(List<Term> terms) {

  Squares {
    terms = List.copyOf(terms);
  }

  /**
   * factor·(c₁a₁ + … + c_na_n)².
   *
   * @param factor positive
   * @param linear c₁, …, c_n
   */
  record Term(Rational factor, List<Rational> linear) {
    Term {
      linear = List.copyOf(linear);
    }
  }

  /**
   * The squares of a form that is nowhere negative; empty if it takes negative values.
   *
   * @param form the symmetric matrix of the form
   */
  static Optional<Squares> of(List<List<Rational>> form) {
    return differences(form).or(() -> completed(form));
  }

  /** Where every row adds up to 0 and no mixed term is positive: Σ −q_ij·(a_i − a_j)². */
  private static Optional<Squares> differences(List<List<Rational>> form) {
    int n = form.size();
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Rational row = form.get(i).stream().reduce(Rational.ZERO, Rational::plus);
      if (!row.isZero()) {
        return Optional.empty();
      }
      for (int j = i + 1; j < n; j++) {
        Rational mixed = form.get(i).get(j);
        if (mixed.signum() > 0) {
          return Optional.empty();
        } else if (mixed.signum() < 0) {
          List<Rational> linear = zeros(n);
          linear.set(i, Rational.ONE);
          linear.set(j, Rational.MINUS_ONE);
          terms.add(new Term(mixed.negate(), linear));
        }
      }
    }
    return Optional.of(new Squares(terms));
  }

  /** Squares completed one letter after the other (Lagrange 1759). */
  private static Optional<Squares> completed(List<List<Rational>> form) {
    int n = form.size();
    List<List<Rational>> rest = new ArrayList<>();
    form.forEach(row -> rest.add(new ArrayList<>(row)));
    List<Term> terms = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Rational pivot = rest.get(k).get(k);
      if (pivot.signum() < 0) {
        return Optional.empty();
      } else if (pivot.isZero()) {
        // A form that is nowhere negative has no mixed term beside a square that is missing.
        for (int j = k; j < n; j++) {
          if (!rest.get(k).get(j).isZero()) {
            return Optional.empty();
          }
        }
        continue;
      }
      List<Rational> linear = zeros(n);
      for (int j = k; j < n; j++) {
        linear.set(j, rest.get(k).get(j).over(pivot));
      }
      terms.add(new Term(pivot, linear));
      for (int i = k; i < n; i++) {
        for (int j = k; j < n; j++) {
          Rational taken = pivot.times(linear.get(i)).times(linear.get(j));
          rest.get(i).set(j, rest.get(i).get(j).minus(taken));
        }
      }
    }
    return Optional.of(new Squares(terms));
  }

  private static List<Rational> zeros(int n) {
    List<Rational> zeros = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      zeros.add(Rational.ZERO);
    }
    return zeros;
  }
}
