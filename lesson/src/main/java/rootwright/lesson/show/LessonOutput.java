package rootwright.lesson.show;

import java.util.stream.Stream;
import rootwright.lesson.narration.Script;

/** A form in which a lesson leaves the desk. */
public interface LessonOutput {

  /** Stable short name, lower case: {@code html}. */
  String name();

  /** What it is, in a few words. */
  String title();

  /** The files, made one after the other as they are asked for. */
  Stream<LessonFile> files(Script script);
}
