package rootwright.working.slip;

import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;

/**
 * e_k read as (−1)^k·a_(n−k): the lead is not divided out. Reported by Tong, Uyen, Thi and Lai
 * 2017.
 */
final class LeadForgotten extends Misreading {

  @Override
  public String name() {
    return "lead-forgotten";
  }

  @Override
  public String text() {
    return "Divide every coefficient by the lead before reading e₁, e₂, … off.";
  }

  @Override
  public int weight() {
    return 20;
  }

  @Override
  Optional<Polynomial> misread(Problem problem) {
    Polynomial p = problem.polynomial();
    return Optional.of(
        p.minus(Polynomial.monomial(p.lead(), p.degree()))
            .plus(Polynomial.monomial(Rational.ONE, p.degree())));
  }
}
