package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.bears;
import static rootwright.composing.pattern.Written.statement;
import static rootwright.composing.pattern.Written.text;
import static rootwright.composing.pattern.Written.withRoots;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** Two polynomials. */
final class PairPatterns {

  static final List<Pattern> ALL =
      List.of(
          pair(
              "pair-products",
              "a product over all pairs of a root of one and a root of the other",
              "pairs",
              AnswerSort.WHOLE,
              PairPatterns::products),
          pair(
              "pair-sums",
              "a sum over all pairs of a root of one and a root of the other",
              "pairs",
              AnswerSort.WHOLE,
              PairPatterns::sums),
          pair(
              "resultant",
              "the resultant of two polynomials",
              "resultant",
              AnswerSort.WHOLE,
              PairPatterns::resultant),
          pair(
              "common-roots",
              "the roots that two polynomials have in common",
              "common-roots",
              AnswerSort.WHOLE,
              PairPatterns::commonRoots),
          pair(
              "letter-common-root",
              "the letter for which two quadratics share a root",
              "common-root",
              AnswerSort.WHOLE,
              PairPatterns::commonRootLetter));

  private PairPatterns() {}

  private static Pattern pair(
      String name, String words, String kind, AnswerSort answers, Pattern.Recipe recipe) {
    return new Pattern(name, words, kind, List.of(), answers, recipe);
  }

  private static Polynomial drawn(Chance chance, Scale scale, int degree) {
    long[] coefficients = new long[degree + 1];
    coefficients[0] = 1;
    for (int k = 1; k < degree; k++) {
      coefficients[k] = chance.between(-scale.roots(), scale.roots());
    }
    coefficients[degree] = chance.nonZero(scale.roots());
    return Polynomial.ofDescending(coefficients);
  }

  private static Optional<Statement> both(Chance chance, Scale scale, String find) {
    Polynomial first = drawn(chance, scale, 2);
    Polynomial second = drawn(chance, scale, chance.between(2, 3));
    return first.equals(second)
        ? Optional.empty()
        : statement(text(first) + " and " + text(second), find);
  }

  private static Optional<Statement> products(Chance chance, Scale scale) {
    return both(chance, scale, chance.oneOf("Π (r - s)", "Π (r + s)", "Π (1 - r s)"));
  }

  private static Optional<Statement> sums(Chance chance, Scale scale) {
    return both(
        chance,
        scale,
        chance.oneOf("Σ (r + s)^2", "Σ (r - s)^2", "Σ r^2 s^2", "Σ (r + s)^3", "Σ (r s + 1)"));
  }

  private static Optional<Statement> resultant(Chance chance, Scale scale) {
    return both(chance, scale, "resultant");
  }

  private static Optional<Statement> commonRoots(Chance chance, Scale scale) {
    int shared = chance.nonZero(Math.min(5, scale.roots()));
    Polynomial first = drawn(chance, scale, 2).times(withRoots(shared));
    Polynomial second = withRoots(shared).times(drawn(chance, scale, chance.between(1, 2)));
    return bears(scale, first) && bears(scale, second)
        ? statement(text(first) + " and " + text(second), "common roots")
        : Optional.empty();
  }

  /** x² + kx + p and x² + qx + ck with the common root u for one whole k. */
  private static Optional<Statement> commonRootLetter(Chance chance, Scale scale) {
    int root = chance.nonZero(Math.min(4, scale.roots()));
    int letter = chance.nonZero(scale.roots());
    int times = chance.oneOf(List.of(1, 2, 3, -1, -2));
    long constant = -(long) root * root - (long) letter * root;
    long linear = -(long) root * root - (long) times * letter;
    if (linear % root != 0 || constant == 0 || linear == 0) {
      return Optional.empty();
    }
    String last = times == 1 ? "k" : times == -1 ? "-k" : times + "k";
    return statement(
        Written.terms(List.of("1", "k", Long.toString(constant)))
            + " and "
            + Written.terms(List.of("1", Long.toString(linear / root), last)),
        "k if they share exactly one root");
  }
}
