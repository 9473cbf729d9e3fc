package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.working.check.Verdict;

/** Whether a list of exact roots is the list of all roots, by certified enclosures. */
public final class RootsCheck {

  private static final int DIGITS = 30;

  private RootsCheck() {}

  /** Every enclosed root must meet exactly one listed root, of the same multiplicity. */
  public static Verdict of(Polynomial polynomial, List<ExactRoot> listed) {
    List<ExactRoot> left = new ArrayList<>(listed);
    for (EnclosedRoot root : RootEnclosures.of(polynomial, DIGITS)) {
      List<ExactRoot> near =
          left.stream()
              .filter(exact -> exact.value().enclosure(DIGITS).overlaps(root.disc()))
              .toList();
      if (near.size() != 1 || near.get(0).multiplicity() != root.multiplicity()) {
        return new Verdict.Refuted("the root near " + root.disc() + " is not listed as it is");
      }
      left.remove(near.get(0));
    }
    return left.isEmpty()
        ? Verdict.confirmed("certified enclosures of the roots", DIGITS)
        : new Verdict.Refuted(left.get(0).value() + " is listed and is no root");
  }
}
