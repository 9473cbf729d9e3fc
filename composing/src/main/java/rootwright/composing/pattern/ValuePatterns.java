package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.alone;

import java.util.List;
import java.util.Optional;
import rootwright.working.problem.Statement;

/** Numbers from their symmetric values. */
final class ValuePatterns {

  static final List<Pattern> ALL =
      List.of(
          pattern(
              "two-numbers",
              "a sum of powers of two numbers from their sum and product",
              "value",
              AnswerSort.WHOLE,
              ValuePatterns::twoNumbers),
          pattern(
              "number-and-reciprocal",
              "a power of a number and of its reciprocal from their sum",
              "value",
              AnswerSort.WHOLE,
              ValuePatterns::reciprocal),
          pattern(
              "three-numbers",
              "a symmetric value of three numbers from three sums of powers",
              "value",
              AnswerSort.WHOLE,
              ValuePatterns::threeNumbers),
          pattern(
              "find-the-numbers",
              "three numbers from three sums of powers",
              "roots",
              AnswerSort.WHOLE,
              ValuePatterns::numbers),
          pattern(
              "polynomial-of-numbers",
              "the polynomial of three numbers from their symmetric values",
              "polynomial-of-numbers",
              AnswerSort.POLYNOMIALS,
              ValuePatterns::polynomial));

  private ValuePatterns() {}

  private static Pattern pattern(
      String name, String words, String kind, AnswerSort answers, Pattern.Recipe recipe) {
    return new Pattern(name, words, kind, List.of(), answers, recipe);
  }

  private static Optional<Statement> twoNumbers(Chance chance, Scale scale) {
    int sum = chance.nonZero(scale.roots());
    int product = chance.nonZero(scale.roots());
    int power = chance.between(3, 6);
    // Two numbers with a square discriminant can be guessed.
    long discriminant = (long) sum * sum - 4L * product;
    if (discriminant <= 0 || Written.isSquare(discriminant)) {
      return Optional.empty();
    }
    String given =
        chance.flip()
            ? "x + y = %d, x y = %d".formatted(sum, product)
            : "x + y = %d, x^2 + y^2 = %d".formatted(sum, sum * sum - 2 * product);
    return alone("x^%d + y^%d if %s".formatted(power, power, given));
  }

  private static Optional<Statement> reciprocal(Chance chance, Scale scale) {
    int sum = chance.between(3, Math.max(4, scale.size()));
    int power = chance.between(2, 6);
    String sign = chance.between(1, 3) == 3 ? "-" : "+";
    return alone(
        "x^%d %s 1/x^%d if x %s 1/x = %d"
            .formatted(power, sign.equals("-") && power % 2 == 1 ? "-" : "+", power, sign, sum));
  }

  /** The sums of powers of the roots of x³ − ax² + bx − c, by Newton's identities. */
  private record Sums(int first, int second, int third) {
    static Sums of(int sum, int pairs, int product) {
      int second = sum * sum - 2 * pairs;
      return new Sums(sum, second, sum * second - pairs * sum + 3 * product);
    }

    String text() {
      return "x + y + z = %d, x^2 + y^2 + z^2 = %d, x^3 + y^3 + z^3 = %d"
          .formatted(first, second, third);
    }

    boolean isShort(Scale scale) {
      return scale.bears(second) && scale.bears(third);
    }
  }

  private static Optional<Statement> threeNumbers(Chance chance, Scale scale) {
    Sums sums =
        Sums.of(
            chance.between(-scale.roots(), scale.roots()),
            chance.nonZero(scale.roots()),
            chance.nonZero(scale.roots()));
    String asked = chance.oneOf("x y z", "x^4 + y^4 + z^4", "x^5 + y^5 + z^5", "x y + y z + z x");
    return sums.isShort(scale) ? alone(asked + " if " + sums.text()) : Optional.empty();
  }

  private static Optional<Statement> numbers(Chance chance, Scale scale) {
    int most = Math.min(9, scale.roots());
    int x = chance.nonZero(most);
    int y = chance.nonZero(most);
    int z = chance.nonZero(most);
    Sums sums = Sums.of(x + y + z, x * y + y * z + z * x, x * y * z);
    return x == y || y == z || z == x || !sums.isShort(scale)
        ? Optional.empty()
        : alone("x, y, z if " + sums.text());
  }

  private static Optional<Statement> polynomial(Chance chance, Scale scale) {
    int sum = chance.nonZero(scale.roots());
    int pairs = chance.nonZero(scale.roots());
    int product = chance.nonZero(scale.roots());
    return alone(
        "polynomial if x + y + z = %d, x^2 + y^2 + z^2 = %d, x y z = %d"
            .formatted(sum, sum * sum - 2 * pairs, product));
  }
}
