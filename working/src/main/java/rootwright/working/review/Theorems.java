package rootwright.working.review;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.problem.Problem;

/**
 * Polynomials in the roots that are zero by what every student of the subject knows: P(r) = 0 times
 * a power of r, its sum over the roots, and Newton's identities, with the numbers of the problem.
 */
final class Theorems {

  /** Highest power of a root up to which they are listed. */
  private static final int HIGHEST = 40;

  private final Problem problem;

  Theorems(Problem problem) {
    this.problem = problem;
  }

  /** One polynomial that is zero, and why. */
  record Vanishing(MultivariatePolynomial polynomial, String why) {}

  /** Those that may matter for a polynomial of this degree. */
  List<Vanishing> upTo(int degree) {
    List<Vanishing> all = new ArrayList<>();
    int n = problem.degree();
    Polynomial p = problem.polynomial();
    for (int j = 0; j + n <= Math.min(degree, HIGHEST); j++) {
      Polynomial times = p.times(Polynomial.monomial(Rational.ONE, j));
      MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
      for (int root = 0; root < n; root++) {
        MultivariatePolynomial at = MultivariatePolynomial.of(times, root);
        all.add(new Vanishing(at, "P(" + problem.roots().get(root) + ") = 0"));
        sum = sum.plus(at);
      }
      all.add(new Vanishing(sum, "P(r) = 0 added up over the roots"));
    }
    for (int k = 2; k < n && k <= degree; k++) {
      all.add(new Vanishing(newton(k), "Newton's identity"));
    }
    return all;
  }

  /** a·p_k + a_{n−1} p_{k−1} + … + k·a_{n−k}, which is zero for k < n (Newton). */
  private MultivariatePolynomial newton(int k) {
    int n = problem.degree();
    Polynomial p = problem.polynomial();
    MultivariatePolynomial sum =
        MultivariatePolynomial.constant(p.coefficient(n - k).times(Rational.of(k)));
    for (int j = 0; j < k; j++) {
      sum = sum.plus(SymmetricPolynomial.powerSum(n, k - j).expand().times(p.coefficient(n - j)));
    }
    return sum;
  }
}
