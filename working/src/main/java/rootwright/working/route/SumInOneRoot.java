package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The lines that add up, over the roots, a fraction with a power of one linear expression below it,
 * by giving that expression a name.
 */
final class SumInOneRoot {

  private final Asked asked;
  private final Problem problem;
  private final Polynomial polynomial;
  private final Lines lines;
  private final String title;
  private final Formula term;
  private final RootFunction f;
  private final Formula root;

  /**
   * @param lines what stands already
   * @param title of the working
   * @param term one term of the ask, as it is written
   * @param f the function of the root that the term is
   * @param root that root
   */
  SumInOneRoot(Asked asked, Lines lines, String title, Formula term, RootFunction f, Formula root) {
    this.asked = asked;
    this.problem = asked.problem();
    this.polynomial = problem.polynomial();
    this.lines = lines;
    this.title = title;
    this.term = term;
    this.f = f;
    this.root = root;
  }

  /** The lines and the value, or why not. */
  Attempt worked() {
    Optional<Laurent> powers = Laurent.of(f);
    if (powers.isPresent()) {
      return LaurentTotal.isWithinReach(powers.get())
          ? sumOfPowers(powers.get())
          : new Attempt.Declined("the powers of the root are too high or too low");
    }
    Polynomial bottom = f.denominator().squarefreePart();
    if (bottom.degree() > 1) {
      return new Attempt.Declined("the denominator is no power of one linear expression");
    }
    Rational pole = bottom.coefficient(0).negate();
    boolean down = isDown(pole);
    Polynomial back =
        Polynomial.ofAscending(List.of(pole, down ? Rational.MINUS_ONE : Rational.ONE));
    Optional<Laurent> shifted =
        Laurent.of(new RootFunction(f.numerator().compose(back), f.denominator().compose(back)));
    Polynomial image = polynomial.compose(back).primitive();
    if (shifted.isEmpty() || !LaurentTotal.isWithinReach(shifted.get())) {
      return new Attempt.Declined("the powers of the root are too high or too low");
    } else if (image.coefficient(0).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    return sumShifted(shifted.get(), image, pole, down);
  }

  private Attempt sumOfPowers(Laurent powers) {
    if (!powers.terms().isEmpty()
        && powers.terms().firstKey() < 0
        && polynomial.coefficient(0).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    lines.add(Idea.SUBSTITUTE, "power by power", term, powers.written(root));
    LaurentTotal total =
        new LaurentTotal(
            polynomial, problem.roots(), problem.unknown(), PowerSumLines.letter(asked));
    Rational value = total.write(lines, powers, problem.ask());
    return Attempt.Worked.of(title, lines.steps(), value);
  }

  private Attempt sumShifted(Laurent powers, Polynomial image, Rational pole, boolean down) {
    String letter = FreshNames.letter(problem);
    Formula map =
        down
            ? Formula.number(pole).minus(root)
            : new Combination().plus(root).plus(pole.negate()).formula();
    Formula moved =
        down
            ? Formula.number(pole).minus(Formula.name(letter))
            : new Combination().plus(Formula.name(letter)).plus(pole).formula();
    Setting named = problem.setting().withDefinition(letter, map);
    lines.in(named).add(Idea.SUBSTITUTE, "give it a name", Formula.name(letter), map);
    lines
        .in(named)
        .add(Idea.SUBSTITUTE, "one letter is left", term, powers.written(Formula.name(letter)));
    lines.addRoots(
        Idea.SHIFT,
        "P(%s) = 0".formatted(UnicodeWriter.write(moved)),
        Formula.equation(PolynomialFormula.of(image, letter), Formula.number(0)),
        new Claim.HasRoots(problem.setting(), image, map));
    List<String> names = FreshNames.indexed(letter, problem.degree());
    Formula sum =
        new Formula.Aggregate(
            Formula.Aggregate.Operation.SUM, powers.written(Formula.name(names.get(0))));
    Rational value =
        new LaurentTotal(image, names, letter, PowerSumLines.letter(asked))
            .write(lines.in(Setting.of(image, names)), powers, sum);
    lines.add(Idea.STATE, "which was asked", problem.ask(), Formula.number(value));
    return Attempt.Worked.of(title, lines.steps(), value);
  }

  /** Whether k − r is the better name: where it is written so, or is the sum of the other roots. */
  private boolean isDown(Rational pole) {
    Rational total = polynomial.coefficient(polynomial.degree() - 1).over(polynomial.lead());
    boolean written =
        term.contains(
            part ->
                part instanceof Formula.Sum sum
                    && sum.terms().contains(new Formula.Negative(root)));
    return written || (pole.equals(total.negate()) && !term.contains(root::equals));
  }
}
