package rootwright.working.check.second;

import java.util.Arrays;
import java.util.List;
import rootwright.algebra.enclosure.ComplexBall;

/**
 * One way of giving names to the enclosed roots.
 *
 * @param roots every root, counted with multiplicity, in the order of the names
 */
record Labelling(List<ComplexBall> roots) {

  Labelling {
    roots = List.copyOf(roots);
  }

  /** The labelling after the roots have changed places: name k now means what {@code to[k]} did. */
  Labelling permuted(int... to) {
    return new Labelling(Arrays.stream(to).mapToObj(roots::get).toList());
  }
}
