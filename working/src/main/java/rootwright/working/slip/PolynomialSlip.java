package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;

/** A slip that ends in a polynomial: the ask is a map, and its images are to be the new roots. */
interface PolynomialSlip extends Turning {

  /** Where the wrong turning leads, primitive; empty if there is nothing here on which to slip. */
  List<Polynomial> on(Asked asked);

  @Override
  default List<? extends Answer> answers(Asked asked) {
    return on(asked).stream()
        .map(polynomial -> new Answer.PolynomialIn(polynomial, asked.problem().unknown()))
        .toList();
  }
}
