package rootwright.working.check;

import java.util.HashMap;
import java.util.Map;
import rootwright.algebra.notation.Formula;

/**
 * What formulas that do not depend on which root has which name (Σ, Π, S_k, e_k, h_k), and in which
 * no function is applied, have come to while one problem is worked: its lines speak of the same few
 * again and again. Not safe for several threads.
 *
 * @param <W> where a formula stands: everything else that its value depends on
 * @param <V> what its value is
 */
public final class Nameless<W, V> {

  private final Map<W, Map<Formula, V>> known = new HashMap<>();

  /** What has been found in one place; to be added to. */
  public Map<Formula, V> in(W place) {
    return known.computeIfAbsent(place, unseen -> new HashMap<>());
  }
}
