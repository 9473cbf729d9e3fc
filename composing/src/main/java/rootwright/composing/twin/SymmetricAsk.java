package rootwright.composing.twin;

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
import rootwright.algebra.symmetric.SymmetricQuotient;

/**
 * A symmetric ask, written in e_1, …, e_n in lowest terms; by the fundamental theorem on symmetric
 * polynomials there is one such form for each function.
 *
 * @param n the number of roots
 * @param function unknown k − 1 stands for e_k
 */
record SymmetricAsk(int n, RationalFunction function) implements AskForm {

  SymmetricAsk {
    function =
        function.denominator().terms().size() == 1
            ? overOneTerm(function.numerator(), function.denominator())
            : function.lowestTerms();
  }

  /** In lowest terms; over a single term only powers of the e_k can cancel. */
  private static RationalFunction overOneTerm(
      MultivariatePolynomial over, MultivariatePolynomial under) {
    Monomial below = under.terms().firstKey();
    Rational factor = under.coefficient(below).reciprocal();
    int[] common = new int[below.length()];
    for (int k = 0; k < common.length; k++) {
      int here = k;
      common[k] =
          over.terms().keySet().stream()
              .mapToInt(monomial -> exponent(monomial, here))
              .min()
              .orElse(0);
      common[k] = Math.min(common[k], below.exponent(k));
    }
    Map<Monomial, Rational> terms = new HashMap<>();
    over.terms()
        .forEach(
            (monomial, coefficient) ->
                terms.put(without(monomial, common), coefficient.times(factor)));
    return new RationalFunction(
        MultivariatePolynomial.of(terms),
        MultivariatePolynomial.term(Rational.ONE, without(below, common)));
  }

  private static Monomial without(Monomial monomial, int[] common) {
    int[] exponents = new int[Math.max(monomial.length(), common.length)];
    for (int k = 0; k < exponents.length; k++) {
      exponents[k] = exponent(monomial, k) - (k < common.length ? common[k] : 0);
    }
    return Monomial.of(exponents);
  }

  private static int exponent(Monomial monomial, int k) {
    return k < monomial.length() ? monomial.exponent(k) : 0;
  }

  static SymmetricAsk of(int n, SymmetricQuotient quotient) {
    return new SymmetricAsk(
        n,
        new RationalFunction(
            quotient.numerator().toElementary().polynomial(),
            quotient.denominator().toElementary().polynomial()));
  }

  @Override
  public String text() {
    List<String> names = IntStream.rangeClosed(1, n).mapToObj(k -> "e_" + k).toList();
    return PlainWriter.write(PolynomialFormula.of(function, names));
  }

  /** e_k changes its sign for odd k. */
  @Override
  public Optional<AskForm> mirrored() {
    return Optional.of(
        new SymmetricAsk(
            n,
            new RationalFunction(
                mirrored(function.numerator()), mirrored(function.denominator()))));
  }

  /** e_k becomes e_(n−k)/e_n. */
  @Override
  public Optional<AskForm> inverted() {
    int over = function.numerator().degree();
    int under = function.denominator().degree();
    MultivariatePolynomial product = MultivariatePolynomial.unknown(n - 1);
    return Optional.of(
        new SymmetricAsk(
            n,
            new RationalFunction(
                inverted(function.numerator(), over)
                    .times(product.power(Math.max(0, under - over))),
                inverted(function.denominator(), under)
                    .times(product.power(Math.max(0, over - under))))));
  }

  private static MultivariatePolynomial mirrored(MultivariatePolynomial form) {
    Map<Monomial, Rational> terms = new HashMap<>();
    form.terms()
        .forEach(
            (monomial, coefficient) -> {
              int odd = 0;
              for (int k = 0; k < monomial.length(); k += 2) {
                odd += monomial.exponent(k);
              }
              terms.put(monomial, odd % 2 == 0 ? coefficient : coefficient.negate());
            });
    return MultivariatePolynomial.of(terms);
  }

  /** The form at e_(n−k)/e_n, times e_n to the power of its degree. */
  private MultivariatePolynomial inverted(MultivariatePolynomial form, int degree) {
    Map<Monomial, Rational> terms = new HashMap<>();
    form.terms()
        .forEach(
            (monomial, coefficient) -> {
              int[] exponents = new int[n];
              int total = 0;
              for (int k = 1; k <= monomial.length(); k++) {
                int times = monomial.exponent(k - 1);
                total += times;
                if (k < n) {
                  exponents[n - k - 1] += times;
                }
              }
              exponents[n - 1] += degree - total;
              terms.merge(Monomial.of(exponents), coefficient, Rational::plus);
            });
    return MultivariatePolynomial.of(terms);
  }
}
