package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The discriminant as ±a^(n−2)·Π P′(r), the product found by dividing P by P′, P′ by what is left,
 * and so on: Π g(r) over the roots of f is, up to leads and a sign, Π f(y) over the roots of g.
 */
final class DiscriminantByDivision implements Route {

  private static final int HIGHEST_DEGREE = 4;

  @Override
  public String name() {
    return "divide-down";
  }

  @Override
  public String title() {
    return "divide P by P′ and go on with the remainders";
  }

  @Override
  public String teaches() {
    return "A product over the roots of one polynomial is one over the roots of the other.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    if (problem.degree() < 2 || problem.degree() > HIGHEST_DEGREE) {
      return new Attempt.Declined("the chain of remainders is too long, or there is none");
    }
    List<Polynomial> chain =
        new ArrayList<>(List.of(problem.polynomial(), problem.polynomial().derivative()));
    while (true) {
      Polynomial last = chain.get(chain.size() - 1);
      Polynomial rest = chain.get(chain.size() - 2).remainder(last);
      if (rest.isZero()) {
        return last.degree() > 0 ? common(problem, last.primitive()) : worked(problem, chain);
      }
      chain.add(rest.primitive());
    }
  }

  /** P and P′ have a factor in common. */
  private Attempt common(Problem problem, Polynomial factor) {
    Lines lines = new Lines(problem.setting());
    String x = problem.unknown();
    Polynomial p = problem.polynomial();
    Lines free = lines.in(problem.setting().withFree(x));
    for (String function : List.of("P", "P'")) {
      Polynomial whole = function.equals("P") ? p : p.derivative();
      free.add(
          Idea.ELIMINATE,
          UnicodeWriter.write(PolynomialFormula.of(factor, x)) + " divides it",
          new Formula.Application(function, List.of(Formula.name(x))),
          Combination.product(
              List.of(
                  PolynomialFormula.of(factor, x),
                  PolynomialFormula.of(whole.divide(factor).quotient(), x))));
    }
    lines.add(
        Idea.DISCRIMINANT,
        "a root of P and P′ is a repeated root",
        DiscriminantMeaning.of(problem),
        Formula.number(0));
    return Attempt.Worked.of("what P and P′ have in common", lines.steps(), Rational.ZERO);
  }

  private Attempt worked(Problem problem, List<Polynomial> chain) {
    Lines lines = new Lines(problem.setting());
    List<List<String>> names = names(problem, chain);
    Rational value = Rational.ONE;
    for (int level = chain.size() - 2; level >= 1; level--) {
      value = level(lines, chain.subList(level - 1, level + 2), names, level, value);
    }
    int n = problem.degree();
    Rational product =
        turned(lines, problem.setting(), chain.get(0), chain.get(1), problem.roots(), value);
    Rational factor = problem.polynomial().lead().power(n - 2).times(sign(n * (n - 1) / 2));
    Rational discriminant = factor.times(product);
    lines.add(
        Idea.DISCRIMINANT,
        "every difference stands in two of the factors P′(r), once with either sign",
        DiscriminantMeaning.of(problem),
        new Combination().plus(factor, Formula.number(product)).formula(),
        Formula.number(discriminant));
    return Attempt.Worked.of(title(), lines.steps(), discriminant);
  }

  private static List<List<String>> names(Problem problem, List<Polynomial> chain) {
    List<String> letters =
        Stream.of("y", "z", "w", "q", "m", "k", "d", "u", "v", "n")
            .filter(letter -> !letter.equals(problem.unknown()))
            .filter(letter -> problem.roots().stream().noneMatch(root -> root.startsWith(letter)))
            .toList();
    List<List<String>> names = new ArrayList<>(List.of(problem.roots()));
    for (int level = 1; level < chain.size(); level++) {
      names.add(FreshNames.indexed(letters.get(level - 1), chain.get(level).degree()));
    }
    return names;
  }

  /**
   * Π before(y) over the roots y of the middle polynomial.
   *
   * @param below Π middle(z) over the roots z of the last polynomial; 1 if that is constant
   */
  private static Rational level(
      Lines lines, List<Polynomial> three, List<List<String>> names, int level, Rational below) {
    Polynomial before = three.get(0);
    Polynomial middle = three.get(1);
    Polynomial after = three.get(2);
    String y = names.get(level).get(0);
    Setting setting = Setting.of(middle, names.get(level));
    Polynomial rest = before.remainder(middle);
    Rational content = rest.lead().over(after.lead());
    Lines here = lines.in(setting);
    Formula whole = PolynomialFormula.of(before, y);
    here.add(
        Idea.REDUCE,
        "for the roots of %s, by division"
            .formatted(UnicodeWriter.write(PolynomialFormula.of(middle, y))),
        whole,
        PolynomialFormula.of(rest, y));
    Formula product = new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, whole);
    int d = middle.degree();
    Rational scale = content.power(d);
    Formula power = Combination.power(Formula.number(content), d);
    if (after.degree() == 0) {
      here.add(Idea.ARITHMETIC, "the same number for each", product, power, Formula.number(scale));
      return scale;
    }
    Rational turned = turned(lines, setting, middle, after, names.get(level), below);
    Rational value = scale.times(turned);
    here.add(
        Idea.ARITHMETIC,
        "the number in front as often as there are roots",
        product,
        Combination.product(List.of(power, Formula.number(turned))),
        Formula.number(value));
    return value;
  }

  /** Writes Π g(r) over the roots of f, Π f(y) over the roots of g being known. */
  private static Rational turned(
      Lines lines,
      Setting setting,
      Polynomial f,
      Polynomial g,
      List<String> names,
      Rational other) {
    Rational factor =
        g.lead()
            .power(f.degree())
            .over(f.lead().power(g.degree()))
            .times(sign(f.degree() * g.degree()));
    Rational value = factor.times(other);
    lines
        .in(setting)
        .add(
            Idea.ELIMINATE,
            "the product over the other roots, with the powers of the leads and the sign",
            new Formula.Aggregate(
                Formula.Aggregate.Operation.PRODUCT, PolynomialFormula.of(g, names.get(0))),
            new Combination().plus(factor, Formula.number(other)).formula(),
            Formula.number(value));
    return value;
  }

  private static Rational sign(int exponent) {
    return exponent % 2 == 0 ? Rational.ONE : Rational.MINUS_ONE;
  }
}
