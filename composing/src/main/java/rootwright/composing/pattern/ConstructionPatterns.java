package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.alone;
import static rootwright.composing.pattern.Written.bears;
import static rootwright.composing.pattern.Written.statement;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** Polynomials to be built, composed, or known by their values; partial fractions; one root. */
final class ConstructionPatterns {

  static final List<Pattern> ALL =
      List.of(
          pattern(
              "least-polynomial",
              "the polynomial of a sum of two square roots",
              "polynomial-with-roots",
              List.of(),
              AnswerSort.POLYNOMIALS,
              ConstructionPatterns::leastPolynomial),
          pattern(
              "conjugates-forced",
              "the polynomial that two irrational roots force",
              "polynomial-with-roots",
              List.of(),
              AnswerSort.POLYNOMIALS,
              ConstructionPatterns::forced),
          pattern(
              "levels",
              "the sum or product of the roots of P(P(x)) = c",
              "roots-of-composition",
              List.of(3, 2),
              AnswerSort.WHOLE,
              ConstructionPatterns::levels),
          pattern(
              "value-from-values",
              "a further value of a polynomial known by its values",
              "value-of-polynomial",
              List.of(),
              AnswerSort.FRACTIONS,
              ConstructionPatterns::values),
          pattern(
              "numerators",
              "a value of the numerators of partial fractions over the roots",
              "value",
              List.of(3),
              AnswerSort.FRACTIONS,
              ConstructionPatterns::numerators),
          pattern(
              "partial-fractions",
              "a fraction split into partial fractions, one factor below repeated",
              "partial-fractions",
              List.of(),
              AnswerSort.FUNCTIONS,
              ConstructionPatterns::split),
          pattern(
              "one-root-constant",
              "an expression in one root that is a constant",
              "value",
              List.of(2, 3),
              AnswerSort.WHOLE,
              ConstructionPatterns::oneRoot),
          pattern(
              "palindromic-real-sum",
              "the sum of the real roots of a palindromic quartic",
              "sum-of-real-roots",
              List.of(4),
              AnswerSort.WHOLE,
              ConstructionPatterns::palindromic));

  private ConstructionPatterns() {}

  private static Pattern pattern(
      String name,
      String words,
      String kind,
      List<Integer> degrees,
      AnswerSort answers,
      Pattern.Recipe recipe) {
    return new Pattern(name, words, kind, degrees, answers, recipe);
  }

  private static Optional<Statement> leastPolynomial(Chance chance, Scale scale) {
    List<Integer> radicands = List.of(2, 3, 5, 6, 7, 10, 11, 13, 14, 15);
    int first = chance.oneOf(radicands);
    int second = chance.oneOf(radicands);
    int whole = chance.between(1, 3) == 3 ? chance.nonZero(scale.roots()) : 0;
    return first >= second
        ? Optional.empty()
        : alone(
            "minimal polynomial of "
                + (whole == 0
                    ? Written.root(first) + " + " + Written.root(second)
                    : whole + " + " + Written.root(first)));
  }

  private static Optional<Statement> forced(Chance chance, Scale scale) {
    int real = chance.nonZero(3);
    int imaginary = chance.between(1, 3);
    int whole = chance.nonZero(3);
    int radicand = chance.oneOf(List.of(2, 3, 5, 6, 7));
    return alone(
        "polynomial with rational coefficients having %d %s %si and %d %s %s"
            .formatted(
                real,
                chance.oneOf("+", "-"),
                imaginary == 1 ? "" : Integer.toString(imaginary),
                whole,
                chance.oneOf("+", "-"),
                Written.root(radicand)));
  }

  private static Optional<Statement> levels(Chance chance, Scale scale) {
    long[] coefficients = new long[scale.degree() + 1];
    coefficients[0] = chance.between(1, 4) == 4 ? 2 : 1;
    for (int k = 1; k <= scale.degree(); k++) {
      coefficients[k] = chance.between(-scale.roots(), scale.roots());
    }
    return coefficients[1] == 0 || coefficients[scale.degree()] == 0
        ? Optional.empty()
        : statement(
            Polynomial.ofDescending(coefficients),
            "%s of the roots of P(P(x)) = %d"
                .formatted(chance.oneOf("sum", "product"), chance.between(0, 4)));
  }

