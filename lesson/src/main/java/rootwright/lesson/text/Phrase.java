package rootwright.lesson.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.document.Piece;
import rootwright.press.prose.Dots;
import rootwright.press.prose.PlainText;

/**
 * A line of words with formulas in it. As typed, formulas stand between backquotes and {@code …}
 * may stand in them: {@code For k from 1 to n, `e_k = (-1)^k*a_k/a`}.
 *
 * @param parts in reading order
 */
public record Phrase(List<Part> parts) {

  /** Nothing said. */
  public static final Phrase EMPTY = new Phrase(List.of());

  public Phrase {
    parts = List.copyOf(parts);
  }

  /**
   * Reads a phrase.
   *
   * @throws UnreadableException if a formula in it cannot be read
   */
  public static Phrase read(String typed) throws UnreadableException {
    List<Part> parts = new ArrayList<>();
    String[] pieces = typed.split("`", -1);
    for (int k = 0; k < pieces.length; k++) {
      boolean formula = k % 2 == 1 && k < pieces.length - 1;
      if (formula) {
        parts.add(new Part.Mathematics(Dots.read(pieces[k])));
      } else if (!pieces[k].isEmpty()) {
        parts.add(new Part.Words(pieces[k]));
      }
    }
    return new Phrase(parts);
  }

  /** A line of words with the formulas found that nobody marked: {@code For k from 1 to n}. */
  public static Phrase scanned(String line) {
    List<Part> parts = new ArrayList<>();
    for (Piece piece : PlainText.read(line)) {
      parts.add(
          piece instanceof Piece.Mathematics mathematics
              ? new Part.Mathematics(mathematics.formula())
              : new Part.Words(((Piece.Words) piece).text()));
    }
    return new Phrase(parts);
  }

  /** The same with the formulas found that nobody marked. */
  public Phrase scanned() {
    List<Part> all = new ArrayList<>();
    for (Part part : parts) {
      if (part instanceof Part.Words words) {
        all.addAll(scanned(words.text()).parts());
      } else {
        all.add(part);
      }
    }
    return new Phrase(all);
  }

  /** A phrase of one formula. */
  public static Phrase of(Formula formula) {
    return new Phrase(List.of(new Part.Mathematics(formula)));
  }

  /** A phrase of words only. */
  public static Phrase words(String words) {
    return words.isEmpty() ? EMPTY : new Phrase(List.of(new Part.Words(words)));
  }

  /** This phrase and another one after it, with a text between if both say something. */
  public Phrase then(String between, Phrase other) {
    if (isEmpty() || other.isEmpty()) {
      return isEmpty() ? other : this;
    }
    List<Part> all = new ArrayList<>(parts);
    if (!between.isEmpty()) {
      all.add(new Part.Words(between));
    }
    all.addAll(other.parts);
    return new Phrase(all);
  }

  /** The same with a capital letter first, if it begins with words. */
  public Phrase capitalised() {
    if (isEmpty() || !(parts.get(0) instanceof Part.Words first) || first.text().isEmpty()) {
      return this;
    }
    List<Part> all = new ArrayList<>(parts);
    int letter = first.text().offsetByCodePoints(0, 1);
    all.set(
        0,
        new Part.Words(
            first.text().substring(0, letter).toUpperCase(Locale.ROOT)
                + first.text().substring(letter)));
    return new Phrase(all);
  }

  /** Whether nothing is said. */
  public boolean isEmpty() {
    return parts.isEmpty();
  }

  /** The formulas in it. */
  public List<Formula> formulas() {
    List<Formula> formulas = new ArrayList<>();
    for (Part part : parts) {
      if (part instanceof Part.Mathematics mathematics) {
        formulas.add(mathematics.formula());
      }
    }
    return formulas;
  }

  /** On one line with true signs, for a terminal or a text file. */
  public String plain() {
    StringBuilder text = new StringBuilder();
    for (Part part : parts) {
      text.append(
          part instanceof Part.Words words
              ? words.text()
              : UnicodeWriter.write(((Part.Mathematics) part).formula()));
    }
    return text.toString();
  }
}
