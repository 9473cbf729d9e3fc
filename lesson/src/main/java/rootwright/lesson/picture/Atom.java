package rootwright.lesson.picture;

import rootwright.press.formula.Drawing;
import rootwright.press.pdf.Typeface;

/** What is set in a row, one after the other. */
sealed interface Atom {

  double width();

  double ascent();

  double descent();

  /** The room before it, which is not wanted at the beginning of a row. */
  double room();

  /** Whether a row may end before it. */
  boolean mayBreak();

  /**
   * A word.
   *
   * @param width measured once, since it is asked for often
   */
  record Word(
      String text, double size, Typeface.Cut cut, double room, boolean mayBreak, double width)
      implements Atom {

    /** A word of this size. */
    static Word of(String text, double size, Typeface.Cut cut, double room, boolean mayBreak) {
      return new Word(text, size, cut, room, mayBreak, Typeface.SERIF.width(text, cut, size));
    }

    /** The same after another room, where a row may end. */
    Word after(double otherRoom) {
      return new Word(text, size, cut, otherRoom, true, width);
    }

    @Override
    public double ascent() {
      return 0.72 * size;
    }

    @Override
    public double descent() {
      return 0.22 * size;
    }
  }

  /**
   * A piece of a formula.
   *
   * @param key what it says, by which pieces of two lines are compared; empty in a text
   * @param sign whether it is only a sign between terms
   */
  record Piece(Drawing drawing, String key, boolean sign, double room, boolean mayBreak)
      implements Atom {
    @Override
    public double width() {
      return drawing.width();
    }

    @Override
    public double ascent() {
      return drawing.height() - drawing.depth();
    }

    @Override
    public double descent() {
      return drawing.depth();
    }
  }
}
