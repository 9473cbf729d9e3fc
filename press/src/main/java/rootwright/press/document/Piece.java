package rootwright.press.document;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import rootwright.algebra.notation.Formula;

/** A piece of a line: words, a formula, an emphasis, a decimal, members of an enumeration. */
public sealed interface Piece {

  /** The answer of the case that fits. */
  <R> R choose(Cases<R> cases);

  /**
   * Words as they are read. Blanks at both ends are kept; a typed apostrophe becomes a true one.
   */
  record Words(String text) implements Piece {
    public Words {
      text = text.indexOf('\'') < 0 ? text : text.replaceAll("(?<=\\p{L})'(?=\\p{L})", "’");
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.words(this);
    }
  }

  /** A formula in the line. */
  record Mathematics(Formula formula) implements Piece {
    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.mathematics(this);
    }
  }

  /** A blank in the line, to be filled in, with room for about that many letters. */
  record Blank(int letters) implements Piece {
    /**
     * @throws IllegalArgumentException if there is room for fewer than one letter
     */
    public Blank {
      if (letters < 1) {
        throw new IllegalArgumentException("a blank for %d letters".formatted(letters));
      }
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.blank(this);
    }
  }

  /** Pieces in italics. */
  record Emphasis(List<Piece> pieces) implements Piece {
    public Emphasis {
      pieces = List.copyOf(pieces);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.emphasis(this);
    }
  }

  /** Pieces in bold. */
  record Strong(List<Piece> pieces) implements Piece {
    public Strong {
      pieces = List.copyOf(pieces);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.strong(this);
    }
  }

  /** A decimal, printed with the decimal mark of the language; all its digits are printed. */
  record Decimal(BigDecimal value) implements Piece {
    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.decimal(this);
    }
  }

  /**
   * Members one after the other with the mark of the language between them: a comma, or a semicolon
   * where the comma is the decimal mark and a decimal is among the members.
   */
  record Enumeration(List<List<Piece>> members) implements Piece {
    public Enumeration {
      members = members.stream().map(List::copyOf).toList();
    }

    /** Whether a decimal stands anywhere in it. */
    public boolean holdsDecimal() {
      return members.stream().flatMap(List::stream).anyMatch(Decimal.class::isInstance);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.enumeration(this);
    }
  }

  /**
   * One answer for each kind of piece.
   *
   * @param <R> what is answered
   */
  interface Cases<R> {
    /** The answer for {@link Words}. */
    R words(Words words);

    /** The answer for {@link Mathematics}. */
    R mathematics(Mathematics mathematics);

    /** The answer for {@link Blank}. */
    R blank(Blank blank);

    /** The answer for {@link Emphasis}. */
    R emphasis(Emphasis emphasis);

    /** The answer for {@link Strong}. */
    R strong(Strong strong);

    /** The answer for {@link Decimal}. */
    R decimal(Decimal decimal);

    /** The answer for {@link Enumeration}. */
    R enumeration(Enumeration enumeration);
  }

  /** Words. */
  static Piece words(String text) {
    return new Words(text);
  }

  /** A formula. */
  static Piece math(Formula formula) {
    return new Mathematics(formula);
  }

  /** Pieces in bold. */
  static Piece strong(Piece... pieces) {
    return new Strong(List.of(pieces));
  }

  /** Pieces in italics. */
  static Piece emphasis(Piece... pieces) {
    return new Emphasis(List.of(pieces));
  }

  /**
   * A line from texts and formulas, told apart by what they are.
   *
   * @param parts each a {@link String}, a {@link Formula} or a {@link Piece}
   * @throws IllegalArgumentException if a part is none of these
   */
  static List<Piece> line(Object... parts) {
    return Arrays.stream(parts).map(Piece::of).toList();
  }

  private static Piece of(Object part) {
    if (part instanceof String text) {
      return new Words(text);
    }
    if (part instanceof Formula formula) {
      return new Mathematics(formula);
    }
    if (part instanceof Piece piece) {
      return piece;
    }
    throw new IllegalArgumentException("neither words nor formula nor piece: " + part);
  }
}
