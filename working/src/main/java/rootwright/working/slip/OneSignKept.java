package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.symmetric.QuotientRecognition;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * Of an expression that turns into one other when names are exchanged, the sum and the square of
 * the difference are found, and the square root is taken with its positive sign only. Tong, Uyen,
 * Thi and Lai 2017 report lost solutions; that it is met here is common practice.
 */
final class OneSignKept implements Slip {

  private static final Rational HALF = Rational.of(1, 2);

  @Override
  public String name() {
    return "one-sign-kept";
  }

  @Override
  public String text() {
    return "A square root has two signs, and each belongs to a naming of the roots: both values are possible.";
  }

  @Override
  public Idea spot() {
    return Idea.SUM_AND_DIFFERENCE;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  public List<Rational> on(Asked asked) {
    return List.of();
  }

  @Override
  public List<? extends Answer> answers(Asked asked) {
    int n = asked.problem().degree();
    boolean named = asked.symmetric().isEmpty() && asked.quotient().isEmpty();
    return named && (n == 2 || n == 3)
        ? asked.expression().flatMap(ask -> larger(asked, ask)).stream().toList()
        : List.of();
  }

  /** The larger of the two values, if there are two and they are real. */
  private static Optional<Answer> larger(Asked asked, RationalFunction ask) {
    RationalFunction partner =
        ask.rename(asked.problem().degree() == 2 ? new int[] {1, 0} : new int[] {1, 0, 2});
    Optional<Rational> sum = value(asked, ask.plus(partner));
    Optional<Rational> square = value(asked, ask.minus(partner).power(2));
    return sum.isPresent() && square.isPresent() && square.get().signum() > 0
        ? Optional.of(new Answer.Exact(QuadraticSurd.of(sum.get().times(HALF), HALF, square.get())))
        : Optional.empty();
  }

  private static Optional<Rational> value(Asked asked, RationalFunction function) {
    return SymmetricQuotient.recognise(function, asked.problem().degree())
            instanceof QuotientRecognition.Symmetric recognised
        ? recognised.quotient().at(asked.problem().polynomial())
        : Optional.empty();
  }
}
