package rootwright.lesson.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.lesson.text.Part;
import rootwright.lesson.text.Phrase;
import rootwright.press.formula.Engraver;
import rootwright.press.formula.Signs;
import rootwright.press.formula.Style;
import rootwright.press.pdf.Typeface;

/** Sets phrases and formulas as atoms of rows. */
final class Setter {

  /** The size of text, in pixels: 24 points where a slide is seven and a half inches high. */
  static final double SIZE = 48;

  private Setter() {}

  static List<Atom> phrase(Phrase phrase, Typeface.Cut cut, double widest) {
    List<Atom> atoms = new ArrayList<>();
    boolean blank = false;
    for (Part part : phrase.parts()) {
      if (part instanceof Part.Words words) {
        String text = words.text().replaceAll("(?<=\\p{L})'(?=\\p{L})", "’");
        blank |= text.startsWith(" ");
        for (String word : text.strip().split("\\s+")) {
          if (!word.isEmpty()) {
            word(word, cut, blank, atoms);
            blank = true;
          }
        }
        blank = text.endsWith(" ");
      } else {
        List<Atom.Piece> pieces = Pieces.of(((Part.Mathematics) part).formula(), SIZE, widest);
        for (int k = 0; k < pieces.size(); k++) {
          Atom.Piece piece = pieces.get(k);
          boolean first = k == 0;
          atoms.add(
              new Atom.Piece(
                  piece.drawing(),
                  "",
                  piece.sign(),
                  first ? (blank ? room() : 0) : piece.room(),
                  first ? blank : piece.mayBreak()));
        }
        blank = false;
      }
    }
    return atoms;
  }

  static List<Atom> formula(Formula formula, double widest) {
    return new ArrayList<>(Pieces.of(formula, SIZE, widest));
  }

  /** The width of a blank. */
  static double room() {
    return SIZE * 0.3;
  }

  /** A word; signs that the typeface lacks are drawn as formulas. */
  private static void word(String word, Typeface.Cut cut, boolean blank, List<Atom> atoms) {
    StringBuilder run = new StringBuilder();
    boolean first = blank;
    for (int point : word.codePoints().toArray()) {
      Optional<Signs.Sign> sign =
          Typeface.SERIF.has(point) ? Optional.empty() : Signs.formula(point);
      if (sign.isEmpty()) {
        run.appendCodePoint(point);
        continue;
      }
      first = flush(run, cut, first, atoms);
      atoms.add(
          new Atom.Piece(
              Engraver.engrave(sign.get().latex(), Style.TEXT, SIZE),
              "",
              true,
              first ? room() : 0,
              first));
      first = false;
    }
    flush(run, cut, first, atoms);
  }

  private static boolean flush(
      StringBuilder run, Typeface.Cut cut, boolean blank, List<Atom> atoms) {
    if (run.isEmpty()) {
      return blank;
    }
    atoms.add(Atom.Word.of(run.toString(), SIZE, cut, blank ? room() : 0, blank));
    run.setLength(0);
    return false;
  }
}
