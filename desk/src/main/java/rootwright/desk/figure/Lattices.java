package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.solve.Given;

/** Pictures of pairs of positive integers for which one expression divides another. */
final class Lattices {

  private static final int BOUND = 240;

  private Lattices() {}

  /** The pairs a ≤ b for which the first condition, an equation with a factor k, has a whole k. */
  static Optional<Picture> of(Given given) {
    if (given.roots().size() != 2
        || given.conditions().isEmpty()
        || !(given.conditions().get(0) instanceof Formula.Relation equation)
        || equation.sides().size() != 2
        || !(given.find() instanceof Formula.Name factor)) {
      return Optional.empty();
    }
    List<Place> pairs = new ArrayList<>();
    for (int b = 1; b <= BOUND; b++) {
      for (int a = 1; a <= b; a++) {
        Sampled here =
            new Sampled(
                Map.of(
                    given.roots().get(0), (double) a,
                    given.roots().get(1), (double) b,
                    factor.spelling(), 1.0));
        double quotient =
            equation.sides().get(0).choose(here) / equation.sides().get(1).choose(here);
        if (Double.isFinite(quotient) && quotient == Math.rint(quotient)) {
          pairs.add(new Place(a, b));
        }
      }
    }
    return pairs.isEmpty() || pairs.size() > 60
        ? Optional.empty()
        : Optional.of(new LatticePicture(given.roots(), pairs, BOUND));
  }
}
