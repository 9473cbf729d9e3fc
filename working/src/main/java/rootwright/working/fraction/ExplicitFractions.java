package rootwright.working.fraction;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

/**
 * N(x)/P(x) = Q(x) + Σ numerator/denominator with unknown letters in the numerators.
 *
 * @param x the unknown
 * @param above N
 * @param below P
 * @param parts the fractions, in the order written
 */
record ExplicitFractions(String x, Polynomial above, Polynomial below, List<Part> parts) {

  ExplicitFractions {
    parts = List.copyOf(parts);
  }

  /**
   * One fraction.
   *
   * @param letters the letters of its numerator: A, or B and C for Bx + C, by descending power
   * @param denominator a divisor of P
   * @param written the denominator as it is written
   */
  record Part(List<String> letters, Polynomial denominator, Formula written) {
    Part {
      letters = List.copyOf(letters);
    }

    /** The numerator with letters. */
    Formula numerator(String x) {
      List<Formula> terms = new ArrayList<>();
      for (int k = 0; k < letters.size(); k++) {
        Formula letter = Formula.name(letters.get(k));
        int power = letters.size() - 1 - k;
        terms.add(
            power == 0
                ? letter
                : letter.times(power == 1 ? Formula.name(x) : Formula.name(x).power(power)));
      }
      return Formula.sum(terms);
    }
  }

  /** All letters, in the order written. */
  List<String> letters() {
    return parts.stream().flatMap(part -> part.letters().stream()).toList();
  }

  /** Q and the rest of N. */
  Polynomial.Division division() {
    return above.divide(below);
  }

  /** P over the denominator of a part. */
  Polynomial cofactor(Part part) {
    return below.divide(part.denominator()).quotient();
  }

  /**
   * The equations between the letters, one for each power of x from the highest down: the numerator
   * left over is Σ numerator·cofactor. Letter k is unknown k, counted from 1.
   */
  List<MultivariatePolynomial> equations() {
    Polynomial rest = division().remainder();
    List<MultivariatePolynomial> equations = new ArrayList<>();
    for (int power = below.degree() - 1; power >= 0; power--) {
      MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
      int letter = 1;
      for (Part part : parts) {
        Polynomial cofactor = cofactor(part);
        for (int k = 0; k < part.letters().size(); k++) {
          int shift = part.letters().size() - 1 - k;
          Rational c = power >= shift ? cofactor.coefficient(power - shift) : Rational.ZERO;
          sum = sum.plus(MultivariatePolynomial.unknown(letter++).times(c));
        }
      }
      equations.add(sum.minus(MultivariatePolynomial.constant(rest.coefficient(power))));
    }
    return equations;
  }

  /** The values of the letters, if they are fixed and exist; Gauss. */
  Optional<List<Rational>> solution() {
    int n = letters().size();
    List<List<Rational>> rows = new ArrayList<>();
    for (MultivariatePolynomial equation : equations()) {
      List<Rational> row = new ArrayList<>();
      for (int k = 1; k <= n; k++) {
        row.add(equation.coefficient(Monomial.power(k, 1)));
      }
      row.add(equation.coefficient(Monomial.ONE).negate());
      rows.add(row);
    }
    int rank = 0;
    for (int column = 0; column < n; column++) {
      int pivot = rank;
      while (pivot < rows.size() && rows.get(pivot).get(column).isZero()) {
        pivot++;
      }
      if (pivot == rows.size()) {
        return Optional.empty();
      }
      Collections.swap(rows, rank, pivot);
      Rational lead = rows.get(rank).get(column);
      rows.get(rank).replaceAll(entry -> entry.over(lead));
      for (int row = 0; row < rows.size(); row++) {
        Rational factor = rows.get(row).get(column);
        if (row != rank && !factor.isZero()) {
          for (int k = 0; k <= n; k++) {
            Rational taken = rows.get(rank).get(k).times(factor);
            rows.get(row).set(k, rows.get(row).get(k).minus(taken));
          }
        }
      }
      rank++;
    }
    boolean consistent =
        rows.subList(rank, rows.size()).stream().allMatch(row -> row.get(n).isZero());
    return consistent
        ? Optional.of(rows.subList(0, n).stream().map(row -> row.get(n)).toList())
        : Optional.empty();
  }
}
