package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;

/**
 * When four roots are in progression, by e_1, …, e_4.
 *
 * <p>Arithmetic: the roots less their mean are ±d and ±3d, so the third coefficient of the shifted
 * quartic is 0, and its fourth, 9d⁴, is 9/100 of the square of its second, −10d².
 *
 * <p>Geometric: the roots are g·q³, g·q, g/q, g/q³ with g² = e_3/e_1 and g⁴ = e_4. With v = (q +
 * 1/q)², A = e_1²/g² = v(v − 2)² and B = e_2/g² = (v − 1)(v − 2); hence A = (B − 1)v + 2 − B, and v
 * leaves the two equations.
 */
final class QuarticProgression {

  private QuarticProgression() {}

  /** The condition for a progression of this kind, by its first letter. */
  static Optional<Condition.Zeros> of(char kind) {
    return switch (kind) {
      case 'a' ->
          Optional.of(
              zeros(
                  "arithmetic",
                  "e_1^3 - 4e_1 e_2 + 8e_3",
                  "100(e_4 - e_1 e_3/4 + e_1^2 e_2/16 - 3e_1^4/256) - 9(e_2 - 3e_1^2/8)^2"));
      case 'g' ->
          Optional.of(
              zeros(
                  "geometric",
                  "e_3^2 - e_1^2 e_4",
                  "(e_1^3/e_3 + e_1 e_2/e_3 - 2)^2"
                      + " - 3(e_1^3/e_3 + e_1 e_2/e_3 - 2)(e_1 e_2/e_3 - 1)"
                      + " - (e_1 e_2/e_3 - 2)(e_1 e_2/e_3 - 1)^2"));
      default -> Optional.empty();
    };
  }

  private static Condition.Zeros zeros(String word, String first, String second) {
    List<Formula> zeros = List.of(read(first), read(second));
    List<Formula> equations =
        zeros.stream().map(zero -> Formula.equation(zero, Formula.number(0))).toList();
    return new Condition.Zeros(
        "the roots are in %s progression in some order".formatted(word), zeros, equations);
  }

  private static Formula read(String text) {
    try {
      return FormulaReader.formula(text);
    } catch (UnreadableException ours) {
      throw new IllegalStateException(ours);
    }
  }
}
