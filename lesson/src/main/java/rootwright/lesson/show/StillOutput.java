package rootwright.lesson.show;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import rootwright.lesson.narration.Script;
import rootwright.lesson.picture.Painter;
import rootwright.lesson.picture.Picture;
import rootwright.lesson.picture.SvgWriter;

/**
 * Every slide with everything on it as one picture file.
 *
 * @param name stable short name, also the extension
 * @param title in a few words
 * @param mediaType of a file
 * @param drawing makes the content
 */
record StillOutput(String name, String title, String mediaType, Function<Picture, byte[]> drawing)
    implements LessonOutput {

  static final StillOutput SVG =
      new StillOutput(
          "svg",
          "stills as SVG",
          "image/svg+xml",
          picture -> SvgWriter.file(picture).getBytes(StandardCharsets.UTF_8));

  static final StillOutput PNG =
      new StillOutput("png", "stills as PNG, 1920 by 1080", "image/png", StillOutput::png);

  @Override
  public Stream<LessonFile> files(Script script) {
    return IntStream.range(0, script.deck().slides().size())
        .mapToObj(
            k ->
                new LessonFile(
                    "slides/slide-%02d.%s".formatted(k + 1, name),
                    mediaType,
                    drawing.apply(script.deck().slides().get(k))));
  }

  private static byte[] png(Picture picture) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(100_000);
    try {
      ImageIO.setUseCache(false);
      ImageIO.write(Painter.paint(picture), "png", bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
