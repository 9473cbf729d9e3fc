package rootwright.lesson.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.lesson.Lessons;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.StepTime;
import rootwright.lesson.slide.DeckMaker;

class PlanEditTest {

  private static String text = "";

  @BeforeAll
  static void writePlan() throws Exception {
    text = PlanWriter.write(Lessons.plan("newton-identities"));
  }

  @Test
  void aPlanThatIsWrittenAndReadIsTheSamePlan() throws Exception {
    assertThat(PlanWriter.write(PlanReader.read(text))).isEqualTo(text);
  }

  @Test
  void theOrderIsFactProofWarningExampleTrickHarderTry() throws Exception {
    assertThat(PlanReader.read(text).steps().stream().map(PlanStep::kind))
        .containsExactly(
            StepKind.AIM,
            StepKind.FACT,
            StepKind.PROOF,
            StepKind.BOUNDARY,
            StepKind.WARNING,
            StepKind.EXAMPLE,
            StepKind.TRICK,
            StepKind.HARDER,
            StepKind.HARDER,
            StepKind.TRY);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "p_2 - e_1*p_1 + 2*e_2 = 0 | p_2 - e_1*p_1 + 3*e_2 = 0 | no longer follows",
        "S_2 = 3*3 - 2*(1/2) = 8 | S_2 = 3*3 - 2*(1/2) = 7 | no longer follows",
        "p_2 - e_1*p_1 + 2*e_2 = 0 | q^2 - e_1*p_1 + 2*e_2 = 0 | no root called q",
        "S_1 = e_1 = r + s + t = -(-6/2) = 3 | S_1 = r + s + v = 3 | no root called v",
        "p_2 - e_1*p_1 + 2*e_2 = 0 | p_2 - e_1*p_1 + + = 0 | ",
        "slip: newton-count | slip: product-sign | does not show on this problem",
        "route: newton | route: transform | does not work this problem",
        "step: trick | step: trik | no kind of step",
        "figure: curve | picture: curve | Nothing called",
        "minutes: 30 | minutes: soon | whole number",
        "roots: r, s, t | roots: r, s, r | stands twice"
      })
  void aBadEditIsNamedAtItsLine(String right, String wrong, String message) {
    String edited = text.replaceFirst(Pattern.quote(right), wrong);
    int line = line(edited, wrong);
    BadPlanException bad = catchThrowableOfType(BadPlanException.class, () -> lesson(edited));

    assertThat(bad).as(wrong).isNotNull();
    assertThat(bad.complaints().get(0).text()).contains(message == null ? "" : message);
    // A word that belongs to a whole step is named where the step begins.
    boolean ofStep = wrong.startsWith("slip") || wrong.startsWith("route");
    assertThat(bad.complaints().get(0).line())
        .as(bad.complaints().get(0).forReader())
        .isBetween(ofStep ? line - 5 : line, line);
  }

  @Test
  void anEditThatFollowsIsAccepted() throws Exception {
    String edited =
        text.replace("p_2 - e_1*p_1 + 2*e_2 = 0", "p_2 = e_1^2 - 2*e_2")
            .replace("S_2 = 3*3 - 2*(1/2) = 8", "S_2 = 9 - 1 = 8");

    assertThat(lesson(edited).steps()).hasSize(10);
  }

  @Test
  void aFormulaThatCannotBeConfirmedMayStandAsAnArgument() throws Exception {
    String edited = text.replace("write: S_2 = 3*3 - 2*(1/2) = 8", "think: S_2 < 9");

    LessonLine line =
        lesson(edited).steps().get(5).lines().stream()
            .filter(each -> each.standing() == LessonLine.Standing.ARGUMENT)
            .findFirst()
            .orElseThrow();
    assertThat(line.shown()).isPresent();
  }

  @Test
  void aProofSaysOfEachLineWhetherItIsComputedOrArgued() throws Exception {
    assertThat(lesson(text).steps().get(2).lines())
        .allSatisfy(
            line ->
                assertThat(line.standing())
                    .isEqualTo(
                        line.shown().isPresent()
                            ? LessonLine.Standing.CHECKED
                            : LessonLine.Standing.ARGUMENT));
  }

  @Test
  void aPlanLongerThanTheTimeIsNamedAtTheMinutesAndAtEachStepThatEndsTooLate() throws Exception {
    String edited = text.replace("minutes: 30", "minutes: 9");
    Script script = Script.of(DeckMaker.deck(lesson(edited)), Wording.SPOKEN);
    List<Complaint> late = StepTime.overruns(script);

    assertThat(late).hasSizeGreaterThan(1);
    assertThat(late.get(0).line()).isEqualTo(line(edited, "minutes: 9"));
    assertThat(late.get(late.size() - 1).line()).isEqualTo(line(edited, "- step: try"));
    assertThat(StepTime.overruns(Script.of(DeckMaker.deck(lesson(text)), Wording.SPOKEN)))
        .isEmpty();
  }

  @Test
  void aFileThatIsNoYamlIsNamedAtItsLine() {
    BadPlanException bad =
        catchThrowableOfType(
            BadPlanException.class, () -> PlanReader.read("title: a\naim: b: c\nsteps: []\n"));

    assertThat(bad.complaints().get(0).line()).isEqualTo(2);
  }

  private static Lesson lesson(String edited) throws BadPlanException {
    return new PlanCheck(Lessons.SOLVER).lesson(PlanReader.read(edited));
  }

  private static int line(String file, String part) {
    return (int) file.substring(0, file.indexOf(part)).chars().filter(c -> c == '\n').count() + 1;
  }
}
