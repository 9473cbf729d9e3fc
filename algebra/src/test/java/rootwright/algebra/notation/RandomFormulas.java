package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import rootwright.algebra.number.Rational;

/** Formulas of every kind that can be read, drawn by chance with a seed. */
final class RandomFormulas {

  private static final String[] LETTERS = {"r", "s", "t", "x", "a", "α", "β", "ω", "P", "k"};
  private static final String[] FUNCTIONS = {"P", "P'", "reduce", "log", "abs", "resolvent", "P''"};

  private static final List<Formula.Comparison> COMPARISONS = List.of(Formula.Comparison.values());

  private final SplittableRandom random;

  RandomFormulas(long seed) {
    random = new SplittableRandom(seed);
  }

  /** The seed of a test: a fixed one unless the system property {@code rootwright.seed} is set. */
  static long seed(long usual) {
    return Long.getLong("rootwright.seed", usual);
  }

  Formula draw(int depth) {
    if (depth == 0 || random.nextInt(6) == 0) {
      return leaf();
    }
    return switch (random.nextInt(16)) {
      case 0, 1, 2 -> new Formula.Sum(several(depth));
      case 3, 4, 5 -> new Formula.Product(several(depth));
      case 6, 7 -> new Formula.Quotient(draw(depth - 1), draw(depth - 1));
      case 8, 9 -> new Formula.Power(draw(depth - 1), exponent(depth));
      case 10 -> new Formula.Negative(draw(depth - 1));
      case 11 -> new Formula.Radical(draw(depth - 1), 2 + random.nextInt(4));
      case 12 ->
          random.nextBoolean()
              ? new Formula.PlusMinus(draw(depth - 1), draw(depth - 1))
              : new Formula.PlusMinus(Formula.number(0), draw(depth - 1));
      case 13 ->
          new Formula.Aggregate(
              random.nextBoolean()
                  ? Formula.Aggregate.Operation.SUM
                  : Formula.Aggregate.Operation.PRODUCT,
              draw(depth - 1));
      case 14 ->
          random.nextInt(8) == 0
              ? new Formula.Application("log", List.of(draw(depth - 1), draw(depth - 1)))
              : new Formula.Application(
                  FUNCTIONS[random.nextInt(FUNCTIONS.length)], List.of(draw(depth - 1)));
      default -> rare(depth);
    };
  }

  private Formula rare(int depth) {
    return switch (random.nextInt(4)) {
      case 0 -> new Formula.Modulo(draw(depth - 1), draw(depth - 1));
      case 1 ->
          new Formula.Relation(
              List.of(draw(depth - 1), draw(depth - 1)),
              List.of(COMPARISONS.get(random.nextInt(COMPARISONS.size()))));
      case 2 -> new Formula.Listing(several(depth));
      default -> new Formula.Family("e", draw(depth - 1));
    };
  }

  private Formula exponent(int depth) {
    return random.nextInt(3) == 0 ? draw(depth - 1) : Formula.number(random.nextInt(13));
  }

  private List<Formula> several(int depth) {
    List<Formula> parts = new ArrayList<>();
    int count = 2 + random.nextInt(3);
    for (int k = 0; k < count; k++) {
      parts.add(draw(depth - 1));
    }
    return parts;
  }

  private Formula leaf() {
    String letter = LETTERS[random.nextInt(LETTERS.length)];
    return switch (random.nextInt(12)) {
      case 0, 1 -> Formula.number(random.nextInt(20));
      case 2 -> Formula.number(-random.nextInt(20));
      case 3 -> Formula.number(Rational.of(random.nextInt(-20, 20), 1 + random.nextInt(9)));
      case 4 -> new Formula.Name(letter, Integer.toString(random.nextInt(30)));
      case 5 -> new Formula.Name(letter, "n");
      case 6 -> new Formula.ImaginaryUnit();
      case 7 ->
          new Formula.Family(
              random.nextBoolean() ? "S" : "h", Formula.number(random.nextInt(-3, 30)));
      case 8 ->
          random.nextInt(4) == 0
              ? new Formula.Application("discriminant", List.of())
              : Formula.name("r'");
      default -> new Formula.Name(letter);
    };
  }
}
