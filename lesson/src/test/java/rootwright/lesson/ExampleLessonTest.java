package rootwright.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.StepTime;
import rootwright.lesson.plan.PlanCheck;
import rootwright.lesson.plan.PlanReader;
import rootwright.lesson.show.LessonFile;
import rootwright.lesson.show.LessonOutputs;
import rootwright.lesson.slide.DeckMaker;

/** The lesson that the guide shows, as it lies among the documents. */
class ExampleLessonTest {

  private static final Path FOLDER = Path.of("..", "docs", "example-lesson");

  @Test
  void everyLineOfItsPlanHoldsAndItEndsInTime() throws Exception {
    assertThat(StepTime.overruns(script())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"narration", "vtt", "srt", "chapters", "chalk"})
  void itsFilesAreWhatThePlanMakes(String form) throws Exception {
    LessonFile file =
        LessonOutputs.named(form).orElseThrow().files(script()).findFirst().orElseThrow();

    assertThat(Files.readAllBytes(FOLDER.resolve(file.name()))).isEqualTo(file.bytes());
  }

  private static Script script() throws Exception {
    String plan = Files.readString(FOLDER.resolve("plan.yaml"));
    return Script.of(
        DeckMaker.deck(new PlanCheck(Lessons.SOLVER).lesson(PlanReader.read(plan))),
        Wording.SPOKEN);
  }
}
