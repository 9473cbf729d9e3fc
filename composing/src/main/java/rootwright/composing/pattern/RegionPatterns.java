package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.bears;
import static rootwright.composing.pattern.Written.statement;
import static rootwright.composing.pattern.Written.withLetter;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** A letter among the coefficients: all its values, its least value, a value in terms of it. */
final class RegionPatterns {

  static final List<Pattern> ALL =
      List.of(
          new Pattern(
              "letter-real-roots",
              "all values of a letter for which the roots are real",
              "letter-region",
              List.of(3),
              AnswerSort.RANGES,
              RegionPatterns::realRoots),
          new Pattern(
              "letter-one-solution",
              "the letter if there is exactly one real solution, the lead may vanish",
              "letter-region",
              List.of(2),
              AnswerSort.WHOLE,
              RegionPatterns::oneSolution),
          new Pattern(
              "letter-roots-placed",
              "all values of a letter for which the roots lie where they are said to",
              "letter-region",
              List.of(2),
              AnswerSort.RANGES,
              RegionPatterns::placed),
          new Pattern(
              "letter-count-real",
              "for how many whole numbers the roots are real",
              "letter-region",
              List.of(2),
              AnswerSort.WHOLE,
              RegionPatterns::countReal),
          new Pattern(
              "least-over-real-roots",
              "the least sum of squares while the roots are real",
              "extreme",
              List.of(2),
              AnswerSort.WHOLE,
              RegionPatterns::least),
          new Pattern(
              "value-in-a-letter",
              "a value as a function of the letter",
              "function",
              List.of(3, 2, 4),
              AnswerSort.FUNCTIONS,
              RegionPatterns::function));

  private RegionPatterns() {}

  /** The cubic whose derivative has two whole zeros; the letter moves it up and down. */
  private static Optional<Statement> realRoots(Chance chance, Scale scale) {
    int left = chance.between(-scale.roots(), scale.roots() - 1);
    int right = chance.between(left + 1, scale.roots());
    // The integral of 6(x − u)(x − v); halved if u + v is even.
    long[] whole = {2, -3L * (left + right), 6L * left * right};
    boolean halved = (left + right) % 2 == 0;
    Polynomial polynomial =
        halved
            ? Polynomial.ofDescending(1, whole[1] / 2, whole[2] / 2, 0)
            : Polynomial.ofDescending(whole[0], whole[1], whole[2], 0);
    String condition = chance.oneOf("three real roots", "all roots real", "exactly one real root");
    return bears(scale, polynomial)
        ? statement(withLetter(polynomial, 0, "k"), "k if " + condition)
        : Optional.empty();
  }

  /** x² − 2kx + (k + c) with a discriminant of whole zeros: k² − k − c = (k − p)(k + p − 1). */
  private static Optional<Statement> placed(Chance chance, Scale scale) {
    int zero = chance.between(2, Math.max(3, scale.roots() / 2));
    int free = zero * (zero - 1);
    String condition =
        chance.oneOf(
            "both roots are greater than " + chance.between(-2, 1),
            "the roots are of opposite sign",
            "the roots lie between %d and %d"
                .formatted(chance.between(-1, 0), 2 * zero + chance.between(1, 3)));
    return statement("x^2 - 2k x + (k%s)".formatted(Written.signed(free)), "k if " + condition);
  }

  private static Optional<Statement> countReal(Chance chance, Scale scale) {
    int linear = chance.between(3, scale.size());
    int lead = chance.between(1, 3);
    return statement(
        "%sx^2 - %dx + k".formatted(lead == 1 ? "" : Integer.toString(lead), linear),
        "number of positive integers k if the roots are real");
  }

  /** (m − a)x² − 2bmx + (m + c): a quarter of the discriminant is b²m² − (m − a)(m + c). */
  private static Optional<Statement> oneSolution(Chance chance, Scale scale) {
    int zero = chance.nonZero(scale.roots());
    int times = chance.between(1, 3);
    int free = chance.nonZero(scale.roots());
    return free == -zero
        ? Optional.empty()
        : statement(
            "(m%s)x^2 - %sx + (m%s)"
                .formatted(Written.signed(-zero), 2 * times + "m", Written.signed(free)),
            "m if exactly one real solution");
  }

  /** x² − 2mx + (bm + c) with a discriminant of whole zeros: m² − bm − c = (m − u)(m − v). */
  private static Optional<Statement> least(Chance chance, Scale scale) {
    int left = -chance.between(1, scale.roots());
    int right = chance.between(1, scale.roots());
    int sum = left + right;
    if (sum == 0) {
      return Optional.empty();
    }
    String times = sum == 1 ? "m" : sum == -1 ? "-m" : sum + "m";
    return statement(
        "x^2 - 2m x + (%s%s)".formatted(times, Written.signed(-(long) left * right)),
        "least r^2 + s^2 if roots real");
  }

  private static Optional<Statement> function(Chance chance, Scale scale) {
    int degree = scale.degree();
    long[] coefficients = new long[degree + 1];
    coefficients[0] = 1;
    for (int k = 1; k <= degree; k++) {
      coefficients[k] = chance.between(-scale.roots(), scale.roots());
    }
    if (coefficients[degree] == 0) {
      return Optional.empty();
    }
    Polynomial polynomial = Polynomial.ofDescending(coefficients);
    String find =
        degree == 2
            ? chance.oneOf("r^2 + s^2", "r^3 + s^3", "1/r + 1/s", "(r - s)^2", "r/s + s/r")
            : chance.oneOf("Σ r^2", "Σ r^3", "Σ 1/r", "Σ 1/r^2", "Σ r^2 s", "Π (2 - r)");
    return statement(withLetter(polynomial, chance.between(0, degree - 1), "k"), find);
  }
}
