package rootwright.working.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.step.Claim;

/** What follows from equations, said by both checks. */
class ConsequenceTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_125L);
  private static final MultivariatePolynomial R = MultivariatePolynomial.unknown(0);
  private static final MultivariatePolynomial S = MultivariatePolynomial.unknown(1);
  private static final MultivariatePolynomial K = MultivariatePolynomial.unknown(2);

  private static MultivariatePolynomial number(long value) {
    return MultivariatePolynomial.constant(Rational.of(value));
  }

  private static List<Verdict> verdicts(
      List<MultivariatePolynomial> equations, MultivariatePolynomial conclusion) {
    Claim claim = new Claim.Consequence(3, equations, conclusion);
    return List.of(new ExactCheck().of(claim), new EnclosureCheck().of(claim));
  }

  /** r + s = −k and rs = 6 give r² + s² = k² − 12, and not k² − 6. */
  @Test
  void bothChecksTellTheRightSumOfSquaresFromTheOneWithACrossTermForgotten() {
    List<MultivariatePolynomial> given = List.of(R.plus(S).plus(K), R.times(S).minus(number(6)));
    MultivariatePolynomial squares = R.power(2).plus(S.power(2));
    assertThat(verdicts(given, squares.minus(K.power(2)).plus(number(12))))
        .allMatch(Verdict::isConfirmed);
    assertThat(verdicts(given, squares.minus(K.power(2)).plus(number(6))))
        .allMatch(verdict -> verdict instanceof Verdict.Refuted);
  }

  @Test
  void whatHoldsAtOneSolutionOnlyDoesNotFollow() {
    List<MultivariatePolynomial> given =
        List.of(K.power(2).minus(number(4)), R.minus(K), S.plus(K));
    assertThat(verdicts(given, K.minus(number(2))))
        .allMatch(verdict -> verdict instanceof Verdict.Refuted);
    assertThat(verdicts(given, K.minus(number(2)).times(K.plus(number(2)))))
        .allMatch(Verdict::isConfirmed);
  }

  @Test
  void aMultipleZeroIsAZeroAllTheSame() {
    assertThat(verdicts(List.of(K.minus(number(5)).power(3), R, S), K.minus(number(5))))
        .allMatch(Verdict::isConfirmed);
  }

  @Test
  void everyCombinationOfEquationsFollowsAndOneMoreDoesNot() {
    SplittableRandom random = new SplittableRandom(SEED);
    List<MultivariatePolynomial> unknowns = List.of(R, S, K);
    for (int sample = 0; sample < 25; sample++) {
      List<MultivariatePolynomial> given = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        given.add(
            unknowns
                .get(k)
                .power(k + 1)
                .minus(number(random.nextLong(1, 6)))
                .minus(unknowns.get((k + 1) % 3).times(Rational.of(random.nextLong(-2, 3)))));
      }
      MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
      for (MultivariatePolynomial equation : given) {
        MultivariatePolynomial factor =
            unknowns.get(random.nextInt(3)).plus(number(random.nextLong(-3, 4)));
        sum = sum.plus(equation.times(factor));
      }
      String message = "sample %d, seed %d".formatted(sample, SEED);
      assertThat(verdicts(given, sum)).as(message).allMatch(Verdict::isConfirmed);
      assertThat(verdicts(given, sum.plus(number(1))))
          .as(message)
          .allMatch(verdict -> verdict instanceof Verdict.Refuted);
    }
  }
}
