package rootwright.lesson.show;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rootwright.lesson.film.Frames;
import rootwright.lesson.narration.Script;
import rootwright.lesson.picture.Picture;
import rootwright.lesson.picture.SvgWriter;
import rootwright.press.pdf.PicturePages;

/**
 * The slides as a PDF.
 *
 * @param name stable short name
 * @param title in a few words
 * @param fileName with extension
 * @param pictures one for each page
 */
record PdfSlides(
    String name, String title, String fileName, Function<Script, List<Picture>> pictures)
    implements LessonOutput {

  static final PdfSlides BY_SLIDE =
      new PdfSlides(
          "pdf",
          "slides as PDF, a page for each slide",
          "slides.pdf",
          script -> script.deck().slides());

  static final PdfSlides BY_STEP =
      new PdfSlides(
          "pdf-steps",
          "slides as PDF, a page for each step",
          "slides-by-step.pdf",
          script -> Frames.of(script).stream().map(Frames.Frame::picture).toList());

  @Override
  public Stream<LessonFile> files(Script script) {
    List<PicturePages.Sheet> sheets =
        pictures.apply(script).stream()
            .map(
                picture ->
                    new PicturePages.Sheet(
                        SvgWriter.file(picture, SvgWriter.Glyphs.INLINE), picture.description()))
            .toList();
    byte[] bytes =
        PicturePages.print(
            script.deck().lesson().plan().title(),
            "en",
            (double) Picture.WIDTH / Picture.HEIGHT,
            sheets,
            LocalDate.now(ZoneOffset.UTC));
    return Stream.of(new LessonFile(fileName, "application/pdf", bytes));
  }
}