  private static Optional<Statement> values(Chance chance, Scale scale) {
    int degree = chance.between(2, 6);
    return alone(
        switch (chance.between(0, 2)) {
          case 0 ->
              "P(%d) if P has degree %d, P(k) = %s for k = 1..%d"
                  .formatted(
                      degree + 2,
                      degree,
                      chance.oneOf("1/k", "k/(k+1)", "1/(k+1)", "2/k"),
                      degree + 1);
          case 1 ->
              "P(%d) if P is a monic %s, P(k) = k^2%s for k = 1..%d"
                  .formatted(
                      degree <= 3 ? 5 : 6,
                      degree <= 3 ? "cubic" : "quartic",
                      Written.signed(chance.nonZero(scale.roots())),
                      degree <= 3 ? 3 : 4);
          default ->
              "P(0) if P is a monic %s, P(k) = %dk%s for k = 1..%d"
                  .formatted(
                      degree <= 3 ? "cubic" : "quartic",
                      chance.between(2, 5),
                      Written.signed(chance.nonZero(scale.roots())),
                      degree <= 3 ? 3 : 4);
        });
  }

  private static Optional<Statement> numerators(Chance chance, Scale scale) {
    Polynomial polynomial =
        Polynomial.ofDescending(
            1,
            chance.between(-scale.roots(), scale.roots()),
            chance.between(-scale.roots(), scale.roots()),
            chance.nonZero(scale.roots()));
    String above = chance.flip() ? "1" : "(x%s)".formatted(Written.signed(chance.nonZero(3)));
    return statement(
        polynomial, "1/A + 1/B + 1/C if %s/P(x) = A/(x-r) + B/(x-s) + C/(x-t)".formatted(above));
  }

  /** The numerator is made of the partial fractions, so that they come out whole. */
  private static Optional<Statement> split(Chance chance, Scale scale) {
    int twice = chance.nonZero(Math.min(4, scale.roots()));
    int once = chance.nonZero(Math.min(4, scale.roots()));
    Polynomial first = Written.withRoots(twice);
    Polynomial second = Written.withRoots(once);
    Polynomial above =
        first
            .times(second)
            .times(Rational.of(chance.nonZero(4)))
            .plus(second.times(Rational.of(chance.nonZero(4))))
            .plus(first.power(2).times(Rational.of(chance.nonZero(4))));
    return twice == once || above.degree() < 1
        ? Optional.empty()
        : alone(
            "partial fractions of (%s)/((%s)^2(%s))"
                .formatted(Written.text(above), Written.text(first), Written.text(second)));
  }

  /** A multiple of P and a constant. */
  private static Optional<Statement> oneRoot(Chance chance, Scale scale) {
    long[] coefficients = new long[scale.degree() + 1];
    coefficients[0] = 1;
    for (int k = 1; k <= scale.degree(); k++) {
      coefficients[k] = chance.nonZero(Math.min(5, scale.roots()));
    }
    Polynomial polynomial = Polynomial.ofDescending(coefficients);
    Polynomial factor = Polynomial.ofDescending(1, chance.nonZero(3), chance.between(-3, 3));
    Polynomial asked =
        polynomial
            .times(factor)
            .plus(Polynomial.constant(Rational.of(chance.nonZero(scale.size()))));
    return asked.coefficient(0).isZero()
        ? Optional.empty()
        : statement(polynomial, Written.text(asked).replace('x', 'r'));
  }

  /** Two quadratics that read the same backwards: one with real roots, one without. */
  private static Optional<Statement> palindromic(Chance chance, Scale scale) {
    int lead = chance.between(1, 2);
    int real = chance.nonZero(scale.roots());
    int other = chance.between(-2 * lead + 1, 2 * lead - 1);
    Polynomial polynomial =
        Polynomial.ofDescending(1, -real, 1).times(Polynomial.ofDescending(lead, -other, lead));
    return Math.abs(real) <= 2
            || other == 0
            || (lead == 2 && other % 2 == 0)
            || !bears(scale, polynomial)
        ? Optional.empty()
        : statement(polynomial, "sum of the real roots");
  }
}
