package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.alone;

import java.util.List;
import java.util.Optional;
import rootwright.working.problem.Statement;

/** Bounds on real and positive numbers, and identities under a condition. */
final class BoundPatterns {

  static final List<Pattern> ALL =
      List.of(
          pattern(
              "greatest-of-reals",
              "the greatest or least of real numbers from their sum and sum of squares",
              "bound",
              AnswerSort.WHOLE,
              BoundPatterns::cauchy),
          pattern(
              "range-of-product",
              "the greatest or least product of three real numbers",
              "bound",
              AnswerSort.WHOLE,
              BoundPatterns::product),
          pattern(
              "bound-of-positives",
              "the least sum or the greatest product of positive numbers",
              "bound",
              AnswerSort.WHOLE,
              BoundPatterns::positives),
          pattern(
              "identity-under-condition",
              "an identity under a condition, to prove or to refute",
              "identity",
              AnswerSort.TRUTHS,
              BoundPatterns::identity));

  private BoundPatterns() {}

  private static Pattern pattern(
      String name, String words, String kind, AnswerSort answers, Pattern.Recipe recipe) {
    return new Pattern(name, words, kind, List.of(), answers, recipe);
  }

  /** All numbers but one are equal in the case of equality. */
  private static Optional<Statement> cauchy(Chance chance, Scale scale) {
    int count = chance.between(3, 5);
    int end = chance.between(-scale.roots(), scale.roots());
    int others = chance.between(-3, 4);
    if (end == others) {
      return Optional.empty();
    }
    int sum = end + (count - 1) * others;
    int squares = end * end + (count - 1) * others * others;
    List<String> names = List.of("x", "y", "z", "w", "v").subList(0, count);
    return alone(
        "%s x if %s = %d, %s = %d, %s real"
            .formatted(
                end > others ? "greatest" : "least",
                String.join(" + ", names),
                sum,
                String.join("^2 + ", names) + "^2",
                squares,
                String.join(", ", names)));
  }

  /** Two of the numbers are equal in the case of equality. */
  private static Optional<Statement> product(Chance chance, Scale scale) {
    int twice = chance.between(-3, 4);
    int once = chance.between(-scale.roots(), scale.roots());
    if (twice == once) {
      return Optional.empty();
    }
    int sum = 2 * twice + once;
    int pairs = twice * twice + 2 * twice * once;
    String given =
        chance.flip() ? "xy + yz + zx = " + pairs : "x^2 + y^2 + z^2 = " + (sum * sum - 2 * pairs);
    return alone(
        "%s x y z if x + y + z = %d, %s, x, y, z real"
            .formatted(chance.oneOf("greatest", "least", "range of"), sum, given));
  }

  private static Optional<Statement> positives(Chance chance, Scale scale) {
    int equal = chance.between(2, Math.max(3, scale.roots()));
    return alone(
        switch (chance.between(0, 3)) {
          case 0 ->
              "least x + y + z if x y z = %d, x, y, z positive".formatted(equal * equal * equal);
          case 1 -> "greatest x y z if x + y + z = %d, x, y, z positive".formatted(3 * equal);
          case 2 ->
              "greatest x y z if xy + yz + zx = %d, x, y, z positive".formatted(3 * equal * equal);
          default ->
              "least x + y + z if xy + yz + zx = %d, x, y, z positive".formatted(3 * equal * equal);
        });
  }

  /** What follows from a + b + c = s and ab + bc + ca = q; every other time it is not true. */
  private static Optional<Statement> identity(Chance chance, Scale scale) {
    int sum = chance.nonZero(scale.roots());
    int pairs = chance.nonZero(scale.roots());
    int off = chance.flip() ? 0 : chance.nonZero(2);
    String given = "a + b + c = %d, a b + b c + c a = %d".formatted(sum, pairs);
    long squares = (long) sum * sum - 2L * pairs + off;
    return alone(
        "prove or refute "
            + switch (chance.between(0, 3)) {
              case 0 -> "a^2 + b^2 + c^2 = %d if %s".formatted(squares, given);
              case 1 ->
                  "(a + b)(b + c)(c + a) = %d - a b c if %s".formatted(sum * pairs + off, given);
              case 2 ->
                  "a^3 + b^3 + c^3 - 3 a b c = %d (a^2 + b^2 + c^2 - a b - b c - c a) if a + b + c = %d"
                      .formatted(sum + off, sum);
              default ->
                  "a^2 b^2 + b^2 c^2 + c^2 a^2 = %d %s %d a b c if %s"
                      .formatted(
                          pairs * pairs,
                          sum + off < 0 ? "+" : "-",
                          Math.abs(2 * (sum + off)),
                          given);
            });
  }
}
