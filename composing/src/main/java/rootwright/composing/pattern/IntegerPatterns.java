package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.alone;
import static rootwright.composing.pattern.Written.bears;
import static rootwright.composing.pattern.Written.statement;
import static rootwright.composing.pattern.Written.withLetter;
import static rootwright.composing.pattern.Written.withRoots;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** Integers among roots, integers with given values, descent. */
final class IntegerPatterns {

  static final List<Pattern> ALL =
      List.of(
          new Pattern(
              "integer-roots-quadratic",
              "all values of a letter for which a quadratic has integer roots, or their number",
              "integer-roots",
              List.of(2),
              AnswerSort.WHOLE,
              IntegerPatterns::quadratic),
          new Pattern(
              "integer-roots-cubic",
              "all values of a letter for which a cubic has integer roots",
              "integer-roots",
              List.of(3),
              AnswerSort.WHOLE,
              IntegerPatterns::cubic),
          new Pattern(
              "integers-with-squares",
              "three positive integers whose squares have a given sum",
              "integer-numbers",
              List.of(),
              AnswerSort.SEVERAL,
              IntegerPatterns::squares),
          new Pattern(
              "descent",
              "the quotient of a divisibility in two integers, by descent",
              "vieta-jumping",
              List.of(),
              AnswerSort.WHOLE,
              IntegerPatterns::descent));

  private IntegerPatterns() {}

  private static Optional<Statement> quadratic(Chance chance, Scale scale) {
    String asked =
        chance.oneOf("b if distinct integer roots", "number of b if distinct integer roots");
    int number = chance.between(6, 6 * scale.size());
    int times = chance.between(2, Math.max(3, scale.roots()));
    return switch (chance.between(0, 2)) {
      case 0 ->
          divisors(number) < 6 || divisors(number) > 12
              ? Optional.empty()
              : statement("x^2 + b x + " + number, asked);
      case 1 -> statement("x^2 - m x + %d m".formatted(times), "m if integer roots");
      default ->
          statement(
              "x^2 - p x + (%d p%s)"
                  .formatted(times, Written.signed(chance.nonZero(scale.roots()))),
              chance.oneOf("p if integer roots", "number of p if integer roots"));
    };
  }

  private static int divisors(int number) {
    int count = 0;
    for (int k = 1; k <= number; k++) {
      count += number % k == 0 ? 1 : 0;
    }
    return count;
  }

  private static Optional<Statement> cubic(Chance chance, Scale scale) {
    int first = chance.nonZero(scale.roots());
    int second = chance.nonZero(scale.roots());
    int sum = chance.flip() ? 0 : chance.nonZero(3);
    Polynomial polynomial = withRoots(first, second, (long) sum - first - second);
    return polynomial.coefficient(0).isZero()
            || polynomial.coefficient(1).isZero()
            || !bears(scale, polynomial)
        ? Optional.empty()
        : statement(withLetter(polynomial, 1, "k"), "k if integer roots");
  }

  private static Optional<Statement> squares(Chance chance, Scale scale) {
    int most = Math.max(4, scale.roots());
    int first = chance.between(1, most);
    int second = chance.between(1, most);
    int third = chance.between(1, most);
    return alone(
        "numbers if x^2 + y^2 + z^2 = %d, x, y, z positive integers"
            .formatted(first * first + second * second + third * third));
  }

  /** a² + b² + c divisible by ab: every c has the quotient c + 2 by a = b = 1, some have more. */
  private static Optional<Statement> descent(Chance chance, Scale scale) {
    int free = chance.between(1, Math.max(12, scale.size()));
    return alone(
        chance.flip()
            ? "k if a^2 + b^2 + %d = k a b, a, b positive integers".formatted(free)
            : "quotient if a b divides a^2 + b^2 + %d, a, b positive integers".formatted(free));
  }
}
