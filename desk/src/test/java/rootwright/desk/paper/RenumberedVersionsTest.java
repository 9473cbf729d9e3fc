package rootwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rootwright.desk.paper.Orders.PAPERS;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rootwright.press.paper.BlockedException;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** Versions A, B, C whose items are siblings with other numbers and other keys. */
class RenumberedVersionsTest {

  private static final List<String> MARKS = List.of("A", "B", "C");
  private static FiledPaper paper =
      PaperFile.parse("paper: 1\ntitle: x\ndate: 2026-11-26\nversions: {A: []}\n");

  @BeforeAll
  static void makeVersions() throws Exception {
    paper = PAPERS.checked(PAPERS.draft(Orders.order(Orders.four(), 3, Arrangement.RENUMBERED)));
  }

  private static FiledItem.Problem item(String mark, int place) {
    String name = paper.versions().get(mark).get(place);
    return (FiledItem.Problem) paper.items().get(name);
  }

  @Test
  void keysDifferPairwiseAndLevelsAreNear() {
    for (int place = 0; place < 3; place++) {
      Set<String> keys = new HashSet<>();
      List<BigDecimal> levels = new ArrayList<>();
      for (String mark : MARKS) {
        assertThat(keys.add(item(mark, place).key())).isTrue();
        levels.add(new BigDecimal(item(mark, place).level()));
      }
      BigDecimal spread =
          levels.stream()
              .max(BigDecimal::compareTo)
              .orElseThrow()
              .subtract(levels.stream().min(BigDecimal::compareTo).orElseThrow());
      assertThat(spread).isLessThanOrEqualTo(new BigDecimal("0.3"));
    }
  }

  @Test
  void theSameSlipsAreLive() throws Exception {
    for (int place = 0; place < 3; place++) {
      Set<Set<String>> slips = new HashSet<>();
      for (String mark : MARKS) {
        Solution solution =
            Orders.DESK.work(item(mark, place).statement(), ClassProfile.EVERYTHING);
        slips.add(
            solution.slips().stream().map(Solution.WrongTurning::name).collect(Collectors.toSet()));
      }
      assertThat(slips).as("item %d", place + 1).hasSize(1);
    }
  }

  @Test
  void noOptionStandsAtTheLetterOfTheKeyOfAnotherVersion() {
    for (String one : MARKS) {
      int letter = item(one, 1).options().indexOf(item(one, 1).key());
      for (String other : MARKS) {
        List<String> options = item(other, 1).options();
        if (!other.equals(one) && letter < options.size()) {
          assertThat(options.get(letter)).isNotEqualTo(item(one, 1).key());
        }
      }
    }
  }

  @Test
  void theSameOrderAndSeedGiveTheSameVersions() throws Exception {
    assertThat(PAPERS.checked(PAPERS.draft(Orders.order(Orders.four(), 3, Arrangement.RENUMBERED))))
        .isEqualTo(paper);
  }

  @Test
  void theComparisonSheetShowsStatementKeyAndLevelOfEveryVersion() throws Exception {
    String comparison = PAPERS.comparison(paper);
    assertThat(comparison).contains("versions compared").contains("Key letters in version C");
    for (String mark : MARKS) {
      assertThat(comparison).contains(item(mark, 0).key());
      assertThat(comparison).contains(item(mark, 0).level().replace('-', '−'));
    }
  }

  @Test
  void changingTheTextOfOneVersionAfterTheCheckBlocksPrinting() {
    FiledPaper edited =
        paper.edited(
            "1B",
            item ->
                ((FiledItem.Problem) item)
                    .withStatement(Statement.of("x^3 + 5x^2 - 3x - 2", "Σ 1/r^2")));
    assertThatThrownBy(() -> PAPERS.frozen(edited))
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("1B");
  }

  /**
   * Beside the sum of 1/(r − 3) over the roots of 5x³ − 10x² + x − 4: a lead other than 1, a
   * negative fraction for a key, the same slips.
   */
  @Test
  void aSiblingIsAlikeInLeadSignAndSlips() throws Exception {
    FiledPaper two =
        PAPERS.checked(
            PAPERS.draft(
                Orders.order(
                    List.of(Orders.problem("5x^3 - 10x^2 + x - 4", "Σ 1/(r-3)", AnswerForm.SHORT)),
                    2,
                    Arrangement.RENUMBERED)));
    FiledItem.Problem sibling = (FiledItem.Problem) two.items().get("1B");
    assertThat(sibling.key()).startsWith("-").contains("/").isNotEqualTo("-19/11");
    assertThat(sibling.statement().polynomial()).matches("[2-9]\\*x\\^3.*");
    assertThat(sibling.statement().find()).isEqualTo("Σ 1/(r-3)");
  }

  @Test
  void anItemWithoutSiblingsIsNamedWithAWayOut() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                PAPERS.draft(
                    Orders.order(
                        List.of(
                            Orders.problem(
                                "x^3 - x^2 - 4x - 1", "r^2 s + s^2 t + t^2 r", AnswerForm.SHORT)),
                        2,
                        Arrangement.RENUMBERED)))
        .withMessageContaining("r^2 s + s^2 t + t^2 r");
  }
}
