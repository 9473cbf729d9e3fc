package rootwright.lesson.caption;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.lesson.Lessons;
import rootwright.lesson.narration.Chapters;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.TimedBeat;
import rootwright.lesson.plan.Lesson;
import rootwright.lesson.plan.Pace;
import rootwright.lesson.plan.Plan;
import rootwright.lesson.plan.PlanCheck;
import rootwright.lesson.plan.PlanLine;
import rootwright.lesson.plan.PlanStep;
import rootwright.lesson.plan.StepKind;
import rootwright.lesson.slide.DeckMaker;
import rootwright.lesson.text.Phrase;
import rootwright.working.proof.Letters;
import rootwright.working.topic.Topic;
import rootwright.working.topic.Topics;

class CaptionsTest {

  private static final List<String> ROOTS = List.of("r", "s", "t");

  static Stream<String> topics() {
    return Topics.ALL.stream().map(Topic::name);
  }

  /** The wording and the cut are common practice. */
  @Test
  void aSentenceIsCutWhereItsPhraseEndsAndNeverInsideTheFraction() {
    Phrase said =
        Phrase.words(
            "Call the cubic P of x. The sum of one over three minus each root"
                + " is P prime of three over P of three.");
    List<Unit> units = Units.of(said, Wording.SPOKEN, ROOTS);

    assertThat(units.stream().mapToInt(Unit::words).sum()).isEqualTo(24);
    assertThat(CaptionCutter.cut(units).stream().map(Caption::lines))
        .containsExactly(
            List.of("Call the cubic P of x."),
            List.of(
                "The sum of one over three minus each root",
                "is P prime of three over P of three."));
  }

  @Test
  void twentyFourWordsWithAFormulaBeforeAnAnswerTakeFifteenAndAHalfSeconds() throws Exception {
    String words =
        "Call the cubic P of x. The sum of one over three minus each root"
            + " is P prime of three over P of three.";
    TimedBeat timed =
        only(
            PlanStep.of(
                    StepKind.EXAMPLE,
                    "Example",
                    List.of(
                        new PlanLine(
                            "", "Σ 1/(3-r) = P'(3)/P(3)", "", "P′ over P, at 3", words, 0)))
                .about("5x^3 - 10x^2 + x - 4", "Σ 1/(3-r)", "log-derivative"),
            1);

    assertThat(timed.millis()).isEqualTo(12_000 + 1_500 + 2_000);
  }

  @Test
  void eightyFourWordsAtOneHundredAndTwentyAMinuteTakeFortyTwoSeconds() throws Exception {
    String sentence = "Now multiply both sides by the lead and then move every term to the left. ";
    String eightyFour = sentence.repeat(5) + "So nothing is lost, and nothing here is new.";
    TimedBeat timed =
        only(PlanStep.of(StepKind.TRICK, "Trick", List.of(PlanLine.words(eightyFour))), 1);

    assertThat(timed.cues().stream().mapToInt(Cue::words).sum()).isEqualTo(84);
    assertThat(timed.millis()).isBetween(42_000L, 42_000L + timed.cues().size());
    for (Cue cue : timed.cues()) {
      assertThat(cue.to() - cue.from()).as(cue.toString()).isGreaterThanOrEqualTo(2000);
      assertThat(60_000 * cue.words())
          .as(cue.toString())
          .isLessThanOrEqualTo((int) (130 * (cue.to() - cue.from())));
    }
  }

  @ParameterizedTest
  @MethodSource("topics")
  void theCaptionsOfEveryTopicKeepTheRules(String topic) throws Exception {
    long last = 0;
    for (Cue cue : Lessons.script(topic).cues()) {
      assertThat(cue.from()).isGreaterThanOrEqualTo(last);
      last = cue.to();
      assertThat(cue.lines()).hasSizeBetween(1, 2);
      assertThat(cue.lines())
          .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(42));
      assertThat(cue.to() - cue.from()).as(cue.toString()).isGreaterThanOrEqualTo(2000);
      assertThat(60_000L * cue.words())
          .as(cue.toString())
          .isLessThanOrEqualTo(Pace.MIDDLE.captions() * (cue.to() - cue.from()));
    }
  }

  @ParameterizedTest
  @MethodSource("topics")
  void noFormulaIsDividedBetweenLines(String topic) throws Exception {
    Script script = Lessons.script(topic);
    for (TimedBeat timed : script.beats()) {
      List<String> roots = script.deck().lesson().steps().get(timed.beat().step()).roots();
      List<String> lines = new ArrayList<>();
      timed.cues().forEach(cue -> lines.addAll(cue.lines()));
      Units.of(timed.beat().said(), Wording.SPOKEN, roots).stream()
          .filter(Unit::formula)
          .forEach(
              unit ->
                  assertThat(lines)
                      .as(unit.text())
                      .anySatisfy(line -> assertThat(line).contains(unit.text())));
    }
  }

  @Test
  void anArrowOrATagInAWordCannotBreakTheFile() {
    String file = WebVtt.write(List.of(new Cue(0, 2000, List.of("a --> b <i> & c"), 4)));

    assertThat(file)
        .isEqualTo("WEBVTT\n\n1\n00:00:00.000 --> 00:00:02.000\na --&gt; b &lt;i&gt; &amp; c\n");
  }

  @Test
  void timesPastAnHourAreWrittenInFull() {
    assertThat(SubRip.write(List.of(new Cue(3_661_005, 3_663_005, List.of("late"), 1))))
        .isEqualTo("1\n01:01:01,005 --> 01:01:03,005\nlate\n\n");
  }

  /** The reader is that of ffmpeg, which ./verify installs. */
  @ParameterizedTest
  @ValueSource(strings = {"newton-identities", "discriminant", "conjugate-roots"})
  void aReaderOfOthersReadsTheSameCaptionsAndChapters(String topic, @TempDir Path folder)
      throws Exception {
    Script script = Lessons.script(topic);
    for (List<Cue> cues : List.of(script.cues(), Chapters.of(script))) {
      Path file = folder.resolve("captions.vtt");
      Files.writeString(file, WebVtt.write(cues));
      Path read = folder.resolve("read.srt");
      Process reader =
          new ProcessBuilder(
                  "ffmpeg",
                  "-y",
                  "-loglevel",
                  "error",
                  "-f",
                  "webvtt",
                  "-i",
                  file.toString(),
                  "-f",
                  "srt",
                  read.toString())
              .redirectErrorStream(true)
              .redirectOutput(folder.resolve("printed.txt").toFile())
              .start();
      assertThat(reader.waitFor()).as(Files.readString(folder.resolve("printed.txt"))).isZero();
      assertThat(Files.readString(folder.resolve("printed.txt"))).isEmpty();
      assertThat(Files.readString(read).strip().lines())
          .containsExactlyElementsOf(SubRip.write(cues).strip().lines().toList());
    }
  }

  private static TimedBeat only(PlanStep step, int beat) throws Exception {
    Plan plan =
        new Plan("A plan", "", Letters.usual(3), 10, Pace.MIDDLE, "", List.of(), List.of(step), 0);
    Lesson lesson = new PlanCheck(Lessons.SOLVER).lesson(plan);
    return Script.of(DeckMaker.deck(lesson), Wording.SPOKEN).beats().get(beat);
  }
}
