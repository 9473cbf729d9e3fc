package rootwright.press.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.working.answer.Answer;

class WholeNumberRuleTest {

  private static Answer rational(long over, long under) {
    return Answer.exact(Rational.of(over).over(Rational.of(under)));
  }

  @Test
  void fractionsAskForNumeratorPlusDenominatorInLowestTerms() {
    WholeNumberRule rule = WholeNumberRule.of(rational(54, 8)).orElseThrow();
    assertThat(rule.number()).isEqualTo(31);
    assertThat(rule.sentence()).isNotEmpty();
    assertThat(WholeNumberRule.of(rational(-1, 3)).orElseThrow().number()).isEqualTo(2);
  }

  @Test
  void wholeAnswersAreAskedForThemselves() {
    WholeNumberRule rule = WholeNumberRule.of(rational(999, 1)).orElseThrow();
    assertThat(rule.number()).isEqualTo(999);
    assertThat(rule.sentence()).isEmpty();
  }

  @Test
  void answersOutsideTheGridHaveNoRule() {
    assertThat(WholeNumberRule.of(rational(1000, 1))).isEmpty();
    assertThat(WholeNumberRule.of(rational(-1, 1))).isEmpty();
    assertThat(WholeNumberRule.of(rational(-19, 11))).isEmpty();
    assertThat(WholeNumberRule.of(new Answer.None("why"))).isEmpty();
  }

  @Test
  void surdsAskForTheSumOfTheirThreeNumbers() {
    Answer surd =
        new Answer.Exact(new QuadraticSurd(Rational.of(7), Rational.of(2), BigInteger.valueOf(12)));
    // 7 + 2√12 = 7 + 4√3
    assertThat(WholeNumberRule.of(surd).orElseThrow().number()).isEqualTo(14);
  }
}
