package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/**
 * A wrong turning that students do take, run as a computation on the problem at hand.
 *
 * <p>A slip does not know the right answer and does not care: whoever runs it finds out whether the
 * wrong turning shows or happens to be harmless.
 */
public interface Slip {

  /** Stable short name, lower case with hyphens: {@code lead-forgotten}. */
  String name();

  /** The wrong thought and its mend, one or two sentences to a student. */
  String text();

  /** The idea on whose line the slip lurks. */
  Idea spot();

  /**
   * How often it is met in a hundred, before any answers are in: a judgement of practice that
   * observed shares are to replace.
   */
  int weight();

  /**
   * Takes the wrong turning.
   *
   * @return where it leads, the likeliest first; empty if there is nothing here on which to slip
   */
  List<Rational> on(Asked asked);

  /**
   * The polynomial that whoever takes this wrong turning works with from then on, so that a second
   * slip can be taken on it; empty if this slip does not misread the polynomial, or would misread
   * it into one of another degree.
   */
  default Optional<Polynomial> polynomialTaken(Problem problem) {
    return Optional.empty();
  }
}
