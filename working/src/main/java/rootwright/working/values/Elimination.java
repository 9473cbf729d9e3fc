package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Finds e_1, …, e_n from given symmetric values, by the ideal of the equations. An unknown beyond
 * e_n stands for the reciprocal of what must not be zero.
 */
final class Elimination {

  /** Most possibilities that are followed. */
  private static final int MOST_CASES = 12;

  private final int count;
  private final int unknowns;
  private final List<MultivariatePolynomial> equations = new ArrayList<>();

  private Elimination(SymmetricData data, MultivariatePolynomial mustNotVanish) {
    count = data.count();
    data.givens().forEach(given -> equations.add(given.equation()));
    unknowns = count + (mustNotVanish.isConstant() ? 0 : 1);
    if (unknowns > count) {
      equations.add(
          MultivariatePolynomial.ONE.minus(
              mustNotVanish.times(MultivariatePolynomial.unknown(count))));
    }
  }

  /** The left sides of all equations, those that keep denominators from zero last. */
  static List<MultivariatePolynomial> equations(SymmetricData data) {
    return new Elimination(data, DataReader.mustNotVanish(data)).equations;
  }

  /** What the data leave. */
  static Outcome of(SymmetricData data) {
    return new Elimination(data, DataReader.mustNotVanish(data)).outcome(data);
  }

  private Outcome outcome(SymmetricData data) {
    Optional<Ideal> ideal = Ideal.of(equations, unknowns);
    if (ideal.isEmpty()) {
      return new Outcome.TooHard();
    } else if (ideal.get().isEverything()) {
      return new Outcome.Contradictory(firstContradiction(data));
    }
    List<List<Rational>> points = new ArrayList<>();
    return allPoints(equations, points)
        ? points.size() == 1 ? new Outcome.Single(points.get(0)) : new Outcome.Several(points)
        : new Outcome.Open(ideal.get());
  }

  /** The data one by one until they contradict one another. */
  private static int firstContradiction(SymmetricData data) {
    for (int k = 1; k < data.givens().size(); k++) {
      SymmetricData less =
          new SymmetricData(
              data.names(),
              data.unknown(),
              data.domain(),
              data.distinct(),
              data.givens().subList(0, k),
              List.of());
      List<MultivariatePolynomial> some = equations(less);
      if (Ideal.of(some, data.count() + 1).map(Ideal::isEverything).orElse(false)) {
        return k - 1;
      }
    }
    return data.givens().size() - 1;
  }

  /** Collects all solutions; false if they are not finitely many rational ones. */
  private boolean allPoints(List<MultivariatePolynomial> system, List<List<Rational>> points) {
    Optional<Ideal> ideal = Ideal.of(system, unknowns);
    if (ideal.isEmpty() || points.size() > MOST_CASES) {
      return false;
    } else if (ideal.get().isEverything()) {
      return true;
    }
    List<Rational> point = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      MultivariatePolynomial unknown = MultivariatePolynomial.unknown(k);
      Optional<Rational> value = ideal.get().constant(unknown);
      if (value.isPresent()) {
        point.add(value.get());
        continue;
      }
      Optional<Polynomial> values = ideal.get().minimalPolynomial(unknown);
      List<RationalRoot> roots = values.map(RationalRoots::of).orElse(List.of());
      if (values.isEmpty() || roots.size() < values.get().squarefreePart().degree()) {
        return false;
      }
      for (RationalRoot root : roots) {
        List<MultivariatePolynomial> more = new ArrayList<>(system);
        more.add(unknown.minus(MultivariatePolynomial.constant(root.value())));
        if (!allPoints(more, points)) {
          return false;
        }
      }
      return true;
    }
    points.add(point);
    return true;
  }
}
