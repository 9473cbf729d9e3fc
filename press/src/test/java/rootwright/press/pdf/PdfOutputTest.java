package rootwright.press.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.Formula;
import rootwright.press.Printed;
import rootwright.press.Samples;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Language;
import rootwright.press.document.Layout;
import rootwright.press.document.PageFormat;
import rootwright.press.document.Piece;
import rootwright.press.document.Response;
import rootwright.press.document.TextSize;
import rootwright.press.output.UnprintableException;

class PdfOutputTest {

  private static Document paper(List<Block> blocks, Layout layout) {
    return new Document(
        "A paper", Language.ENGLISH, Audience.STUDENT, layout, Samples.IDENTITY, blocks);
  }

  private static Document paper(Block... blocks) {
    return paper(List.of(blocks), Layout.USUAL);
  }

  private static PDDocument open(Document paper) throws IOException {
    return Loader.loadPDF(Printed.bytes("pdf", paper));
  }

  private static Block.Item item(int number, List<Block> statement, int lines) {
    return new Block.Item(
        number, Optional.empty(), statement, new Response.Work(lines), Optional.empty());
  }

  @Test
  void printingAgainGivesTheSameBytes() {
    byte[] again = Printed.OUTPUTS.named("pdf").orElseThrow().print(Samples.key());
    assertThat(again).isEqualTo(Printed.bytes("pdf", Samples.key()));
  }

  @Test
  void theFileIsTaggedAndKnowsItsTitleLanguageAndDate() throws IOException {
    try (PDDocument pdf = open(Samples.worksheet())) {
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo(Samples.worksheet().title());
      assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle()).isTrue();
      String metadata =
          new String(pdf.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertThat(metadata).contains("2026-03-05").contains(Samples.worksheet().title());
    }
  }

