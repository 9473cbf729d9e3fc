package rootwright.press;

import static rootwright.press.document.Piece.line;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Identity;
import rootwright.press.document.Language;
import rootwright.press.document.Layout;
import rootwright.press.document.Piece;
import rootwright.press.document.Response;
import rootwright.press.document.Scoring;
import rootwright.press.document.Svg;

/** Papers of our own making, with the blocks that real ones have. */
public final class Samples {

  public static final LocalDate DAY = LocalDate.of(2026, 3, 5);
  public static final Identity IDENTITY = new Identity("RW-7K3M-Q9", "B", DAY);

  private Samples() {}

  public static Formula f(String text) {
    try {
      return FormulaReader.formula(text);
    } catch (UnreadableException unreadable) {
      throw new AssertionError(text, unreadable);
    }
  }

  private static Block statement(String polynomial, String ask) {
    return Block.paragraph(
        "Let ", f("r, s, t"), " be the roots of ", f(polynomial), ". Find ", f(ask), ".");
  }

  private static final List<Block> STATEMENTS =
      List.of(
          statement("3x^3 - 7x^2 + 5x + 11 = 0", "rs + st + tr"),
          statement("2x^3 - 6x^2 + x + 5 = 0", "r^2 + s^2 + t^2"),
          statement("5x^3 - 10x^2 + x - 4 = 0", "1/(r-3) + 1/(s-3) + 1/(t-3)"),
          statement("x^3 - 4x^2 + 2x + 6 = 0", "(r+s)(s+t)(t+r)"),
          statement("x^3 - 2x^2 + 3x - 5 = 0", "r^4 + s^4 + t^4"),
          statement("x^3 - x^2 - 4x - 1 = 0", "r/s + s/t + t/r"),
          statement(
              "x^3 - 2x^2 - 3x + 1 = 0", "r^5/((r-s)(r-t)) + s^5/((s-r)(s-t)) + t^5/((t-r)(t-s))"),
          Block.paragraph(
              "The numbers ",
              f("√r"),
              " and ",
              f("√s"),
              " are the square roots of the roots of ",
              f("x^2 - 12x + 4 = 0"),
              ". Find ",
              f("√r + √s"),
              "."),
          Block.paragraph(
              "Write ",
              f("S_k"),
              " for the sum of the ",
              Piece.emphasis(Piece.words("k")),
              "th powers of the roots of ",
              f("x^4 - x^3 - 3 = 0"),
              ". Find ",
              f("S_9"),
              "."),
          statement("x^3 - 3x^2 - 2x + 5 = 0", "1/(r^2-1) + 1/(s^2-1) + 1/(t^2-1)"));

