package rootwright.composing.blueprint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.composing.option.Choices;
import rootwright.composing.scan.ScanControl;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

class SiblingsTest {

  private final Kinds kinds = new Kinds();

  @Test
  void siblingsShareRouteAndLiveSlipsAndHaveKeysOfTheirOwn() throws Exception {
    Problem problem = ProblemReader.read(Statement.of("x^3 - 6x^2 + 5x - 1", "Σ 1/r^2"));
    Solution original = kinds.solve(problem, ClassProfile.EVERYTHING);
    Composition siblings =
        new Siblings(kinds).of(problem, 2, 7, ComposingControl.of(ScanControl.alone()));
    assertThat(siblings.problems()).hasSize(2);
    Set<Answer> keys = new HashSet<>(Set.of(original.answer()));
    for (Composed sibling : siblings.problems()) {
      assertThat(keys.add(sibling.solution().answer())).isTrue();
      assertThat(sibling.solution().routes().get(0).route())
          .isEqualTo(original.routes().get(0).route());
      assertThat(live(sibling.solution())).isEqualTo(live(original));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x^3 - 12x^2 + kx - 28 | k if the roots are in arithmetic progression",
        "x^2 + kx + 10 and x^2 + 5x + 2k | k if they share exactly one root",
        "x^2 - mx + 3m | m if integer roots",
        "9th roots of unity other than 1 | Π (3-r)",
        "\"\" | x^5 + y^5 if x + y = 3, x y = 1",
        "\"\" | greatest x if x+y+z+w=8, x^2+y^2+z^2+w^2=28, x, y, z, w real",
        "\"\" | last digit of floor((3+sqrt(7))^2026)",
      })
  void statementsOfOtherKindsHaveSiblingsTooWithKeysOfTheirOwn(String polynomial, String find)
      throws Exception {
    Statement statement = Statement.of(polynomial.replace("\"", ""), find);
    Subjects subjects = new Subjects(kinds);
    Solution original = subjects.work(statement, ClassProfile.EVERYTHING);
    Composition siblings =
        new Siblings(kinds).of(statement, 1, 7, ComposingControl.of(ScanControl.alone()));
    assertThat(siblings.problems()).as(find).hasSize(1);
    Solution sibling =
        subjects.work(siblings.problems().get(0).statement(), ClassProfile.EVERYTHING);
    assertThat(sibling.kind()).isEqualTo(original.kind());
    assertThat(sibling.answer()).isNotEqualTo(original.answer());
    assertThat(sibling.routes().get(0).route()).isEqualTo(original.routes().get(0).route());
    assertThat(live(sibling)).isEqualTo(live(original));
  }

  /** 13 against 17 and 19 (e₂² − 2e₁e₃ over e₃²). */
  @Test
  void cubicsWithOtherNumbersAndTheSameRouteAreSiblings() throws Exception {
    Solution original = solved("x^3 - 6x^2 + 5x - 1");
    for (String other : List.of("x^3 - 4x^2 + 3x - 1", "x^3 + 5x^2 - 3x - 1")) {
      assertThat(Siblings.refusal(solved(other), original)).as(other).isEmpty();
    }
  }

  @Test
  void noKeyOfAVersionIsAWrongOptionOfAnotherAtTheSameLetter() throws Exception {
    Problem problem = ProblemReader.read(Statement.of("2x^3 - 6x^2 + x + 5", "Σ r^2"));
    List<Choices> versions = new ArrayList<>();
    versions.add(Choices.of(kinds.solve(problem, ClassProfile.EVERYTHING), Choices.USUAL));
    new Siblings(kinds)
        .of(problem, 3, 2, ComposingControl.of(ScanControl.alone()))
        .problems()
        .forEach(sibling -> versions.add(sibling.choices()));
    assertThat(versions).hasSize(4);
    for (Choices one : versions) {
      for (Choices other : versions) {
        if (one != other && one.keyIndex() < other.options().size()) {
          assertThat(other.options().get(one.keyIndex()).value()).isNotEqualTo(one.key().value());
        }
      }
    }
  }

  private Solution solved(String polynomial) throws Exception {
    return kinds.solve(
        ProblemReader.read(Statement.of(polynomial, "Σ 1/r^2")), ClassProfile.EVERYTHING);
  }

  private static Set<String> live(Solution solution) {
    return solution.slips().stream().map(Solution.WrongTurning::name).collect(Collectors.toSet());
  }
}
