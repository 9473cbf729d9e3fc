package rootwright.working.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * Polynomials written as combinations of others with constant factors: what comes of adding
 * multiples of equations. By Gaussian elimination over Q, in time cubic in their number at worst.
 */
public final class LinearCombination {

  /** A row of the echelon form, and which of the given polynomials it is made of. */
  private record Row(MultivariatePolynomial polynomial, SortedMap<Integer, Rational> from) {
    Monomial lead() {
      return polynomial.terms().lastKey();
    }
  }

  private final List<Row> rows;
  private final int size;

  /** With these polynomials to choose from. */
  public LinearCombination(List<MultivariatePolynomial> generators) {
    this(new ArrayList<>(), generators.size());
    for (int k = 0; k < generators.size(); k++) {
      append(generators.get(k), k);
    }
  }

  private LinearCombination(List<Row> rows, int size) {
    this.rows = rows;
    this.size = size;
  }

  /** The same with one more polynomial at the end. */
  LinearCombination and(MultivariatePolynomial generator) {
    LinearCombination more = new LinearCombination(new ArrayList<>(rows), size + 1);
    more.append(generator, size);
    return more;
  }

  private void append(MultivariatePolynomial generator, int number) {
    SortedMap<Integer, Rational> from = new TreeMap<>();
    from.put(number, Rational.ONE);
    Row row = reduced(new Row(generator, from));
    if (!row.polynomial().isZero()) {
      rows.add(row);
    }
  }

  /** The numbers of the polynomials that a combination giving the target is made of. */
  public Optional<List<Integer>> of(MultivariatePolynomial target) {
    Row left = reduced(new Row(target, new TreeMap<>()));
    return left.polynomial().isZero()
        ? Optional.of(List.copyOf(left.from().keySet()))
        : Optional.empty();
  }

  private Row reduced(Row row) {
    MultivariatePolynomial polynomial = row.polynomial();
    SortedMap<Integer, Rational> from = new TreeMap<>(row.from());
    for (Row known : rows) {
      Rational at = polynomial.coefficient(known.lead());
      if (!at.isZero()) {
        Rational factor = at.over(known.polynomial().coefficient(known.lead())).negate();
        polynomial = polynomial.plus(known.polynomial().times(factor));
        for (Map.Entry<Integer, Rational> part : known.from().entrySet()) {
          from.merge(part.getKey(), part.getValue().times(factor), Rational::plus);
        }
      }
    }
    from.values().removeIf(Rational::isZero);
    return new Row(polynomial, from);
  }
}
