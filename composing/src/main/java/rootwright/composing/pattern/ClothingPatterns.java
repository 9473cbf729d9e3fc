package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.statement;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** Roots in other clothes: values at angles, roots of unity, powers, square roots, triangles. */
final class ClothingPatterns {

  static final List<Pattern> ALL =
      List.of(
          pattern(
              "cosines",
              "a symmetric value of cosines of multiples of an angle",
              "value",
              AnswerSort.WHOLE,
              ClothingPatterns::cosines),
          pattern(
              "angle-squares",
              "a sum of squares of tangents, cosecants, … of multiples",
              "value",
              AnswerSort.WHOLE,
              ClothingPatterns::angleSquares),
          pattern(
              "roots-of-unity",
              "a sum or product over roots of unity",
              "value",
              AnswerSort.WHOLE,
              ClothingPatterns::unity),
          pattern(
              "roots-of-roots",
              "a sum of square roots or fourth roots of the roots",
              "roots-of-roots",
              AnswerSort.SURDS,
              ClothingPatterns::rootsOfRoots),
          pattern(
              "exponential-equation",
              "an equation in powers of one base",
              "disguised-equation",
              AnswerSort.SURDS,
              ClothingPatterns::exponential),
          pattern(
              "square-root-equation",
              "an equation with a square root",
              "disguised-equation",
              AnswerSort.WHOLE,
              ClothingPatterns::squareRoot),
          pattern(
              "fraction-equation",
              "an equation with fractions",
              "disguised-equation",
              AnswerSort.WHOLE,
              ClothingPatterns::fractions),
          pattern(
              "triangle",
              "area and radii of the triangle whose sides are the roots",
              "triangle",
              AnswerSort.SURDS,
              ClothingPatterns::triangle));

  private ClothingPatterns() {}

  private static Pattern pattern(
      String name, String words, String kind, AnswerSort answers, Pattern.Recipe recipe) {
    return new Pattern(name, words, kind, List.of(), answers, recipe);
  }

  /** cos of 2kπ/n over the k prime to n up to n/2: all roots of one irreducible polynomial. */
  private static Optional<Statement> cosines(Chance chance, Scale scale) {
    int n = chance.oneOf(List.of(5, 7, 9, 11, 13, 15));
    String factor = chance.oneOf("2", "");
    String listed =
        IntStream.rangeClosed(1, n / 2)
            .filter(k -> gcd(k, n) == 1)
            .mapToObj(k -> "%scos(%dπ/%d)".formatted(factor, 2 * k, n))
            .collect(Collectors.joining(", "));
    return statement(
        listed,
        chance.oneOf(
            "Σ r^2",
            "Σ r^3",
            "Σ r^4",
            "Σ 1/r",
            "Σ 1/r^2",
            "Π (1 + r)",
            "Π (2 - r)",
            "Σ 1/(2 - r)"));
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  private static Optional<Statement> angleSquares(Chance chance, Scale scale) {
    int half = chance.between(2, 6);
    int n = 2 * half + 1;
    return statement(
        "%s^2(kπ/%d), k = 1..%d".formatted(chance.oneOf("tan", "cot", "sin", "csc"), n, half),
        chance.oneOf("Σ r", "Σ 1/r", "Σ r^2", "Π r", "Π (1 + r)"));
  }

  private static Optional<Statement> unity(Chance chance, Scale scale) {
    int n = chance.between(5, 15);
    int at = chance.oneOf(List.of(2, 3, -2, -1, 1));
    String which =
        chance.flip()
            ? "the %s roots of unity other than 1".formatted(ordinal(n))
            : "the primitive %s roots of unity".formatted(ordinal(n));
    String below = at + " - r";
    return statement(
        which, chance.oneOf("Π (" + below + ")", "Σ 1/(" + below + ")", "Π (r^2 + 1)", "Σ r^2"));
  }

  private static String ordinal(int n) {
    return n + "th";
  }

  /** The square of the sum is r + s + 2√(rs). */
  private static Optional<Statement> rootsOfRoots(Chance chance, Scale scale) {
    int square = chance.between(1, scale.roots());
    if (chance.flip()) {
      int sum = chance.between(2, scale.size());
      long linear = (long) sum * sum - 2L * square;
      return linear * linear > 4L * square * square && linear > 0
          ? statement(Polynomial.ofDescending(1, -linear, (long) square * square), "√r + √s")
          : Optional.empty();
    }
    int product = chance.between(1, 2);
    int half = chance.between(3, Math.max(4, scale.roots()));
    long linear = (long) half * half - 2L * product * product;
    return linear > 2L * product * product
        ? statement(
            Polynomial.ofDescending(1, -linear, (long) product * product * product * product),
            "r^(1/4) + s^(1/4)")
        : Optional.empty();
  }

  private static Optional<Statement> exponential(Chance chance, Scale scale) {
    int base = chance.oneOf(List.of(2, 3, 5));
    int sum = chance.between(3, scale.size());
    int product =
        chance.flip() ? power(base, chance.between(1, 3)) : chance.between(2, scale.size());
    return sum * sum <= 4 * product
        ? Optional.empty()
        : statement(
            "%d^x - %d*%d^x + %d = 0".formatted(base * base, sum, base, product),
            "sum of the solutions");
  }

  private static int power(int base, int exponent) {
    return exponent == 0 ? 1 : base * power(base, exponent - 1);
  }

  /** √(cx + a) = x − b with the solution b + d. */
  private static Optional<Statement> squareRoot(Chance chance, Scale scale) {
    int moved = chance.nonZero(scale.roots());
    int root = chance.between(1, scale.roots());
    int times = chance.between(1, 3);
    int solution = moved + root;
    int free = root * root - times * solution;
    return solution == 0 || free == 0
        ? Optional.empty()
        : statement(
            "sqrt(%sx%s) = x%s"
                .formatted(
                    times == 1 ? "" : Integer.toString(times),
                    Written.signed(free),
                    Written.signed(-moved)),
            "solutions");
  }

  private static Optional<Statement> fractions(Chance chance, Scale scale) {
    int first = chance.nonZero(scale.roots());
    int second = chance.nonZero(scale.roots());
    int third = chance.nonZero(scale.roots());
    boolean two = chance.flip();
    return first >= second || (!two && second >= third)
        ? Optional.empty()
        : statement(
            "1/(x%s) + 1/(x%s)%s = 1"
                .formatted(
                    Written.signed(-first),
                    Written.signed(-second),
                    two ? "" : " + 1/(x%s)".formatted(Written.signed(-third))),
            chance.oneOf("sum of the solutions", "product of the solutions"));
  }

  /** x³ − 2hx² + bx − c: the area is √(h·P(h)), P(h) = bh − h³ − c. */
  private static Optional<Statement> triangle(Chance chance, Scale scale) {
    int half = chance.between(4, Math.max(5, scale.size()));
    // b below 4h²/3, or the roots are not real; above h², or P(h) is negative.
    int pairs = chance.between(half * half + 1, (4 * half * half - 1) / 3);
    int under = chance.between(1, scale.size());
    long constant = (long) pairs * half - (long) half * half * half - under;
    return constant <= 0
        ? Optional.empty()
        : statement(
            Polynomial.ofDescending(1, -2L * half, pairs, -constant),
            chance.oneOf(
                "area of the triangle with sides r, s, t",
                "inradius of the triangle with sides r, s, t",
                "circumradius of the triangle with sides r, s, t"));
  }
}
