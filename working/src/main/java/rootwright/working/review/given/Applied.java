package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial that lines may apply to something.
 *
 * @param name P, Q
 * @param ascending its coefficients, functions of the unknowns
 * @param roots the spellings of all its roots; empty if they have no names
 */
record Applied(String name, List<MultivariatePolynomial> ascending, List<String> roots) {

  Applied {
    ascending = List.copyOf(ascending);
    roots = List.copyOf(roots);
  }

  int degree() {
    return ascending.size() - 1;
  }

  MultivariatePolynomial lead() {
    return ascending.get(degree());
  }

  /** The discriminant by the coefficients, for degrees 2 and 3; zero for others. */
  MultivariatePolynomial discriminant() {
    if (degree() == 2) {
      MultivariatePolynomial b = ascending.get(1);
      return b.times(b).minus(lead().times(ascending.get(0)).times(Rational.of(4)));
    } else if (degree() == 3) {
      MultivariatePolynomial a = lead();
      MultivariatePolynomial b = ascending.get(2);
      MultivariatePolynomial c = ascending.get(1);
      MultivariatePolynomial d = ascending.get(0);
      return b.power(2)
          .times(c.power(2))
          .minus(a.times(c.power(3)).times(Rational.of(4)))
          .minus(b.power(3).times(d).times(Rational.of(4)))
          .minus(a.power(2).times(d.power(2)).times(Rational.of(27)))
          .plus(a.times(b).times(c).times(d).times(Rational.of(18)));
    }
    return MultivariatePolynomial.ZERO;
  }

  /** The polynomial at an unknown. */
  MultivariatePolynomial at(MultivariatePolynomial point) {
    MultivariatePolynomial value = MultivariatePolynomial.ZERO;
    for (int k = degree(); k >= 0; k--) {
      value = value.times(point).plus(ascending.get(k));
    }
    return value;
  }

  /** The coefficients of the derivative. */
  List<MultivariatePolynomial> derivative(int order) {
    List<MultivariatePolynomial> now = ascending;
    for (int k = 0; k < order; k++) {
      List<MultivariatePolynomial> next = new ArrayList<>();
      for (int power = 1; power < now.size(); power++) {
        next.add(now.get(power).times(Rational.of(power)));
      }
      now = next;
    }
    return now;
  }
}
