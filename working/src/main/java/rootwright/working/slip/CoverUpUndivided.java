package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * In partial fractions a factor is covered up and its zero put into the numerator alone, not into
 * what is left of the denominator. Common practice.
 */
final class CoverUpUndivided implements Slip {

  @Override
  public String name() {
    return "cover-up-undivided";
  }

  @Override
  public String text() {
    return "Cover one factor up and put its zero into all the rest, the other factors below too.";
  }

  @Override
  public Idea spot() {
    return Idea.PARTIAL_FRACTIONS;
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  public List<Rational> on(Asked asked) {
    return asked
        .sumOverRoots()
        .filter(f -> f.denominator().degree() > 1)
        .map(f -> split(asked.problem().polynomial(), f))
        .orElse(List.of());
  }

  private static List<Rational> split(Polynomial p, RootFunction f) {
    List<RationalRoot> points = RationalRoots.of(f.denominator());
    boolean splits =
        points.size() == f.denominator().degree()
            && points.stream().noneMatch(point -> p.at(point.value()).isZero());
    if (!splits) {
      return List.of();
    }
    Polynomial.Division division = f.numerator().divide(f.denominator());
    Rational total = ResidueAlgebra.of(p).trace(division.quotient());
    for (RationalRoot point : points) {
      Rational numerator = division.remainder().at(point.value()).over(f.denominator().lead());
      Rational slope = p.derivative().at(point.value()).over(p.at(point.value()));
      total = total.minus(numerator.times(slope));
    }
    return List.of(total);
  }
}
