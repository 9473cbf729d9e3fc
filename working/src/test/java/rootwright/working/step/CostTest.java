package rootwright.working.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.Subjects;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;

/** What a working is said to cost a student. */
class CostTest {

  /** Common practice: with one root twice the other, everything is written in one of them. */
  @Test
  void aProductOverAllNamingsComesAfterTheWayAStudentTakes() throws UnreadableException {
    List<Working> routes =
        new Subjects(new Kinds())
            .work(
                Statement.of("x^2 - 9x + k", "k if one root is twice the other"),
                ClassProfile.EVERYTHING)
            .routes();
    assertThat(routes).extracting(Working::title).hasSizeGreaterThan(1);
    Cost first = routes.get(0).cost();
    Cost last = routes.get(routes.size() - 1).cost();
    assertThat(first.unwritten()).isZero();
    assertThat(last.unwritten()).isPositive();
    assertThat(routes)
        .allSatisfy(
            working ->
                assertThat(working.cost().ideas())
                    .isEqualTo(
                        (int)
                            working.steps().stream()
                                .map(Step::idea)
                                .filter(idea -> !idea.routine())
                                .distinct()
                                .count()));
  }
}
