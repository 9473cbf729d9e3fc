package rootwright.working.inequality;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial as a quadratic form in the letters, or in their squares or products of pairs, and in
 * 1 if it is not homogeneous.
 *
 * @param quantities what the form is quadratic in, as it is written
 * @param form its symmetric matrix; absent if the polynomial has no such shape
 */
record QuadraticShape(List<Formula> quantities, Optional<List<List<Rational>>> form) {

  QuadraticShape {
    quantities = List.copyOf(quantities);
  }

  /** The shape of a polynomial. */
  static QuadraticShape of(MultivariatePolynomial polynomial, List<String> letters) {
    for (int half : new int[] {1, 2}) {
      Optional<QuadraticShape> found = of(polynomial, letters, half);
      if (found.isPresent()) {
        return found.get();
      }
    }
    return new QuadraticShape(List.of(), Optional.empty());
  }

  /** With the powers of the letters, all with this exponent, and 1 for quantities. */
  private static Optional<QuadraticShape> of(
      MultivariatePolynomial polynomial, List<String> letters, int exponent) {
    Map<Integer, Integer> places = new LinkedHashMap<>();
    boolean constant = false;
    for (Monomial monomial : polynomial.terms().keySet()) {
      int degree = 0;
      for (int k = 0; k < monomial.length(); k++) {
        if (monomial.exponent(k) % exponent != 0) {
          return Optional.empty();
        }
        degree += monomial.exponent(k) / exponent;
        if (monomial.exponent(k) > 0) {
          places.putIfAbsent(k, 0);
        }
      }
      if (degree > 2) {
        return Optional.empty();
      }
      constant |= degree < 2;
    }
    List<Integer> order = new ArrayList<>(new TreeSet<>(places.keySet()));
    int n = order.size() + (constant ? 1 : 0);
    List<List<Rational>> form = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      List<Rational> row = new ArrayList<>();
      for (int j = 0; j < n; j++) {
        row.add(Rational.ZERO);
      }
      form.add(row);
    }
    int one = n - 1;
    for (Map.Entry<Monomial, Rational> term : polynomial.terms().entrySet()) {
      List<Integer> factors = new ArrayList<>();
      for (int k = 0; k < term.getKey().length(); k++) {
        for (int j = 0; j < term.getKey().exponent(k) / exponent; j++) {
          factors.add(order.indexOf(k));
        }
      }
      while (factors.size() < 2) {
        factors.add(one);
      }
      int i = factors.get(0);
      int j = factors.get(1);
      if (i == j) {
        form.get(i).set(i, term.getValue());
      } else {
        form.get(i).set(j, term.getValue().over(Rational.TWO));
        form.get(j).set(i, term.getValue().over(Rational.TWO));
      }
    }
    List<Formula> quantities = new ArrayList<>();
    for (int k : order) {
      Formula name = Formula.name(letters.get(k));
      quantities.add(exponent == 1 ? name : name.power(exponent));
    }
    if (constant) {
      quantities.add(Formula.number(1));
    }
    return Optional.of(new QuadraticShape(quantities, Optional.of(form)));
  }

  int size() {
    return quantities.size();
  }

  /** Whether the last quantity is 1, which is never 0. */
  boolean hasConstant() {
    return !quantities.isEmpty() && quantities.get(quantities.size() - 1).equals(Formula.number(1));
  }

  /** The sum of squares as it is written. */
  Formula written(Squares squares) {
    List<Formula> terms = new ArrayList<>();
    for (Squares.Term term : squares.terms()) {
      // A common denominator of the linear form goes into the factor.
      Rational scale = commonDenominator(term);
      Rational factor = term.factor().over(scale.times(scale));
      Formula square = linear(term, scale).power(2);
      terms.add(factor.isOne() ? square : Formula.number(factor).times(square));
    }
    return terms.isEmpty() ? Formula.number(0) : Formula.sum(terms);
  }

  private static Rational commonDenominator(Squares.Term term) {
    BigInteger common = BigInteger.ONE;
    for (Rational c : term.linear()) {
      common = common.multiply(c.denominator()).divide(common.gcd(c.denominator()));
    }
    return Rational.of(common);
  }

  private Formula linear(Squares.Term term, Rational scale) {
    List<Formula> parts = new ArrayList<>();
    for (int k = 0; k < quantities.size(); k++) {
      Rational c = term.linear().get(k).times(scale);
      if (!c.isZero()) {
        parts.add(
            c.isOne()
                ? quantities.get(k)
                : c.equals(Rational.MINUS_ONE)
                    ? new Formula.Negative(quantities.get(k))
                    : Formula.number(c).times(quantities.get(k)));
      }
    }
    return NormalForm.of(Formula.sum(parts));
  }

  /** “exactly when a = b”. */
  String equality(Squares squares) {
    if (squares.terms().isEmpty()) {
      return "always";
    }
    List<String> zeros = new ArrayList<>();
    boolean differences = true;
    for (Squares.Term term : squares.terms()) {
      differences &=
          term.linear().stream().filter(c -> !c.isZero()).count() == 2
              && term.linear().stream().reduce(Rational.ZERO, Rational::plus).isZero();
      Rational scale = commonDenominator(term);
      zeros.add(UnicodeWriter.write(Formula.equation(linear(term, scale), Formula.number(0))));
    }
    if (differences && size() <= 4 && squares.terms().size() >= size() - 1) {
      return "exactly when "
          + UnicodeWriter.write(Formula.equation(quantities.toArray(Formula[]::new)));
    }
    if (hasConstant() && squares.terms().size() == size()) {
      return "never";
    }
    return "exactly when " + LetterNames.joined(zeros);
  }
}
