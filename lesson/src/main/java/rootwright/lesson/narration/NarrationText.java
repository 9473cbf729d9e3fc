package rootwright.lesson.narration;

import rootwright.lesson.plan.LessonStep;
import rootwright.lesson.text.Speech;

/** The whole talk as text: by step and slide, with the times and the pauses. */
public final class NarrationText {

  private NarrationText() {}

  /** The text of the file. */
  public static String write(Script script) {
    StringBuilder text = new StringBuilder();
    text.append(script.deck().lesson().plan().title()).append('\n');
    text.append(StepTime.clock(script.millis())).append(" min\n");
    int step = -1;
    for (TimedBeat timed : script.beats()) {
      LessonStep its = script.deck().lesson().steps().get(timed.beat().step());
      if (timed.beat().step() != step) {
        step = timed.beat().step();
        text.append('\n').append(its.title()).append('\n');
      }
      if (timed.beat().thinking() > 0) {
        text.append("        (pause, ").append(timed.beat().thinking()).append(" s)\n");
      }
      text.append(
          "%7s  %s%n"
              .formatted(StepTime.clock(timed.shown()), Speech.of(timed.beat().said(), its.roots()))
              .replace("\r", ""));
    }
    return text.toString();
  }
}
