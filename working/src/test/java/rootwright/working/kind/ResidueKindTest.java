package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

class ResidueKindTest {

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "residues.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedResiduesComeOutByTheRoutesThatAreMadeForThem(
      String source, String coefficients, String ask, BigInteger residue, String routes) {
    Solution solution = Solved.of(coefficients, ask);
    assertThat(solution.answer()).as(source).isInstanceOf(Answer.Residue.class);
    assertThat(((Answer.Residue) solution.answer()).value()).as(source).isEqualTo(residue);
    assertThat(Solved.routes(solution)).containsExactlyInAnyOrder(routes.split(" "));
  }

  @Test
  void everyMemberIsReducedBeforeTheNext() {
    assertThat(Solved.lines(Solved.of("1 -1 -1", "S_6 mod 5"), "residue-recurrence"))
        .contains("S_2 = S_1 + S_0", "4 + 3 = 7 = 1*5 + 2", "2 + 4 = 6 = 1*5 + 1");
  }

  @Test
  void farOutWholePeriodsAreLeftOut() {
    assertThat(Solved.lines(Solved.of("1 -1 -1", "S_1000 mod 10"), "residue-period"))
        .contains("period 12", "1000 = 83*12 + 4", "S_4 = 7");
  }

  @Test
  void aLeadThatIsNotOneHasNoRecurrenceInWholeNumbers() {
    Solution solution = Solved.of("2 -3 1 5", "S_5 mod 7");
    assertThat(Solved.routes(solution)).isEmpty();
    assertThat(solution.declined()).anySatisfy(route -> assertThat(route.why()).contains("lead 1"));
  }
}
