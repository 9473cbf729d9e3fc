package rootwright.lesson.show;

import java.util.List;
import java.util.Optional;
import rootwright.lesson.caption.SubRip;
import rootwright.lesson.caption.WebVtt;
import rootwright.lesson.chalk.ChalkPlan;
import rootwright.lesson.narration.Chapters;
import rootwright.lesson.narration.NarrationText;
import rootwright.lesson.plan.PlanWriter;

/** Every form of a lesson; a new one registers itself here. */
public final class LessonOutputs {

  /** Those that are quickest to make first. */
  public static final List<LessonOutput> ALL =
      List.of(
          new TextOutput(
              "plan",
              "the plan, to be edited",
              "plan.yaml",
              "application/yaml",
              script -> PlanWriter.write(script.deck().lesson().plan())),
          new TextOutput(
              "html",
              "the show, one file, with the coach's own view",
              "show.html",
              "text/html",
              HtmlShow::write),
          new TextOutput(
              "vtt",
              "captions as WebVTT",
              "captions.vtt",
              "text/vtt",
              script -> WebVtt.write(script.cues())),
          new TextOutput(
              "srt",
              "captions as SubRip",
              "captions.srt",
              "application/x-subrip",
              script -> SubRip.write(script.cues())),
          new TextOutput(
              "chapters",
              "chapters as WebVTT",
              "chapters.vtt",
              "text/vtt",
              script -> WebVtt.write(Chapters.of(script))),
          new TextOutput(
              "narration",
              "the whole talk as text, with its times",
              "narration.txt",
              "text/plain",
              NarrationText::write),
          new TextOutput(
              "chalk",
              "the board plan for chalk",
              "board-plan.txt",
              "text/plain",
              ChalkPlan::write),
          PdfSlides.BY_SLIDE,
          PdfSlides.BY_STEP,
          StillOutput.SVG,
          StillOutput.PNG);

  private LessonOutputs() {}

  /** The form with this name. */
  public static Optional<LessonOutput> named(String name) {
    return ALL.stream().filter(output -> output.name().equals(name)).findFirst();
  }
}
