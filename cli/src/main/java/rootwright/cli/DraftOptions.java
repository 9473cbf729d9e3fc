package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.OptionalInt;
import picocli.CommandLine.Option;
import rootwright.desk.paper.AnswerForm;
import rootwright.desk.paper.Arrangement;
import rootwright.desk.paper.PaperOrder;
import rootwright.desk.paper.ProblemList;
import rootwright.press.document.Language;

/** What a new paper is to be like. */
final class DraftOptions {

  @Option(
      names = "--file",
      paramLabel = "FILE",
      description =
          "The problems: polynomial ; ask on each line, then, if wanted, ; form and ; points."
              + " A line prove ; claim asks for a proof. # begins a comment.")
  Path file = Path.of("");

  @Option(
      names = "--title",
      description = "The title (${DEFAULT-VALUE}).",
      defaultValue = "Roots of polynomials")
  String title = "";

  @Option(
      names = "--form",
      description =
          "How items are answered that do not say: short, choice or integer (${DEFAULT-VALUE}).",
      defaultValue = "short")
  String form = "short";

  @Option(
      names = "--choices",
      description = "Choices of a multiple-choice item, 3 to 5 (${DEFAULT-VALUE}).",
      defaultValue = "4")
  int choices;

  @Option(
      names = "--versions",
      description = "How many versions (${DEFAULT-VALUE}).",
      defaultValue = "1")
  int versions;

  @Option(
      names = "--arrangement",
      paramLabel = "HOW",
      description =
          "How versions differ: reordered, the same items in another order, or renumbered,"
              + " siblings with other numbers and keys (${DEFAULT-VALUE}).",
      defaultValue = "reordered")
  String arrangement = "reordered";

  @Option(
      names = "--points",
      description = "What an item is worth; without, the marks of its marking scheme.")
  int points;

  @Option(
      names = "--seed",
      description = "What chance starts from in the versions (${DEFAULT-VALUE}).",
      defaultValue = "1")
  long seed;

  @Option(
      names = "--language",
      description = "BCP 47 tag; decides the decimal mark (${DEFAULT-VALUE}).",
      defaultValue = "en")
  String language = "en";

  @Option(names = "--date", description = "The day it is for, such as 2026-11-26; today without.")
  LocalDate date = LocalDate.now(ZoneId.systemDefault());

  PaperOrder order() throws IOException {
    if (file.toString().isEmpty()) {
      throw new IllegalArgumentException("say where the problems are: --file problems.txt");
    }
    if (choices < 3 || choices > 5) {
      throw new IllegalArgumentException("choices are 3 to 5, not " + choices);
    }
    if (points < 0) {
      throw new IllegalArgumentException("an item is worth at least 1 point, not " + points);
    }
    if (!Files.isRegularFile(file)) {
      throw new IllegalArgumentException("no file can be read at " + file);
    }
    ProblemList list =
        new ProblemList(
            AnswerForm.named(form), points == 0 ? OptionalInt.empty() : OptionalInt.of(points));
    return new PaperOrder(
        title,
        Language.of(language),
        date,
        list.read(Files.readAllLines(file, StandardCharsets.UTF_8)),
        choices,
        versions,
        Arrangement.named(arrangement),
        seed);
  }
}