  /** Ten items to be answered on the sheet, the first two by choice. */
  public static Document worksheet() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.NameLine(List.of("Name", "Class", "Date")));
    blocks.add(
        Block.paragraph(
            Piece.emphasis(
                Piece.words(
                    "Roots are complex numbers, counted with multiplicity, unless said"
                        + " otherwise."))));
    for (int k = 0; k < STATEMENTS.size(); k++) {
      blocks.add(item(k, Optional.empty()));
    }
    return new Document(
        "Sums over the roots of a cubic",
        Language.ENGLISH,
        Audience.STUDENT,
        Layout.USUAL,
        IDENTITY,
        blocks);
  }

  private static Response response(int k) {
    return switch (k) {
      case 0 -> choices("-7/3", "-5/3", "5/3", "7/3", "5");
      case 2 -> choices("-19/11", "-1", "-11/19", "-1/7", "19/11");
      case 6 -> new Response.Work(4);
      default -> new Response.ShortAnswer(2 + k % 3);
    };
  }

  private static Response choices(String... values) {
    List<Response.Choice> choices = new ArrayList<>();
    for (int k = 0; k < values.length; k++) {
      choices.add(new Response.Choice(String.valueOf((char) ('A' + k)), line(f(values[k]))));
    }
    return new Response.Choices(choices);
  }

  private static Block.Item item(int k, Optional<Scoring> scoring) {
    return new Block.Item(
        k + 1, Optional.of(k < 2 ? 1 : 4), List.of(STATEMENTS.get(k)), response(k), scoring);
  }

  /** The same items with what is right. */
  public static Document key() {
    List<Scoring> keys =
        List.of(
            new Scoring.ByLetter("C"),
            new Scoring.ByText("8", List.of("8.0")),
            new Scoring.ByLetter("A"),
            new Scoring.ByText("14", List.of()),
            new Scoring.ByText("26", List.of()),
            new Scoring.ByText("3 or -10", List.of("-10 or 3", "3, -10")),
            new Scoring.ByHand(),
            new Scoring.ByText("4", List.of()),
            new Scoring.ByText("109", List.of()),
            new Scoring.ByText("11/3", List.of("3 2/3", "22/6")));
    List<Block> blocks = new ArrayList<>();
    for (int k = 0; k < STATEMENTS.size(); k++) {
      blocks.add(item(k, Optional.of(keys.get(k))));
    }
    blocks.add(
        new Block.Table(
            line("Wrong answers and the slips behind them"),
            List.of(
                new Block.Table.Column(line("Item"), Block.Table.Placing.END, 1),
                new Block.Table.Column(line("Value"), Block.Table.Placing.END, 2),
                new Block.Table.Column(line("Slip"), Block.Table.Placing.START, 6)),
            List.of(
                List.of(line("2"), line(f("34")), line("leading coefficient forgotten")),
                List.of(line("2"), line(f("17/2")), line("cross term ", f("2rs"), " once")),
                List.of(line("3"), line(f("19/11")), line("sign of ", f("r - 3"), " turned")))));
    return new Document(
        "Sums over the roots of a cubic: key",
        Language.ENGLISH,
        Audience.COACH,
        Layout.USUAL,
        IDENTITY,
        blocks);
  }

  /** Worked solutions with reasons at the line's end. */
  public static Document solutions() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Item 3"));
    blocks.add(STATEMENTS.get(2));
    blocks.add(worked("P(x) = 5x^3 - 10x^2 + x - 4", "name the polynomial"));
    blocks.add(
        worked(
            "1/(x-r) + 1/(x-s) + 1/(x-t) = P'(x)/P(x)",
            "the logarithmic derivative, any multiplicity"));
    blocks.add(worked("P(3) = 135 - 90 + 3 - 4 = 44", "put 3 for x"));
    blocks.add(worked("P'(3) = 135 - 60 + 1 = 76", "P′ = 15x² − 20x + 1"));
    blocks.add(worked("1/(3-r) + 1/(3-s) + 1/(3-t) = 76/44 = 19/11", "divide"));
    blocks.add(
        worked("1/(r-3) + 1/(s-3) + 1/(t-3) = -19/11", "every denominator changes its sign"));
    blocks.add(
        Block.paragraph(
            Piece.strong(Piece.words("Answer ")),
            f("-19/11"),
            " ≈ ",
            new Piece.Decimal(new BigDecimal("-1.7273")),
            "."));
    blocks.add(
        new Block.Frame(
            line("What goes wrong"),
            List.of(
                new Block.Entries(
                    Block.Entries.Marker.DASH,
                    List.of(
                        line("The sign of ", f("r - 3"), " is not turned: ", f("19/11"), "."),
                        line("The fraction is turned over: ", f("-11/19"), "."))))));
    blocks.add(Block.heading("Item 5"));
    blocks.add(STATEMENTS.get(4));
    blocks.add(worked("S_1 = 2", "read off"));
    blocks.add(worked("S_2 = 2*S_1 - 2*3 = -2", "Newton"));
    blocks.add(
        worked(
            "S_4 = 2*S_3 - 3*S_2 + 5*S_1 = 10 + 6 + 10 = 26",
            "multiply P(r) = 0 by r and sum over the roots"));
    blocks.add(new Block.Display(f("S_4 = 26")));
    blocks.add(
        new Block.Figure(
            new Svg(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-20 -12 40 24\"><path"
                    + " d=\"M-18 0H18M0 -11V11\" stroke=\"black\" stroke-width=\"0.3\"/><circle"
                    + " cx=\"11\" cy=\"0\" r=\"0.8\"/><circle cx=\"-4\" cy=\"6\" r=\"0.8\"/><circle"
                    + " cx=\"-4\" cy=\"-6\" r=\"0.8\"/></svg>"),
            "The three roots in the plane: one real, two conjugate.",
            60,
            line("The roots of ", f("x^3 - 2x^2 + 3x - 5"), ".")));
    return new Document(
        "Sums over the roots of a cubic: solutions",
        Language.ENGLISH,
        Audience.COACH,
        Layout.USUAL,
        IDENTITY,
        blocks);
  }

  private static Block worked(String claim, String reason) {
    return new Block.WorkedLine(line(f(claim)), line(reason));
  }
}
