package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;

/**
 * A wrong turning that students do take, run as a computation on the problem at hand.
 *
 * <p>A slip does not know the right answer and does not care: whoever runs it finds out whether the
 * wrong turning shows or happens to be harmless.
 */
public interface Slip extends Turning {

  /**
   * Takes the wrong turning.
   *
   * @return where it leads, the likeliest first; empty if there is nothing here on which to slip
   */
  List<Rational> on(Asked asked);

  @Override
  default List<? extends Answer> answers(Asked asked) {
    return on(asked).stream().map(Answer::exact).toList();
  }

  /**
   * The polynomial that whoever takes this wrong turning works with from then on, so that a second
   * slip can be taken on it; empty if this slip does not misread the polynomial, or would misread
   * it into one of another degree.
   */
  default Optional<Polynomial> polynomialTaken(Problem problem) {
    return Optional.empty();
  }
}
