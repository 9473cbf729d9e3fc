package rootwright.lesson.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.press.formula.Breaks;
import rootwright.press.formula.Drawing;
import rootwright.press.formula.Engraver;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.formula.Style;

/** Takes a formula apart into terms and the signs between them, so that each can be marked. */
final class Pieces {

  private static final double RELATION = 5 / 18.0;
  private static final double BINARY = 4 / 18.0;

  private static final Set<String> RELATIONS =
      Set.of("=", "\\ne", "<", "\\le", ">", "\\ge", "\\equiv");

  private final double size;
  private final double widest;
  private final List<Atom.Piece> pieces = new ArrayList<>();

  private Pieces(double size, double widest) {
    this.size = size;
    this.widest = widest;
  }

  /**
   * The pieces of a formula.
   *
   * @param widest what fits in a row; a wider term is taken apart further
   */
  static List<Atom.Piece> of(Formula formula, double size, double widest) {
    Pieces made = new Pieces(size, widest);
    made.add(NormalForm.of(formula), 0, false);
    return made.unbrokenSides();
  }

  private void add(Formula formula, double room, boolean mayBreak) {
    if (formula instanceof Formula.Relation relation) {
      add(relation.sides().get(0), room, mayBreak);
      for (int k = 0; k < relation.comparisons().size(); k++) {
        sign(sign(relation.comparisons().get(k)), RELATION);
        add(relation.sides().get(k + 1), RELATION, false);
      }
    } else if (formula instanceof Formula.Sum sum) {
      add(sum.terms().get(0), room, mayBreak);
      for (Formula term : sum.terms().subList(1, sum.terms().size())) {
        boolean minus =
            term instanceof Formula.Negative
                || (term instanceof Formula.Numeral number && number.value().signum() < 0);
        sign(minus ? "-" : "+", BINARY);
        add(minus ? opposite(term) : term, BINARY, false);
      }
    } else if (formula instanceof Formula.Listing listing) {
      for (int k = 0; k < listing.items().size(); k++) {
        add(listing.items().get(k), k == 0 ? room : RELATION, k > 0);
        if (k < listing.items().size() - 1) {
          pieces.add(new Atom.Piece(drawn(","), ",", true, 0, false));
        }
      }
    } else if (formula instanceof Formula.Product product && isOfBrackets(product)) {
      for (int k = 0; k < product.factors().size(); k++) {
        term(product.factors().get(k), k == 0 ? room : 0, k == 0 && mayBreak);
      }
    } else {
      term(formula, room, mayBreak);
    }
  }

  /** Factors in brackets can be marked one by one. */
  private static boolean isOfBrackets(Formula.Product product) {
    return product.factors().stream()
        .skip(1)
        .allMatch(
            factor ->
                factor instanceof Formula.Sum
                    || (factor instanceof Formula.Power power
                        && power.base() instanceof Formula.Sum));
  }

  /** Whether a piece is the sign between two sides. */
  static boolean isRelation(String key) {
    return RELATIONS.contains(key);
  }

  /** A side that fits a row is not broken: the row ends before its relation sign. */
  private List<Atom.Piece> unbrokenSides() {
    List<Atom.Piece> result = new ArrayList<>();
    for (int from = 0; from < pieces.size(); ) {
      int to = from + 1;
      while (to < pieces.size() && !isRelation(pieces.get(to).key())) {
        to++;
      }
      List<Atom.Piece> side = pieces.subList(from, to);
      double width = side.stream().mapToDouble(each -> each.room() + each.width()).sum();
      for (int k = 0; k < side.size(); k++) {
        Atom.Piece piece = side.get(k);
        boolean mayBreak = piece.mayBreak() && (k == 0 || width > widest || piece.key().isEmpty());
        result.add(
            new Atom.Piece(piece.drawing(), piece.key(), piece.sign(), piece.room(), mayBreak));
      }
      from = to;
    }
    return result;
  }

  private static Formula opposite(Formula term) {
    return term instanceof Formula.Negative negative
        ? negative.of()
        : Formula.number(((Formula.Numeral) term).value().negate());
  }

  private void sign(String latex, double room) {
    pieces.add(new Atom.Piece(drawn(latex), latex, true, room * size, true));
  }

  private void term(Formula term, double room, boolean mayBreak) {
    String written = FormulaScripts.USUAL.latex().apply(term);
    Drawing whole = drawn(term instanceof Formula.Sum ? "\\left(" + written + "\\right)" : written);
    if (whole.width() <= widest) {
      pieces.add(
          new Atom.Piece(
              whole, FormulaScripts.USUAL.unicode().apply(term), false, room * size, mayBreak));
      return;
    }
    boolean first = true;
    for (Formula part :
        Breaks.pieces(
            term, part -> drawn(FormulaScripts.USUAL.latex().apply(part)).width() <= widest)) {
      pieces.add(
          new Atom.Piece(
              drawn(FormulaScripts.USUAL.latex().apply(part)),
              FormulaScripts.USUAL.unicode().apply(part),
              false,
              first ? room * size : Breaks.leadingRoom(part) / 18.0 * size,
              !first || mayBreak));
      first = false;
    }
  }

  private Drawing drawn(String latex) {
    return Engraver.engrave(latex, Style.DISPLAY, size);
  }

  private static String sign(Formula.Comparison comparison) {
    return switch (comparison) {
      case EQUAL -> "=";
      case NOT_EQUAL -> "\\ne";
      case LESS -> "<";
      case AT_MOST -> "\\le";
      case GREATER -> ">";
      case AT_LEAST -> "\\ge";
      case CONGRUENT -> "\\equiv";
    };
  }
}
