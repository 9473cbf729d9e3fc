package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The enclosures of the roots of the last few polynomials: every line of every working asks for
 * them again. Safe to use from several threads.
 */
final class KnownEnclosures {

  private static final int REMEMBERED = 64;

  private record Wanted(Polynomial polynomial, int digits) {}

  private final Map<Wanted, List<ComplexBall>> known =
      new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Wanted, List<ComplexBall>> eldest) {
          return size() > REMEMBERED;
        }
      };

  /** The discs, each as often as its root occurs. */
  List<ComplexBall> of(Polynomial polynomial, int digits) {
    Wanted wanted = new Wanted(polynomial, digits);
    synchronized (known) {
      List<ComplexBall> found = known.get(wanted);
      if (found != null) {
        return found;
      }
    }
    List<ComplexBall> discs = new ArrayList<>();
    for (EnclosedRoot root : RootEnclosures.of(polynomial, digits)) {
      discs.addAll(Collections.nCopies(root.multiplicity(), root.disc()));
    }
    List<ComplexBall> found = List.copyOf(discs);
    synchronized (known) {
      known.put(wanted, found);
    }
    return found;
  }
}
