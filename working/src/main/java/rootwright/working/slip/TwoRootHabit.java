package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.step.Idea;

/** p₃ by a formula that belongs to two roots, S³ − 3SP, or with +3e₃ forgotten. Common practice. */
final class TwoRootHabit extends PowerSumSlip {

  @Override
  public String name() {
    return "two-root-habit";
  }

  @Override
  public String text() {
    return "The sum of the cubes is e₁³ − 3e₁e₂ + 3e₃; only with two roots is the last term absent.";
  }

  @Override
  public Idea spot() {
    return Idea.BUILD;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  boolean isMetAt(int k, int n) {
    return k == 3 && n >= 3;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    List<Rational> e = ElementaryValues.of(p);
    Rational cube = e.get(1).power(3);
    return List.of(
        cube.minus(e.get(1).times(e.get(3)).times(3)),
        cube.minus(e.get(1).times(e.get(2)).times(3)));
  }
}
