package rootwright.press.deliverable;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.press.document.Piece;
import rootwright.working.answer.Answer;

/** An answer as it is printed. */
final class AnswerPieces {

  private static final int DIGITS = 5;

  private AnswerPieces() {}

  /** The exact answer; several values are joined by "or". */
  static List<Piece> exact(Answer answer) {
    List<ExactValue> values = values(answer);
    if (values.size() < 2) {
      return List.of(Piece.math(answer.formula()));
    }
    List<Piece> pieces = new ArrayList<>();
    for (ExactValue value : values) {
      if (!pieces.isEmpty()) {
        pieces.add(Piece.words(" or "));
      }
      pieces.add(Piece.math(value.toFormula()));
    }
    return pieces;
  }

  /** The exact answer with decimals in brackets, where it is not whole, to check by size. */
  static List<Piece> withDecimal(Answer answer) {
    List<Piece> pieces = new ArrayList<>(exact(answer));
    List<List<Piece>> decimals = new ArrayList<>();
    for (ExactValue value : values(answer)) {
      if (value.isReal()) {
        decimal(value).ifPresent(number -> decimals.add(List.of(new Piece.Decimal(number))));
      }
    }
    if (!decimals.isEmpty()) {
      boolean exact = values(answer).stream().allMatch(AnswerPieces::ends);
      pieces.add(Piece.words(exact ? " (= " : " (≈ "));
      pieces.add(new Piece.Enumeration(decimals));
      pieces.add(Piece.words(")"));
    }
    return pieces;
  }

  private static Optional<BigDecimal> decimal(ExactValue value) {
    return value
        .decimal(DIGITS)
        .map(BigDecimal::new)
        .map(decimal -> ends(value) ? decimal.stripTrailingZeros() : decimal);
  }

  /** Whether the decimal that is shown is the number itself. */
  private static boolean ends(ExactValue value) {
    return value instanceof RationalValue rational
        && value
            .decimal(DIGITS)
            .map(BigDecimal::new)
            .map(
                decimal ->
                    decimal
                            .multiply(new BigDecimal(rational.number().denominator()))
                            .compareTo(new BigDecimal(rational.number().numerator()))
                        == 0)
            .orElse(true);
  }

  private static List<ExactValue> values(Answer answer) {
    if (answer instanceof Answer.Exact exact) {
      return List.of(exact.value());
    } else if (answer instanceof Answer.Values several) {
      return several.values();
    } else if (answer instanceof Answer.Solutions solutions) {
      return solutions.values();
    }
    return List.of();
  }
}