  @Test
  void everyFormulaAndFigureHasItsTextAlternative() throws IOException {
    try (PDDocument pdf = open(Samples.solutions())) {
      List<COSDictionary> illustrations = new ArrayList<>();
      structure(pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), illustrations);
      assertThat(illustrations).hasSizeGreaterThan(20);
      assertThat(illustrations)
          .allSatisfy(element -> assertThat(element.getString(COSName.ALT)).isNotBlank());
      assertThat(illustrations.stream().map(element -> element.getString(COSName.ALT)))
          .contains("The three roots in the plane: one real, two conjugate.");
    }
  }

  private static void structure(COSDictionary element, List<COSDictionary> into) {
    String kind = element.getNameAsString(COSName.S);
    if ("Formula".equals(kind) || "Figure".equals(kind)) {
      into.add(element);
    }
    var children = element.getDictionaryObject(COSName.K);
    if (children instanceof COSDictionary child) {
      structure(child, into);
    } else if (children instanceof COSArray array) {
      for (int k = 0; k < array.size(); k++) {
        if (array.getObject(k) instanceof COSDictionary child) {
          structure(child, into);
        }
      }
    }
  }

  @Test
  void theTextLayerReadsWordsAndFormulasInOrder() {
    assertThat(Printed.textLayer(Samples.worksheet()).replace('\u00A0', ' '))
        .contains("Let r, s, t be the roots of 2*x^3 - 6*x^2 + x + 5 = 0. Find r^2 + s^2 + t^2.")
        .contains("(A) -19/11 (B) -1 (C) -11/19 (D) -1/7 (E) 19/11");
  }

  @Test
  void everyPageHasTheCodeTheVersionAndItsNumber() throws IOException {
    try (PDDocument pdf = open(Samples.worksheet())) {
      int pages = pdf.getNumberOfPages();
      assertThat(pages).isGreaterThan(1);
      for (int page = 1; page <= pages; page++) {
        assertThat(text(pdf, page))
            .contains("RW-7K3M-Q9")
            .contains("Version B")
            .contains("page " + page + " of " + pages);
      }
    }
  }

  private static String text(PDDocument pdf, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(pdf);
  }

  @Test
  void allFontsAreEmbedded() throws IOException {
    try (PDDocument pdf = open(Samples.solutions())) {
      for (PDPage page : pdf.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).as(name.getName()).isTrue();
        }
      }
    }
  }

  @Test
  void noItemIsSplitOverPages() throws IOException {
    List<Block> items = new ArrayList<>();
    for (int k = 1; k <= 14; k++) {
      List<Block> statement = new ArrayList<>();
      for (int line = 0; line < 7; line++) {
        statement.add(Block.paragraph("item" + k + "line" + line));
      }
      items.add(item(k, statement, 1));
    }
    try (PDDocument pdf = open(paper(items, Layout.USUAL))) {
      for (int k = 1; k <= 14; k++) {
        int begin = pageOf(pdf, "item" + k + "line0");
        assertThat(pageOf(pdf, "item" + k + "line6")).as("item %d", k).isEqualTo(begin);
      }
    }
  }

  private static int pageOf(PDDocument pdf, String text) throws IOException {
    for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
      if (text(pdf, page).contains(text)) {
        return page;
      }
    }
    throw new AssertionError(text + " is on no page");
  }

  @Test
  void anItemTallerThanAPageLosesNoLine() throws IOException {
    List<Block> statement = new ArrayList<>();
    for (int line = 0; line < 60; line++) {
      statement.add(Block.paragraph("line" + line + "."));
    }
    try (PDDocument pdf = open(paper(item(1, statement, 30)))) {
      for (int line = 0; line < 60; line++) {
        pageOf(pdf, "line" + line + ".");
      }
    }
  }

  @Test
  void aWideFormulaStaysWithinTheMargins() throws IOException {
    List<Formula> terms =
        IntStream.rangeClosed(0, 40)
            .mapToObj(k -> Formula.number(1000 + k).times(Formula.name("x").power(k)))
            .toList();
    Formula wide = Formula.equation(Formula.sum(terms), Formula.number(0));
    Formula number = Formula.number(BigInteger.valueOf(7).pow(300));
    Document paper =
        paper(
            Block.paragraph("In a line ", wide, " and on."),
            new Block.Display(wide),
            new Block.WorkedLine(Piece.line(wide), Piece.line("a reason that is short")),
            new Block.Display(number));
    for (Layout layout : List.of(Layout.USUAL, new Layout(PageFormat.LETTER, TextSize.GIANT))) {
      try (PDDocument pdf = open(paper.withLayout(layout))) {
        Page page = Page.of(layout);
        assertThat(edges(pdf)[0]).isGreaterThanOrEqualTo(page.side() - 1);
        assertThat(edges(pdf)[1]).isLessThanOrEqualTo(page.width() - page.side() + 1);
        assertThat(new PDFTextStripper().getText(pdf)).contains("1040*x^40 = 0");
      }
    }
  }

  /** The leftmost and the rightmost place where a letter stands. */
  private static double[] edges(PDDocument pdf) throws IOException {
    double[] edges = {Double.MAX_VALUE, 0};
    new PDFTextStripper() {
      @Override
      protected void processTextPosition(TextPosition text) {
        edges[0] = Math.min(edges[0], text.getXDirAdj());
        edges[1] = Math.max(edges[1], text.getXDirAdj() + text.getWidthDirAdj());
      }
    }.getText(pdf);
    return edges;
  }

  @Test
  void aFormulaThatCanBeBrokenNowhereIsRefusedWithAReason() {
    Formula long1 = Formula.number(BigInteger.valueOf(7).pow(400));
    assertThatThrownBy(
            () -> Printed.bytes("pdf", paper(new Block.Display(Formula.number(1).over(long1)))))
        .isInstanceOf(UnprintableException.class)
        .hasMessageContaining("times as wide as a line");
  }

  @Test
  void aLetterThatTheTypefaceLacksIsNamed() {
    assertThatThrownBy(() -> Printed.bytes("pdf", paper(Block.paragraph("漢"))))
        .isInstanceOf(UnprintableException.class)
        .hasMessageContaining("漢")
        .hasMessageContaining("U+6F22");
  }

  @Test
  void signsOfMathematicsBetweenWordsAreDrawn() throws IOException {
    try (PDDocument pdf = open(paper(Block.paragraph("P′ = 5x⁴ ≠ 0 for x ≥ 2, so ≈ 3")))) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("^4").contains("!=").contains(">=");
    }
  }

  @Test
  void anEmptyPaperIsOnePageWithItsTitle() throws IOException {
    try (PDDocument pdf = open(paper())) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      assertThat(text(pdf, 1)).contains("A paper");
    }
  }

  @Test
  void threeHundredItemsAreSet() throws IOException {
    List<Block> items =
        IntStream.rangeClosed(1, 300)
            .mapToObj(
                k -> (Block) item(k, List.of(Block.paragraph("number", Formula.number(k))), 0))
            .toList();
    try (PDDocument pdf = open(paper(items, Layout.USUAL))) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("300. number300");
    }
  }

  @Test
  void largePrintIsReflowedAndKeepsItsNumbers() throws IOException {
    Document large = Samples.worksheet().withLayout(Layout.USUAL.withSize(TextSize.GIANT));
    try (PDDocument pdf = open(large);
        PDDocument usual = open(Samples.worksheet())) {
      assertThat(pdf.getNumberOfPages()).isGreaterThan(usual.getNumberOfPages());
      assertThat(pageOf(pdf, "10.")).isPositive();
      assertThat(edges(pdf)[1]).isLessThanOrEqualTo(Page.of(large.layout()).width());
    }
  }

  @Test
  void lettersOfEuropeAreThere() throws IOException {
    try (PDDocument pdf = open(paper(Block.paragraph("Zoé Łukasik, Größe, naïve, Ўсё, λόγος")))) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("Zoé Łukasik, Größe");
    }
  }

  @Test
  void aRowOfShortFormulasInANarrowColumnIsBrokenAfterItsCommas() throws IOException {
    List<Piece> row = new ArrayList<>();
    for (int k = 1; k <= 9; k++) {
      row.add(Piece.words(k == 1 ? "with " : ", "));
      row.add(Piece.math(Samples.f("a_%d = %d".formatted(k, 10 + k))));
    }
    Block.Table.Column narrow =
        new Block.Table.Column(Piece.line("For"), Block.Table.Placing.START, 1);
    Block.Table.Column wide =
        new Block.Table.Column(Piece.line("Line"), Block.Table.Placing.START, 3);
    Block table =
        new Block.Table(
            List.of(), List.of(narrow, wide), List.of(List.of(row, Piece.line("nothing"))));
    try (PDDocument pdf = open(paper(table))) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("a_1 = 11", "a_9 = 19");
    }
  }
}
