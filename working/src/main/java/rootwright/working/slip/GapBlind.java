package rootwright.working.slip;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;

/**
 * Missing terms are passed over, so that later coefficients are read one place too early. Common
 * practice.
 */
final class GapBlind extends Misreading {

  @Override
  public String name() {
    return "gap-blind";
  }

  @Override
  public String text() {
    return "A missing power has the coefficient 0 and keeps its place.";
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  Optional<Polynomial> misread(Problem problem) {
    Polynomial p = problem.polynomial();
    List<Rational> present = new ArrayList<>();
    for (int k = p.degree(); k >= 0; k--) {
      if (!p.coefficient(k).isZero()) {
        present.add(p.coefficient(k));
      }
    }
    if (present.size() == p.degree() + 1) {
      return Optional.empty();
    }
    while (present.size() <= p.degree()) {
      present.add(Rational.ZERO);
    }
    Collections.reverse(present);
    return Optional.of(Polynomial.ofAscending(present));
  }
}
