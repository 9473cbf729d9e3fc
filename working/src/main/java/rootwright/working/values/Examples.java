package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;

/** Two sets of numbers with the same data and different values of the ask. */
final class Examples {

  private static final long[] SMALL = {0, 1, -1, 2, -2, 3};

  private final SymmetricData data;
  private final SymmetricQuotient ask;
  private final List<List<Rational>> points = new ArrayList<>();
  private final List<Rational> values = new ArrayList<>();

  private Examples(SymmetricData data, SymmetricQuotient ask) {
    this.data = data;
    this.ask = ask;
  }

  /** A phrase with two examples; empty if none are found in small numbers. */
  static Optional<String> of(SymmetricData data, Formula shown, SymmetricQuotient ask) {
    Examples search = new Examples(data, ask);
    search.from(Elimination.equations(data), 1);
    return search.points.size() < 2
        ? Optional.empty()
        : Optional.of(
            "%s is %s if the numbers are the roots of %s, but %s if they are those of %s"
                .formatted(
                    UnicodeWriter.write(shown),
                    search.value(0),
                    search.polynomial(0),
                    search.value(1),
                    search.polynomial(1)));
  }

  private void from(List<MultivariatePolynomial> system, int k) {
    Optional<Ideal> ideal = Ideal.of(system, data.count() + 1);
    if (points.size() == 2 || ideal.isEmpty() || ideal.get().isEverything()) {
      return;
    }
    if (k > data.count()) {
      found(ideal.get());
      return;
    }
    MultivariatePolynomial unknown = MultivariatePolynomial.unknown(k - 1);
    if (ideal.get().constant(unknown).isPresent()) {
      from(system, k + 1);
      return;
    }
    for (long value : SMALL) {
      List<MultivariatePolynomial> more = new ArrayList<>(system);
      more.add(unknown.minus(MultivariatePolynomial.constant(Rational.of(value))));
      from(more, k + 1);
    }
  }

  private void found(Ideal ideal) {
    List<Rational> point = new ArrayList<>();
    for (int k = 0; k < data.count(); k++) {
      Optional<Rational> value = ideal.constant(MultivariatePolynomial.unknown(k));
      if (value.isEmpty()) {
        return;
      }
      point.add(value.get());
    }
    Rational under = ask.denominator().toElementary().polynomial().at(point);
    if (!under.isZero()) {
      Rational value = ask.numerator().toElementary().polynomial().at(point).over(under);
      if (!values.contains(value)) {
        points.add(point);
        values.add(value);
      }
    }
  }

  private String value(int place) {
    return UnicodeWriter.write(Formula.number(values.get(place)));
  }

  private String polynomial(int place) {
    return UnicodeWriter.write(
        PolynomialFormula.of(data.polynomial(points.get(place)), data.unknown()));
  }
}
