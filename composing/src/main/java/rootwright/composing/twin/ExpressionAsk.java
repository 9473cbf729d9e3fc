package rootwright.composing.twin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * An ask that is not symmetric: a function of named roots in lowest terms.
 *
 * @param n the number of roots
 * @param function unknown k stands for the k-th root, from 0
 */
record ExpressionAsk(int n, RationalFunction function) implements AskForm {

  /** Most roots that are renamed in all ways; of more, only those that occur are moved to front. */
  private static final int MOST_RENAMED = 5;

  static ExpressionAsk of(int n, RationalFunction written) {
    return new ExpressionAsk(n, written);
  }

  /** The first in the alphabet of the texts under renaming the roots that occur. */
  @Override
  public String text() {
    List<Integer> occurring =
        IntStream.range(0, n)
            .filter(
                k -> function.numerator().degreeIn(k) > 0 || function.denominator().degreeIn(k) > 0)
            .boxed()
            .toList();
    int count = occurring.size();
    List<List<Integer>> orders =
        count <= MOST_RENAMED
            ? orders(IntStream.range(0, count).boxed().toList())
            : List.of(IntStream.range(0, count).boxed().toList());
    return orders.stream().map(order -> text(occurring, order)).min(String::compareTo).orElse("");
  }

  private String text(List<Integer> occurring, List<Integer> order) {
    int[] images = new int[n];
    for (int k = 0; k < occurring.size(); k++) {
      images[occurring.get(k)] = order.get(k);
    }
    RationalFunction renamed = function.rename(images).lowestTerms();
    List<String> names = IntStream.rangeClosed(1, n).mapToObj(k -> "r_" + k).toList();
    return PlainWriter.write(PolynomialFormula.of(renamed, names));
  }

  private static List<List<Integer>> orders(List<Integer> items) {
    if (items.isEmpty()) {
      return List.of(List.of());
    }
    List<List<Integer>> all = new ArrayList<>();
    for (Integer first : items) {
      List<Integer> rest = new ArrayList<>(items);
      rest.remove(first);
      for (List<Integer> order : orders(rest)) {
        List<Integer> whole = new ArrayList<>(List.of(first));
        whole.addAll(order);
        all.add(whole);
      }
    }
    return all;
  }

  @Override
  public Optional<AskForm> mirrored() {
    return Optional.of(
        new ExpressionAsk(
            n,
            new RationalFunction(
                mirrored(function.numerator()), mirrored(function.denominator()))));
  }

  @Override
  public Optional<AskForm> inverted() {
    int[] over = degrees(function.numerator());
    int[] under = degrees(function.denominator());
    return Optional.of(
        new ExpressionAsk(
            n,
            new RationalFunction(
                inverted(function.numerator(), over).times(power(under)),
                inverted(function.denominator(), under).times(power(over)))));
  }

  private int[] degrees(MultivariatePolynomial form) {
    return IntStream.range(0, n).map(k -> Math.max(0, form.degreeIn(k))).toArray();
  }

  private static MultivariatePolynomial power(int[] exponents) {
    return MultivariatePolynomial.term(Rational.ONE, Monomial.of(exponents));
  }

  private static MultivariatePolynomial mirrored(MultivariatePolynomial form) {
    Map<Monomial, Rational> terms = new HashMap<>();
    form.terms()
        .forEach(
            (monomial, coefficient) -> {
              int total = 0;
              for (int k = 0; k < monomial.length(); k++) {
                total += monomial.exponent(k);
              }
              terms.put(monomial, total % 2 == 0 ? coefficient : coefficient.negate());
            });
    return MultivariatePolynomial.of(terms);
  }

  /** The form at the reciprocals, times every root to the power of its degree. */
  private MultivariatePolynomial inverted(MultivariatePolynomial form, int[] degrees) {
    Map<Monomial, Rational> terms = new HashMap<>();
    form.terms()
        .forEach(
            (monomial, coefficient) -> {
              int[] exponents = degrees.clone();
              for (int k = 0; k < monomial.length(); k++) {
                exponents[k] -= monomial.exponent(k);
              }
              terms.put(Monomial.of(exponents), coefficient);
            });
    return MultivariatePolynomial.of(terms);
  }
}
