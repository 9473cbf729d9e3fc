package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rootwright.desk.paper.AnswerForm;
import rootwright.desk.paper.Arrangement;
import rootwright.desk.paper.PaperOrder;
import rootwright.desk.paper.PrintOrder;
import rootwright.desk.paper.ProblemList;
import rootwright.press.document.Language;
import rootwright.press.document.Layout;
import rootwright.press.document.PageFormat;
import rootwright.press.document.TextSize;

/** Orders for papers as the tray's page sends them. */
final class PaperOrderBody {

  private PaperOrderBody() {}

  /**
   * A new paper.
   *
   * @throws IllegalArgumentException if something cannot be; says what
   */
  static PaperOrder read(JsonNode body) {
    ProblemList list =
        new ProblemList(AnswerForm.named(body.path("form").asText("short")), points(body));
    int choices = body.path("choices").asInt(4);
    if (choices < 3 || choices > 5) {
      throw new IllegalArgumentException("choices are 3 to 5, not " + choices);
    }
    return new PaperOrder(
        body.path("title").asText("").strip(),
        Language.of(body.path("language").asText("en")),
        date(body.path("date").asText("")),
        list.read(body.path("problems").asText("").lines().toList()),
        choices,
        body.path("versions").asInt(0),
        Arrangement.named(body.path("arrangement").asText("reordered")),
        body.path("seed").asLong(1));
  }

  /** What an item is worth that does not say; nothing to count its marks. */
  private static OptionalInt points(JsonNode body) {
    String text = body.path("points").asText("").strip();
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    if (!text.matches("[1-9]\\d{0,2}")) {
      throw new IllegalArgumentException(
          "points are a whole number from 1 to 999, not “%s”".formatted(text));
    }
    return OptionalInt.of(Integer.parseInt(text));
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text.strip());
    } catch (DateTimeParseException wrong) {
      throw new IllegalArgumentException(
          "the date is written like 2026-11-26, not “%s”".formatted(text), wrong);
    }
  }

  /**
   * What is to be printed.
   *
   * @throws IllegalArgumentException if nothing is wanted, or a size is unknown
   */
  static PrintOrder print(JsonNode body) {
    List<String> documents = texts(body.path("documents"));
    List<String> formats = texts(body.path("formats"));
    if (documents.isEmpty() || formats.isEmpty()) {
      throw new IllegalArgumentException("choose at least one document and one format");
    }
    TextSize size =
        switch (body.path("size").asInt(11)) {
          case 11 -> TextSize.REGULAR;
          case 18 -> TextSize.LARGE;
          case 24 -> TextSize.GIANT;
          default -> throw new IllegalArgumentException("sizes are 11, 18 and 24 points");
        };
    PageFormat format = body.path("letter").asBoolean() ? PageFormat.LETTER : PageFormat.A4;
    return new PrintOrder(documents, formats, new Layout(format, size));
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(text -> texts.add(text.asText()));
    return texts;
  }
}
