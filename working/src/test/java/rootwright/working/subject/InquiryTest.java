package rootwright.working.subject;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;

class InquiryTest {

  @Test
  void conditionsAreTakenOffTheAsk() throws UnreadableException {
    Inquiry inquiry = Inquiry.of(Statement.of("x^2 - kx + 8", "k if r = 2s, k > 0 and real roots"));
    assertThat(inquiry.ask()).isEqualTo("k");
    assertThat(inquiry.conditions()).containsExactly("r = 2s", "k > 0", "real roots");
  }

  @Test
  void nothingIsCutInsideBracketsOrInsideWords() throws UnreadableException {
    Inquiry inquiry =
        Inquiry.of(Statement.of("", "xyz given (x, y and z) real; handy > 0, grand = 2"));
    assertThat(inquiry.conditions()).containsExactly("(x, y and z) real", "handy > 0", "grand = 2");
  }

  @Test
  void anAskWithoutConditionsStaysAsItIs() throws UnreadableException {
    Inquiry inquiry =
        Inquiry.of(Statement.of("x^2 - 2", "sum of the squares of the roots, specified"));
    assertThat(inquiry.ask()).isEqualTo("sum of the squares of the roots, specified");
    assertThat(inquiry.conditions()).isEmpty();
  }

  @Test
  void anEmptyAskIsKeptSoThatItsPlaceCanBeNamed() throws UnreadableException {
    assertThat(Inquiry.of(Statement.of("x", "if r = 1")).ask()).isEmpty();
    assertThat(Inquiry.of(Statement.of("x", "")).ask()).isEmpty();
  }
}
