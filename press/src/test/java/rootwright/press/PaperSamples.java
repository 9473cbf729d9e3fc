package rootwright.press;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.composing.option.Option;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Content;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.paper.Versions;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** Papers with problems that are really worked. */
public final class PaperSamples {

  private static final Kinds KINDS = new Kinds();
  private static final Map<Statement, Solution> WORKED = new ConcurrentHashMap<>();

  private PaperSamples() {}

  /** Works a statement as the desk does, each once only. */
  public static Solution work(Statement statement) throws UnreadableException {
    Solution known = WORKED.get(statement);
    if (known == null) {
      known = KINDS.solve(ProblemReader.read(statement), ClassProfile.EVERYTHING);
      WORKED.put(statement, known);
    }
    return known;
  }

  public static PaperItem written(String polynomial, String find) {
    return item(polynomial, find, new Form.Written());
  }

  public static PaperItem item(String polynomial, String find, Form form) {
    return PaperItem.of(new Task.Find(Statement.of(polynomial, find), form, Optional.empty()), 4);
  }

  public static Form choice(String... values) {
    List<Option> options = new ArrayList<>();
    for (String value : values) {
      String[] parts = value.split("/");
      options.add(
          new Option(
              Answer.exact(
                  Rational.of(Long.parseLong(parts[0]))
                      .over(Rational.of(parts.length > 1 ? Long.parseLong(parts[1]) : 1))),
              List.of()));
    }
    return new Form.Choice(options);
  }

  public static Content content(List<Version> versions) {
    return new Content(
        "Sums over the roots",
        Language.ENGLISH,
        "Roots are complex numbers, counted with multiplicity, unless said otherwise.",
        Samples.DAY,
        versions);
  }

  /** The example that goes through the whole desk, with its options and hints. */
  public static PaperItem reciprocals() {
    PaperItem item =
        item(
            "5x^3 - 10x^2 + x - 4",
            "1/(r-3) + 1/(s-3) + 1/(t-3)",
            choice("-19/11", "-1", "-11/19", "-1/7", "19/11"));
    return new PaperItem(
        item.task(),
        4,
        List.of(
            Piece.line("Which polynomial has the roots ", Samples.f("r - 3"), "?"),
            Piece.line("Compare with ", Samples.f("P'(x)/P(x)"), "."),
            Piece.line("Work out ", Samples.f("P(3)"), " and ", Samples.f("P'(3)"), ".")),
        Optional.of(new BigDecimal("1.0")));
  }

  private static List<PaperItem> ten() {
    return List.of(
        written("3x^3 - 7x^2 + 5x + 11", "r + s + t"),
        item("2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2", choice("15/2", "8", "17/2", "9", "34")),
        reciprocals(),
        item("4x^3 - 10x^2 - x + 5", "r^2 + s^2 + t^2", new Form.WholeNumber()),
        written("x^3 - 4x^2 + 2x + 6", "(r+s)(s+t)(t+r)"),
        written("x^3 - 2x^2 + 3x - 5", "S_4"),
        written("x^3 - x^2 - 4x - 1", "r^2 s + s^2 t + t^2 r"),
        written("x^3 - 3x^2 - 2x + 5", "1/(r^2-1) + 1/(s^2-1) + 1/(t^2-1)"),
        written("x^4 - x^3 - 3", "S_9"),
        PaperItem.of(
            new Task.Prove(
                Piece.line(
                    "Let ",
                    Samples.f("P"),
                    " be a cubic with real coefficients. Prove that it has a real root."),
                List.of(
                    Piece.line(
                        "For large positive and large negative numbers ",
                        Samples.f("P"),
                        " has opposite signs, and it is continuous."))),
            5));
  }

  /** Ten problems, one version, not checked yet. */
  public static Paper draft() {
    return Paper.draft(content(List.of(new Version("", ten()))));
  }

  /** The same, frozen. */
  public static Paper frozen() {
    try {
      return draft().checked(PaperSamples::work).frozen();
    } catch (BlockedException blocked) {
      throw new AssertionError(blocked);
    }
  }

  /** Problems of other kinds, whose lines hold words, surds and long formulas; frozen. */
  public static Paper ofManyKinds() {
    List<PaperItem> items =
        List.of(
            written("x^2 - 34x + 1", "r^(1/4) + s^(1/4)"),
            written("", "polynomial with roots (√3+√7)"),
            written("x^3 - x - 1", "period of S_k mod 7"),
            written("x^3 - x - 1", "generating function of S_k"),
            written("9th roots of unity other than 1", "Π (3-r)"),
            written("x^5 - 5x + k", "k if three real roots"),
            written("4^x - 6*2^x + 7 = 0", "sum of the solutions"),
            written("x^2 + bx + 36", "b if distinct integer roots"));
    Subjects subjects = new Subjects(KINDS);
    try {
      return Paper.draft(content(List.of(new Version("", items))))
          .checked(statement -> subjects.work(statement, ClassProfile.EVERYTHING))
          .frozen();
    } catch (BlockedException blocked) {
      throw new AssertionError(blocked);
    }
  }

  /** Sums of reciprocal squares in three versions with keys 13, 19 and 17. */
  public static Paper threeVersions() {
    String ask = "1/r^2 + 1/s^2 + 1/t^2";
    return Paper.draft(
        content(
            Versions.renumbered(
                List.of(
                    List.of(
                        written("x^3 - 6x^2 + 5x - 1", ask),
                        written("x^3 + 5x^2 - 3x - 1", ask),
                        written("x^3 - 4x^2 + 3x + 1", ask))))));
  }
}
