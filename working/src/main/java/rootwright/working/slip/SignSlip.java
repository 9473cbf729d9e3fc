package rootwright.working.slip;

import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;

/**
 * e_k read as +a_(n−k)/a for odd k as well: the signs do not alternate. Reported for grades 10 and
 * 12 by Tong, Uyen, Thi and Lai, European J. of Education Studies 3(11), 2017.
 */
final class SignSlip extends Misreading {

  @Override
  public String name() {
    return "sign-slip";
  }

  @Override
  public String text() {
    return "The signs alternate: the sum of the roots is minus the second coefficient over the lead. Read with plus signs, every root has the wrong sign.";
  }

  @Override
  public int weight() {
    return 20;
  }

  @Override
  Optional<Polynomial> misread(Problem problem) {
    return Optional.of(problem.polynomial().compose(Polynomial.X.negate()));
  }
}
