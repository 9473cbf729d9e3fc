package rootwright.working.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.working.check.Verdict;
import rootwright.working.solve.CheckFailedException;

class ExpansionCheckTest {

  private static final Letters THREE = Letters.usual(3);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p_2 = e_1^2 - 2*e_2",
        "Σ r^2 s = e_1*e_2 - 3*e_3",
        "Π (r - s)^2 = e_1^2*e_2^2 - 4*e_2^3 - 4*e_1^3*e_3 + 18*e_1*e_2*e_3 - 27*e_3^2",
        "h_2 = e_1^2 - e_2",
        "P'(x)/P(x) = Σ 1/(x - r)",
        "(2 + √3)*(2 - √3) = 1",
        "(1 + i)^2 = 2*i",
        "P''(x) = a*(6*x - 2*e_1)"
      })
  void identitiesAreConfirmed(String equation) {
    assertThat(ExpansionCheck.of(Identity.of(THREE, equation)))
        .isInstanceOf(Verdict.Confirmed.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p_2 = e_1^2 - e_2",
        "p_2 = e_1^2",
        "Σ r^2 s = e_1*e_2 - 2*e_3",
        "P'(x)/P(x) = Σ 1/(r - x)",
        "(1 + i)^2 = 2",
        "r = s"
      })
  void whatIsFalseForSomeNumbersIsRefuted(String equation) {
    assertThat(ExpansionCheck.of(Identity.of(THREE, equation))).isInstanceOf(Verdict.Refuted.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/(r - r) = 1", "Q(x) = 1", "log(r) = 1", "e_k = 1"})
  void whatHasNoValueIsLeftUndecided(String equation) {
    assertThat(ExpansionCheck.of(Identity.of(THREE, equation)))
        .isInstanceOf(Verdict.Undecided.class);
  }

  @Test
  void samplesFindAFalseIdentityButClaimNoProof() {
    General wrong = General.equation("p_2 = e_1^2 - e_2");
    General right = General.equation("p_2 = e_1^2 - 2*e_2");

    assertThat(SampledCheck.of(wrong, 7)).isInstanceOf(Verdict.Refuted.class);
    assertThat(((Verdict.Confirmed) SampledCheck.of(right, 7)).method()).startsWith("sampled");
  }

  @Test
  void aFactWithAFalseLineNeverLeavesTheHouse() {
    Fact wrong =
        new Fact(
            "wrong",
            "A wrong fact",
            "`p_2 = e_1^2`",
            List.of(),
            General.equation("p_2 = e_1^2"),
            new Proof(
                List.of(ProofLine.argued("One."), ProofLine.argued("Two.")),
                List.of(ProofLine.computed("Clearly", General.equation("p_2 = e_1^2"))),
                List.of(ProofLine.argued("Clearly."))),
            Boundary.of("none", "", Letters.usual(2), "1 = 2"));

    assertThatThrownBy(() -> ProofWriter.statement(wrong, THREE))
        .isInstanceOf(CheckFailedException.class);
    assertThatThrownBy(() -> ProofWriter.lines(wrong, THREE, Proof.Length.BOARD))
        .isInstanceOf(CheckFailedException.class);
  }

  @Test
  void aProofIsSaidInTwoSentencesAndFitsABoard() {
    List<ProofLine> two = List.of(ProofLine.argued("One."), ProofLine.argued("Two."));
    List<ProofLine> nine = Collections.nCopies(9, ProofLine.argued("Again."));

    assertThatThrownBy(() -> new Proof(nine, two, two))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Proof(two, nine, two))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
