package rootwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rootwright.working.problem.Statement;

/** The list of problems of a paper. */
class ProblemListTest {

  private static Statement only(String line) {
    List<ItemOrder> items =
        new ProblemList(AnswerForm.named("short"), OptionalInt.empty()).read(List.of(line));
    return ((ItemOrder.Problem) items.get(0)).statement();
  }

  @Test
  void aWholeSentenceStandsForPolynomialAndAsk() {
    Statement statement =
        only("Let a, b be the roots of x^2 - 5x + 3 = 0. Find a^2 + b^2. ; integer ; 4");

    assertThat(statement.polynomial()).isEqualTo("x^2 - 5x + 3 = 0");
    assertThat(statement.find()).isEqualTo("a^2 + b^2");
    assertThat(statement.roots()).containsExactly("a", "b");
  }

  @Test
  void polynomialAndAskStandBetweenSemicolons() {
    assertThat(only("x^2 - 5x + 3 ; S_2 ; integer ; 4"))
        .isEqualTo(Statement.of("x^2 - 5x + 3", "S_2"));
  }
}
