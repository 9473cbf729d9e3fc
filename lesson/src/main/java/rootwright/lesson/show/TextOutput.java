package rootwright.lesson.show;

import java.util.function.Function;
import java.util.stream.Stream;
import rootwright.lesson.narration.Script;

/**
 * A form of a lesson that is one text file.
 *
 * @param name stable short name
 * @param title in a few words
 * @param fileName with extension
 * @param mediaType of the file
 * @param writer makes the text
 */
record TextOutput(
    String name, String title, String fileName, String mediaType, Function<Script, String> writer)
    implements LessonOutput {

  @Override
  public Stream<LessonFile> files(Script script) {
    return Stream.of(LessonFile.text(fileName, mediaType, writer.apply(script)));
  }
}
