package rootwright.working.letters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.check.ClaimCheck;
import rootwright.working.check.Verdict;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;
import rootwright.working.step.Claim;
import rootwright.working.step.LetterInterval;
import rootwright.working.step.RootPlace;

/** Conditions on the roots as coaches write them. */
class ConditionsInWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Worked out by hand from D = 4(k − 2)(k + 1), r + s = 2k, rs = k + 2, P(c) = c² + 2 − (2c
        // − 1)k.
        "x^2-2kx+k+2; the roots are real and distinct; k < -1, k > 2",
        "x^2-2kx+k+2; it has two different real roots; k < -1, k > 2",
        "x^2-2kx+k+2; roots real and equal; -1 or 2",
        "x^2-2kx+k+2; it has equal roots; -1 or 2",
        "x^2-2kx+k+2; the roots coincide; -1 or 2",
        "x^2-2kx+k+2; it is a perfect square; -1 or 2",
        "x^2-2kx+k+2; the roots are not real; -1 < k < 2",
        "x^2-2kx+k+2; it has imaginary roots; -1 < k < 2",
        "x^2-2kx+k+2; it has no real solution; -1 < k < 2",
        "x^2-2kx+k+2; at least one root is real; k <= -1, k >= 2",
        "x^2-2kx+k+2; it has a real root; k <= -1, k >= 2",
        "x^2-2kx+k+2; both roots positive; k >= 2",
        "x^2-2kx+k+2; the roots are both positive; k >= 2",
        "x^2-2kx+k+2; its roots are both negative; -2 < k <= -1",
        "x^2-2kx+k+2; the roots have the same sign; -2 < k <= -1, k >= 2",
        "x^2-2kx+k+2; at least one root is positive; k < -2, k >= 2",
        "x^2-2kx+k+2; it has a positive root; k < -2, k >= 2",
        "x^2-2kx+k+2; no root is positive; -2 <= k < 2",
        "x^2-2kx+k+2; both roots are greater than 1; 2 <= k < 3",
        "x^2-2kx+k+2; both roots exceed 1; 2 <= k < 3",
        "x^2-2kx+k+2; both roots are less than 5; k <= -1, 2 <= k < 3",
        "x^2-2kx+k+2; the roots lie between 0 and 4; 2 <= k < 18/7",
        "x^2-2kx+k+2; both roots are in the interval (0, 4); 2 <= k < 18/7",
        "x^2-2kx+k+2; exactly one root lies between 0 and 1; k < -2, k > 3",
        "x^2-2kx+k+2; 2 lies between the roots; k > 2",
        "x^2-2kx+k+2; one root is less than 2 and the other is greater than 2; k > 2",
        "x^2-2kx+k+2; the roots lie on either side of 2; k > 2",
        "x^2-2kx+k-2; the roots are of opposite sign; k < 2",
        "x^2-2kx+k-2; the roots have opposite signs; k < 2",
        "x^2-2kx+k-2; one root is positive and the other negative; k < 2",
        "x^2-2kx+k-2; there is one positive and one negative root; k < 2",
        "x^2-2kx+k-2; it has exactly one positive root; k <= 2",
        "x^2+(k-2)x-9; the roots are equal in size and opposite in sign; 2",
        "x^2+(k-2)x-9; the roots are equal in magnitude but opposite in sign; 2",
        "x^2+(k-2)x-9; the roots are numerically equal and opposite in sign; 2",
        "x^2+(k-2)x-9; the sum of the roots is zero; 2",
        "x^2+kx+10; one root exceeds the other by 3; -7 or 7",
        "x^2+kx+10; one root is 3 more than the other; -7 or 7",
        "x^2+kx+10; the difference of the roots is 3; -7 or 7",
        "x^2+kx+10; the difference between the roots equals 3; -7 or 7",
        "x^2+kx+10; the roots differ by 3; -7 or 7",
        "x^2+kx+12; the roots are consecutive integers; -7 or 7",
        "x^2+kx+48; the roots are consecutive even integers; -14 or 14",
        "x^2+kx+35; its roots are two consecutive odd numbers; -12 or 12",
        "x^2+kx+35; its roots are two consecutive even numbers; no such value",
        "x^2+kx+54; the roots are in the ratio 2:3; -15 or 15",
        "x^2+kx+54; the ratio of the roots is 2 to 3; -15 or 15",
        "x^2-6x+k; the sum of the squares of the roots is 20; 8",
        "x^2-6x+k; the product of the roots is twice their sum; 12",
        "x^2-6x+k; the sum of the reciprocals of the roots is 3/2; 4",
        "3x^2-10x+k; the roots are reciprocals of each other; 3",
        "x^2-6x+k; one root is three times as large as the other; 27/4",
        "x^2-6x+k; one root is 3 more than twice the other; 5",
        "x^2-6x+k; one root is 3 less than twice the other; 9",
        "x^3-12x^2+47x+k; the roots are the sides of a right triangle; -60",
        "x^3-6x^2+kx+12; the sum of two of the roots is zero; -2",
        "x^3-6x^2+kx+12; the product of two roots is 6; -10",
        "x^3-6x^2+kx-6; the roots are consecutive integers; 11",
        "x^3-6x^2+kx-6; the roots are in the ratio 1:2:3; 11",
        "x^3-3x+k; all roots lie between -2 and 2; -2 < k < 2",
        "x^3-3x+k; it has exactly two distinct real roots; -2 or 2",
      })
  void whatCoachesWriteIsUnderstood(String polynomial, String condition, String answer)
      throws UnreadableException {
    Solution solution = Lettered.work(polynomial, "k if " + condition);
    assertThat(Lettered.text(solution)).isEqualTo(answer);
    assertThat(solution.routes()).as("a working").isNotEmpty();
    assertThat(solution.statement()).doesNotContain("null");
  }

  private static Stream<Arguments> placesOfRoots() {
    // Number of distinct roots of x² − 2kx + k + 2 in (low, high), by Sturm's theorem.
    return Stream.of(
        Arguments.of("both roots positive", within(RootPlace.POSITIVE, 2)),
        Arguments.of("both roots less than 5", within(RootPlace.below(Rational.of(5)), 2)),
        Arguments.of(
            "both roots lie between -1 and 3",
            within(RootPlace.between(Rational.of(-1), Rational.of(3)), 2)),
        Arguments.of(
            "exactly one root lies between 0 and 1",
            within(RootPlace.between(Rational.ZERO, Rational.ONE), 1)),
        Arguments.of("no root is positive", within(RootPlace.POSITIVE, 0)));
  }

  /** All k but those with a double root, where a count of distinct roots is another. */
  private static Predicate<Rational> within(RootPlace place, int count) {
    return k -> {
      SturmSequence sturm =
          SturmSequence.of(
              Polynomial.ofAscending(List.of(k.plus(Rational.TWO), k.times(-2), Rational.ONE)));
      Rational low = place.low().orElse(Rational.of(-1000));
      Rational high = place.high().orElse(Rational.of(1000));
      return sturm.countIn(low, high) == count;
    };
  }

  @ParameterizedTest
  @MethodSource("placesOfRoots")
  void regionsAgreeWithSturmsCountAtSampledLetters(String words, Predicate<Rational> holds)
      throws UnreadableException {
    Answer answer = Lettered.work("x^2-2kx+k+2", "k if " + words).answer();
    long seed = Long.getLong("rootwright.seed", 20_263L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 60; sample++) {
      Rational k = Rational.of(random.nextInt(-800, 801), 97);
      assertThat(belongs(k, ((Answer.Interval) answer).condition()))
          .as("%s at %s, seed %d", words, k, seed)
          .isEqualTo(holds.test(k));
    }
  }

  /** Whether a number satisfies a region as it is written; all numbers in it are rational here. */
  private static boolean belongs(Rational k, Formula region) {
    if (region instanceof Formula.Listing listing) {
      return listing.items().stream().anyMatch(item -> belongs(k, item));
    }
    Formula.Relation relation = (Formula.Relation) region;
    for (int at = 0; at < relation.comparisons().size(); at++) {
      int sign =
          number(relation.sides().get(at), k).compareTo(number(relation.sides().get(at + 1), k));
      boolean holds =
          switch (relation.comparisons().get(at)) {
            case LESS -> sign < 0;
            case AT_MOST -> sign <= 0;
            case GREATER -> sign > 0;
            case AT_LEAST -> sign >= 0;
            default -> sign == 0;
          };
      if (!holds) {
        return false;
      }
    }
    return true;
  }

  private static Rational number(Formula side, Rational k) {
    return side instanceof Formula.Name
        ? k
        : side instanceof Formula.Negative negative
            ? number(negative.of(), k).negate()
            : side instanceof Formula.Quotient quotient
                ? number(quotient.over(), k).over(number(quotient.under(), k))
                : ((Formula.Numeral) side).value();
  }

  @Test
  void theSignsOfSumAndProductAreTheShorterRouteForAQuadratic() throws UnreadableException {
    Solution solution = Lettered.work("x^2-2kx+k+2", "k if both roots positive");
    assertThat(solution.routes()).extracting(Working::route).first().isEqualTo("signs");
  }

  @Test
  void aForgottenDiscriminantAndAForgottenSumAreSlips() throws UnreadableException {
    // Sum 2k − 2 > 0 and P(1) = 3 − k > 0 alone; D ≥ 0 and P(1) > 0 alone.
    assertThat(Lettered.slips(Lettered.work("x^2-2kx+k+2", "k if both roots greater than 1")))
        .contains("existence-unchecked 1 < k < 3", "sum-forgotten k <= -1, 2 <= k < 3");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x^2-6x+k; number of positive integers k if the roots are real; 9",
        "x^2-6x+k; how many integers k if both roots are positive; 9",
        "x^2-6x+k; k if roots real and k positive; 0 < k <= 9",
        "x^2-kx+9; greatest integer k if the roots are not real; 5",
        "x^2-2kx+k+2; least integer k if both roots exceed 1; 2",
        "x^2-2kx+k+2; Find all real values of k for which both roots are positive; k >= 2",
        "x^2-2kx+k+2; For which k are both roots positive?; k >= 2",
        "x^2-2kx+k+2; the set of values of k such that r > 0, s > 0; k >= 2",
        "x^2-(k+1)x+k; k if r > 2; k > 2",
        "x^2-5x+k; k if |r-s| = 3; 4",
        "x^2-5x+k; k if the larger root is 4; 4",
        "x^2-5x+k; k if the larger root is 1; no such value",
        "x^2+ax+b; a, b if the roots are a and b; a = 0, b = 0 or a = 1, b = -2",
        "x^3+ax^2+bx+6; a, b if two of the roots are 1 and 2; a = 0, b = -7",
      })
  void asksAreReadAsOneSaysThem(String polynomial, String find, String answer)
      throws UnreadableException {
    assertThat(Lettered.answer(polynomial, find)).isEqualTo(answer);
  }

  @Test
  void wrongSignsAreRefutedByBothChecks() {
    Polynomial k = Polynomial.X;
    List<LetterInterval> positive = LetterRegion.whereSign(k, sign -> sign > 0);
    for (ClaimCheck check : List.of(new ExactCheck(), new EnclosureCheck())) {
      assertThat(check.of(new Claim.SignOn(k, Formula.Comparison.GREATER, positive)))
          .isInstanceOf(Verdict.Confirmed.class);
      assertThat(check.of(new Claim.SignOn(k, Formula.Comparison.LESS, positive)))
          .isInstanceOf(Verdict.Refuted.class);
      assertThat(
              check.of(
                  new Claim.SignOn(
                      k,
                      Formula.Comparison.GREATER,
                      List.of(LetterInterval.point(new RationalValue(Rational.ONE))))))
          .isInstanceOf(Verdict.Refuted.class);
    }
  }

  @Test
  void wrongCountsInAPlaceAreRefutedByBothChecks() {
    // (x − 1)(x − 3): one root between 0 and 3, as the end is left out.
    Polynomial p = Polynomial.ofDescending(1, -4, 3);
    RootPlace place = RootPlace.between(Rational.ZERO, Rational.of(3));
    for (ClaimCheck check : List.of(new ExactCheck(), new EnclosureCheck())) {
      assertThat(check.of(new Claim.CountInPlace(p, place, 1)))
          .isInstanceOf(Verdict.Confirmed.class);
      assertThat(check.of(new Claim.CountInPlace(p, place, 2))).isInstanceOf(Verdict.Refuted.class);
    }
  }

  @Test
  void whereDistinctWasSaidNobodyIsAskedAboutMultiplicity() throws UnreadableException {
    assertThat(Lettered.codes(Lettered.work("x^3-3x+k", "k if two distinct real roots")))
        .doesNotContain("domain-open");
    assertThat(Lettered.codes(Lettered.work("x^3-3x+k", "k if three real roots")))
        .contains("domain-open");
  }

  @Test
  void otherWordsAreRefusedWithTheirPlace() {
    assertThatThrownBy(() -> Lettered.work("x^2+kx+1", "k if the roots are pretty"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("the roots are pretty");
  }
}
