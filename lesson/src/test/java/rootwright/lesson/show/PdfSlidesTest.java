package rootwright.lesson.show;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import rootwright.lesson.Lessons;
import rootwright.lesson.narration.Script;

class PdfSlidesTest {

  @Test
  void aPageForEachSlideOrForEachStepAndEachIsTagged() throws Exception {
    Script script = Lessons.script("newton-identities");

    try (PDDocument bySlide = printed("pdf", script);
        PDDocument byStep = printed("pdf-steps", script)) {
      assertThat(bySlide.getNumberOfPages()).isEqualTo(script.deck().slides().size());
      assertThat(byStep.getNumberOfPages()).isEqualTo(script.beats().size());
      assertThat(bySlide.getPage(0).getMediaBox().getWidth()).isEqualTo(960);
      assertThat(bySlide.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(bySlide.getDocumentInformation().getTitle()).isEqualTo("Newton's identities");
    }
  }

  private static PDDocument printed(String form, Script script) throws Exception {
    return Loader.loadPDF(
        LessonOutputs.named(form).orElseThrow().files(script).findFirst().orElseThrow().bytes());
  }
}
