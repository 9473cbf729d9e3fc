package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The polynomial with the roots y = f(r) for any f, the old root eliminated: y, yr, yr², … are
 * reduced by P(r) = 0 to linear equations between 1, r, r², …, whose determinant must vanish
 * (Sylvester's dialytic method, 1840, in its shortest form).
 */
final class Eliminate extends NewRootRoute {

  /** Five linear equations nobody eliminates by hand. */
  private static final int HIGHEST_DEGREE = 4;

  private final Optional<String> letter;

  /** With the letter of the answer; absent for that of the problem. */
  Eliminate(Optional<String> letter) {
    super(HIGHEST_DEGREE);
    this.letter = letter;
  }

  @Override
  public String name() {
    return "eliminate";
  }

  @Override
  public String title() {
    return "eliminate the old root";
  }

  @Override
  public String teaches() {
    return "Linear equations with a solution that is not zero have the determinant zero.";
  }

  @Override
  String tooLarge() {
    return "the determinant is too large to work out by hand";
  }

  @Override
  Attempt worked(Asked asked, OneRootMap map, Polynomial reduced) {
    Problem problem = asked.problem();
    ResidueAlgebra algebra = ResidueAlgebra.of(problem.polynomial());
    int n = problem.degree();
    String y = FreshNames.letter(problem);
    Setting setting = problem.setting();
    Lines lines = new Lines(setting);
    Lines named = lines.in(setting.withDefinition(y, problem.ask()));
    map.write(lines);
    Formula root = Formula.name(map.root());
    Polynomial row = reduced;
    for (int k = 0; k < n; k++) {
      Formula left = k == 0 ? Formula.name(y) : Formula.name(y).times(Combination.power(root, k));
      if (k == 0) {
        named.add(
            Idea.REDUCE,
            "by P(%s) = 0".formatted(map.root()),
            left,
            map.written(),
            PolynomialFormula.of(row, map.root()));
      } else {
        named.add(Idea.REDUCE, "times " + map.root(), left, PolynomialFormula.of(row, map.root()));
      }
      row = algebra.times(row, Polynomial.X);
    }
    Polynomial image = algebra.characteristic(reduced).primitive();
    String shownIn = letter.orElse(problem.unknown());
    String powers =
        IntStream.range(0, n)
            .mapToObj(k -> k == 0 ? "1" : UnicodeWriter.write(Combination.power(root, k)))
            .collect(Collectors.joining(", "));
    lines.addRoots(
        Idea.ELIMINATE,
        "%d linear equations for %s, which are not all zero: the determinant is zero"
            .formatted(n, powers),
        Formula.equation(PolynomialFormula.of(image, shownIn), Formula.number(0)),
        new Claim.HasRoots(setting, image, problem.ask()));
    return new Attempt.Worked(
        title(), lines.steps(), new Answer.PolynomialIn(image, shownIn), List.of());
  }
}
