package rootwright.composing.blueprint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rootwright.composing.scan.ScanControl;
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

  private static Set<String> live(Solution solution) {
    return solution.slips().stream().map(Solution.WrongTurning::name).collect(Collectors.toSet());
  }
}
