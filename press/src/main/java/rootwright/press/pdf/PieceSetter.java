package rootwright.press.pdf;

import java.util.List;
import java.util.Locale;
import rootwright.press.document.Piece;
import rootwright.press.formula.Engraver;
import rootwright.press.formula.Signs;
import rootwright.press.formula.Style;
import rootwright.press.markup.Markup;
import rootwright.press.output.UnprintableException;

/** Sets the pieces of a line; each answer is the width it takes. */
final class PieceSetter implements Piece.Cases<Double> {

  /**
   * Takes no room and lets no line end. The formatter drops blanks at the beginning and the end of
   * a block, and does not count outlines as content: a letter on both sides keeps the blanks
   * between the pieces of a formula, and one at the end those before the last formula.
   */
  private static final String NOT_BLANK = "\u2060";

  private final Setting setting;
  private final Manner manner;
  private final Typeface.Cut cut;
  private final Markup into;

  /**
   * How formulas in a line are treated.
   *
   * @param style the size of fractions
   * @param wholeUpTo formulas up to this width are not broken
   * @param measure the width of a line
   */
  record Manner(Style style, double wholeUpTo, double measure) {

    /** Running text: a formula may be broken if it takes much of a line. */
    static Manner running(double measure) {
      return new Manner(Style.DISPLAY, measure * 0.4, measure);
    }

    /** A line of its own: a formula is broken only if it does not fit, at its relations first. */
    static Manner alone(double measure) {
      return new Manner(Style.DISPLAY, measure, measure);
    }
  }

  private PieceSetter(Setting setting, Manner manner, Typeface.Cut cut, Markup into) {
    this.setting = setting;
    this.manner = manner;
    this.cut = cut;
    this.into = into;
  }

  /** The pieces, set. */
  static SetLine set(List<Piece> pieces, Setting setting, Manner manner, Typeface.Cut cut) {
    Markup into = new Markup();
    double width = new PieceSetter(setting, manner, cut, into).all(pieces);
    if (!pieces.isEmpty() && pieces.get(pieces.size() - 1) instanceof Piece.Mathematics) {
      into.text(NOT_BLANK);
    }
    return new SetLine(into.finished(), width);
  }

  private double all(List<Piece> pieces) {
    double width = 0;
    for (int k = 0; k < pieces.size(); k++) {
      Piece piece = pieces.get(k);
      boolean tied = k + 1 < pieces.size() && isShort(pieces.get(k + 1));
      width += (tied ? tied(piece) : piece).choose(this);
    }
    return width;
  }

  /** A short formula should not begin a line without the word before it. */
  private boolean isShort(Piece piece) {
    return piece instanceof Piece.Mathematics mathematics
        && setting.formulas().width(mathematics.formula(), manner.style())
            < 4 * setting.page().size();
  }

  private static Piece tied(Piece before) {
    return before instanceof Piece.Words words && words.text().matches("(?s).*\\p{L} ")
        ? new Piece.Words(words.text().substring(0, words.text().length() - 1) + "\u00A0")
        : before;
  }

  @Override
  public Double words(Piece.Words words) {
    double width = 0;
    StringBuilder run = new StringBuilder();
    for (int point : words.text().codePoints().toArray()) {
      if (Character.isWhitespace(point)) {
        run.append(' ');
      } else if (setting.typeface().has(point)) {
        run.appendCodePoint(point);
      } else {
        width += text(run.toString()) + sign(point);
        run.setLength(0);
      }
    }
    return width + text(run.toString());
  }

  private double text(String run) {
    into.text(run);
    return run.isEmpty() ? 0 : setting.width(run, cut);
  }

  private double sign(int point) {
    Signs.Sign sign =
        Signs.formula(point)
            .orElseThrow(
                () ->
                    new UnprintableException(
                        "The typeface of the pages has no letter '%s' (U+%04X)."
                            .formatted(Character.toString(point), point)));
    SetFormula set =
        new SetFormula(
            Engraver.engrave(sign.latex(), Style.TEXT, setting.page().size()),
            0,
            1,
            sign.linear(),
            Character.getName(point).toLowerCase(Locale.ROOT));
    FormulaObject.write(set, setting, into);
    return set.width();
  }

  @Override
  public Double mathematics(Piece.Mathematics mathematics) {
    List<SetFormula> pieces =
        setting
            .formulas()
            .pieces(mathematics.formula(), manner.style(), manner.wholeUpTo(), manner.measure());
    double width = 0;
    String around = pieces.size() > 1 ? NOT_BLANK : "";
    into.text(around);
    for (int k = 0; k < pieces.size(); k++) {
      if (k > 0) {
        width += FormulaObject.room(pieces.get(k), setting, into);
      }
      FormulaObject.write(pieces.get(k), setting, into);
      width += pieces.get(k).width();
    }
    into.text(around);
    return width;
  }

  @Override
  public Double blank(Piece.Blank blank) {
    double width = Math.min(manner.measure(), blank.letters() * setting.page().size() * 0.6);
    Leaders.rule(width, into);
    return width;
  }

  @Override
  public Double emphasis(Piece.Emphasis emphasis) {
    into.open("fo:inline", "font-style", "italic");
    double width =
        new PieceSetter(setting, manner, Typeface.Cut.ITALIC, into).all(emphasis.pieces());
    into.close();
    return width;
  }

  @Override
  public Double strong(Piece.Strong strong) {
    into.open("fo:inline", "font-weight", "bold");
    double width = new PieceSetter(setting, manner, Typeface.Cut.BOLD, into).all(strong.pieces());
    into.close();
    return width;
  }

  @Override
  public Double decimal(Piece.Decimal decimal) {
    return text(setting.language().decimal(decimal.value()));
  }

  @Override
  public Double enumeration(Piece.Enumeration enumeration) {
    double width = 0;
    String between = "";
    for (List<Piece> member : enumeration.members()) {
      width += text(between) + all(member);
      between = setting.language().separator(enumeration);
    }
    return width;
  }
}
