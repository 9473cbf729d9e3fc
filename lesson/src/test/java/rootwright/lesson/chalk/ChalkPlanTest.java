package rootwright.lesson.chalk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.lesson.Lessons;
import rootwright.working.topic.Topic;
import rootwright.working.topic.Topics;

class ChalkPlanTest {

  static Stream<String> topics() {
    return Topics.ALL.stream().map(Topic::name);
  }

  @ParameterizedTest
  @MethodSource("topics")
  void noPanelOverflowsAndWhatIsGivenIsWipedBeforeTheNextProblem(String topic) throws Exception {
    List<ChalkPlan.Move> moves = ChalkPlan.moves(Lessons.lesson(Lessons.plan(topic)).steps());
    Map<ChalkPlan.Panel, Integer> filled = new EnumMap<>(ChalkPlan.Panel.class);
    for (ChalkPlan.Move move : moves) {
      if (move instanceof ChalkPlan.Move.Written written) {
        filled.merge(written.panel(), 1, Integer::sum);
      } else if (move instanceof ChalkPlan.Move.Wiped wiped) {
        filled.put(wiped.panel(), 0);
      }
      assertThat(filled.values())
          .allSatisfy(lines -> assertThat(lines).isLessThanOrEqualTo(ChalkPlan.PANEL_LINES));
      assertThat(filled.getOrDefault(ChalkPlan.Panel.GIVEN, 0)).isLessThanOrEqualTo(1);
    }
    assertThat(moves)
        .anyMatch(
            move ->
                move instanceof ChalkPlan.Move.Written written
                    && written.panel() == ChalkPlan.Panel.KEEP);
  }
}
