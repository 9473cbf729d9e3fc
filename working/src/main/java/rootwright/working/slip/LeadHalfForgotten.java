package rootwright.working.slip;

import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;

/** The lead is divided out of e₁ only. Common practice. */
final class LeadHalfForgotten extends Misreading {

  @Override
  public String name() {
    return "lead-half-forgotten";
  }

  @Override
  public String text() {
    return "The lead divides every coefficient, not only the first that is read.";
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  Optional<Polynomial> misread(Problem problem) {
    Polynomial p = problem.polynomial();
    int n = p.degree();
    if (n < 2) {
      return Optional.empty();
    }
    Polynomial below =
        p.minus(Polynomial.monomial(p.lead(), n))
            .minus(Polynomial.monomial(p.coefficient(n - 1), n - 1));
    return Optional.of(
        below
            .plus(Polynomial.monomial(Rational.ONE, n))
            .plus(Polynomial.monomial(p.coefficient(n - 1).over(p.lead()), n - 1)));
  }
}
