package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.NewtonIdentities;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * From the power sums of new roots to the polynomial that has them, by Newton's identities.
 *
 * @param title of the working
 * @param letter of the answer; absent for that of the problem
 */
record NewCoefficients(String title, Optional<String> letter) {

  /**
   * Writes the lines from the power sums of the new roots to their polynomial.
   *
   * @param sums from the number of the new roots on
   * @param y the letter of the new roots
   */
  Attempt finish(Problem problem, Lines lines, List<Rational> sums, String y) {
    int n = sums.size() - 1;
    List<Rational> e = NewtonIdentities.elementaries(sums);
    Polynomial monic =
        Polynomial.ofAscending(
            IntStream.rangeClosed(0, n)
                .mapToObj(k -> (n - k) % 2 == 0 ? e.get(n - k) : e.get(n - k).negate())
                .toList());
    Polynomial image = monic.primitive();
    List<String> names = FreshNames.indexed(y, n);
    Lines below = lines.in(Setting.of(monic, names));
    for (int k = 1; k <= n; k++) {
      Combination newton = new Combination();
      for (int i = 1; i <= k; i++) {
        if (!e.get(k - i).isZero() && !sums.get(i).isZero()) {
          newton.plus(
              i % 2 == 1 ? Rational.ONE : Rational.MINUS_ONE,
              Combination.product(
                  List.of(Formula.number(e.get(k - i)), Formula.number(sums.get(i)))));
        }
      }
      below.add(
          k == 1 ? Idea.STATE : Idea.NEWTON,
          k == 1 ? "one letter for each new root" : "Newton",
          CoefficientLines.inRoots(names, k),
          k == 1 ? newton.formula() : newton.formula().over(Formula.number(k)),
          Formula.number(e.get(k)));
    }
    String shownIn = letter.orElse(problem.unknown());
    lines.addRoots(
        Idea.STATE,
        "these are its coefficients, with alternating signs; its roots are "
            + UnicodeWriter.write(problem.ask()),
        Formula.equation(PolynomialFormula.of(image, shownIn), Formula.number(0)),
        new Claim.HasRoots(problem.setting(), image, problem.ask()));
    return new Attempt.Worked(
        title, lines.steps(), new Answer.PolynomialIn(image, shownIn), List.of());
  }
}
