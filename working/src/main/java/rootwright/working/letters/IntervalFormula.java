package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.value.ExactValue;
import rootwright.working.step.LetterInterval;

/** Intervals as they are written. */
final class IntervalFormula {

  private IntervalFormula() {}

  /** {@code -4 < k < 4}; several with commas. */
  static Formula of(List<LetterInterval> pieces, String letter) {
    List<Formula> each = pieces.stream().map(piece -> of(piece, letter)).toList();
    return each.size() == 1 ? each.get(0) : new Formula.Listing(each);
  }

  private static Formula of(LetterInterval piece, String letter) {
    Formula k = Formula.name(letter);
    if (piece.isPoint()) {
      return Formula.equation(k, end(piece.low().orElseThrow()));
    }
    List<Formula> sides = new ArrayList<>();
    List<Formula.Comparison> signs = new ArrayList<>();
    if (piece.low().isPresent() && piece.high().isPresent()) {
      sides.add(end(piece.low().get()));
      signs.add(piece.lowIn() ? Formula.Comparison.AT_MOST : Formula.Comparison.LESS);
    }
    sides.add(k);
    if (piece.high().isPresent()) {
      sides.add(end(piece.high().get()));
      signs.add(piece.highIn() ? Formula.Comparison.AT_MOST : Formula.Comparison.LESS);
    } else if (piece.low().isPresent()) {
      sides.add(end(piece.low().get()));
      signs.add(piece.lowIn() ? Formula.Comparison.AT_LEAST : Formula.Comparison.GREATER);
    } else {
      return new Formula.Words("every real value of " + letter);
    }
    return new Formula.Relation(sides, signs);
  }

  private static Formula end(ExactValue value) {
    return value.toFormula();
  }
}
