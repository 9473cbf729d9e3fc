package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
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

  /** A determinant of four rows is too long to be written out as one line. */
  private static final int HIGHEST_DEGREE = 3;

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
    List<Polynomial> rows = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Formula left = k == 0 ? Formula.name(y) : Formula.name(y).times(Combination.power(root, k));
      if (k == 0) {
        named.add(
            Idea.REDUCE,
            row.equals(map.f().numerator()) && map.f().isPolynomial()
                ? "the new root"
                : "by P(%s) = 0".formatted(map.root()),
            left,
            map.written(),
            PolynomialFormula.of(row, map.root()));
      } else {
        named.add(Idea.REDUCE, "times " + map.root(), left, PolynomialFormula.of(row, map.root()));
      }
      rows.add(row);
      row = algebra.times(row, Polynomial.X);
    }
    Polynomial image = algebra.characteristic(reduced).primitive();
    String shownIn = letter.orElse(problem.unknown());
    String powers =
        IntStream.range(0, n)
            .mapToObj(k -> k == 0 ? "1" : UnicodeWriter.write(Combination.power(root, k)))
            .collect(Collectors.joining(", "));
    lines
        .in(setting.withFree(y))
        .add(
            Idea.ELIMINATE,
            "%d linear equations for %s; their determinant".formatted(n, powers),
            determinant(rows, y),
            PolynomialFormula.of(
                algebra.characteristic(reduced).times(Rational.of(n % 2 == 0 ? 1 : -1)), y));
    lines.addRoots(
        Idea.ELIMINATE,
        "it is zero, since %s are not all zero".formatted(powers),
        Formula.equation(PolynomialFormula.of(image, shownIn), Formula.number(0)),
        new Claim.HasRoots(setting, image, problem.ask()));
    return new Attempt.Worked(
        title(), lines.steps(), new Answer.PolynomialIn(image, shownIn), List.of());
  }

  /** The determinant of the equations Σ c_kj r^j − y r^k = 0, by the first row. */
  private static Formula determinant(List<Polynomial> rows, String y) {
    List<List<Polynomial>> entries = new ArrayList<>();
    for (int k = 0; k < rows.size(); k++) {
      List<Polynomial> row = new ArrayList<>();
      for (int j = 0; j < rows.size(); j++) {
        Polynomial constant = Polynomial.constant(rows.get(k).coefficient(j));
        row.add(k == j ? constant.minus(Polynomial.X) : constant);
      }
      entries.add(row);
    }
    if (rows.size() == 2) {
      return two(entries, 0, 0, 1, y);
    }
    Polynomial second = entries.get(0).get(1);
    Polynomial third = entries.get(0).get(2);
    Formula sum = product(entries.get(0).get(0), two(entries, 1, 1, 2, y), y);
    if (!second.isZero()) {
      sum = sum.minus(product(second, two(entries, 1, 0, 2, y), y));
    }
    return third.isZero() ? sum : sum.plus(product(third, two(entries, 1, 0, 1, y), y));
  }

  /** The determinant of two rows from this one on and two columns. */
  private static Formula two(
      List<List<Polynomial>> entries, int row, int left, int right, String y) {
    Polynomial a = entries.get(row).get(left);
    Polynomial b = entries.get(row).get(right);
    Polynomial c = entries.get(row + 1).get(left);
    Polynomial d = entries.get(row + 1).get(right);
    Formula main = product(a, PolynomialFormula.of(d, y), y);
    return b.isZero() || c.isZero() ? main : main.minus(product(b, PolynomialFormula.of(c, y), y));
  }

  /** A product without a factor 1. */
  private static Formula product(Polynomial factor, Formula other, String y) {
    return factor.degree() == 0 && factor.lead().isOne()
        ? other
        : PolynomialFormula.of(factor, y).times(other);
  }
}
