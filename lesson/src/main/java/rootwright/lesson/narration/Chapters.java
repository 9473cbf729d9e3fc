package rootwright.lesson.narration;

import java.util.List;
import rootwright.lesson.caption.Cue;

/** One chapter for each step of a lesson. */
public final class Chapters {

  private Chapters() {}

  /** The chapters as cues of a WebVTT file of the kind “chapters”. */
  public static List<Cue> of(Script script) {
    return StepTime.of(script).stream()
        .map(time -> new Cue(time.end() - time.millis(), time.end(), List.of(title(time)), 0))
        .toList();
  }

  private static String title(StepTime time) {
    String kind = time.step().kind().title();
    String title = time.step().title();
    return kind.equals(title) ? title : kind + ": " + title;
  }
}
