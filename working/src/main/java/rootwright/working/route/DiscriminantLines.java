package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/** The line that works the discriminant of a quadratic or cubic out by its formula. */
final class DiscriminantLines {

  private static final List<String> LETTERS = List.of("a", "b", "c", "d");

  private DiscriminantLines() {}

  /** Whether there is a formula that people know. */
  static boolean isKnown(Problem problem) {
    return problem.degree() == 2 || problem.degree() == 3;
  }

  /** Writes b² − 4ac, or its like for a cubic, with the numbers, and gives the value. */
  static Rational write(Lines lines, Problem problem) {
    Polynomial p = problem.polynomial();
    int n = p.degree();
    List<Rational> values = new ArrayList<>(List.of(Rational.ONE));
    IntStream.rangeClosed(0, n).forEach(k -> values.add(p.coefficient(n - k)));
    NamedForm form =
        new NamedForm(n == 2 ? quadratic() : cubic(), k -> Formula.name(LETTERS.get(k - 1)));
    Rational value = form.value(values);
    boolean lettersAreFree =
        LETTERS.stream()
            .noneMatch(
                letter -> letter.equals(problem.unknown()) || problem.roots().contains(letter));
    Setting setting = problem.setting();
    List<Formula> sides = new ArrayList<>(List.of(DiscriminantMeaning.of(problem)));
    StringBuilder coefficients = new StringBuilder();
    if (lettersAreFree) {
      for (int k = 0; k <= n; k++) {
        Formula number = Formula.number(values.get(k + 1));
        setting = setting.withDefinition(LETTERS.get(k), number);
        coefficients.append(
            "%s%s = %s"
                .formatted(k == 0 ? " with " : ", ", LETTERS.get(k), UnicodeWriter.write(number)));
      }
      sides.add(form.written());
    }
    sides.add(form.worked(values));
    sides.add(Formula.number(value));
    lines.in(setting).add(Idea.DISCRIMINANT, "the discriminant" + coefficients, sides);
    return value;
  }

  /** b² − 4ac. */
  private static MultivariatePolynomial quadratic() {
    return letter(1).times(letter(1)).minus(term(4, 0, 2));
  }

  /** b²c² − 4ac³ − 4b³d − 27a²d² + 18abcd (Cayley's form, any algebra of about 1900). */
  private static MultivariatePolynomial cubic() {
    return term(1, 1, 1, 2, 2)
        .minus(term(4, 0, 2, 2, 2))
        .minus(term(4, 1, 1, 1, 3))
        .minus(term(27, 0, 0, 3, 3))
        .plus(term(18, 0, 1, 2, 3));
  }

  private static MultivariatePolynomial term(long factor, int... letters) {
    MultivariatePolynomial product = MultivariatePolynomial.ONE.times(Rational.of(factor));
    for (int letter : letters) {
      product = product.times(letter(letter));
    }
    return product;
  }

  private static MultivariatePolynomial letter(int number) {
    return MultivariatePolynomial.unknown(number);
  }
}
