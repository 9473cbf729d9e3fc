package rootwright.composing.blueprint;

import java.util.List;
import java.util.Map;
import rootwright.composing.scan.Relaxation;
import rootwright.composing.scan.ScanResult;

/**
 * What came of an order.
 *
 * @param blueprint the order, its seed included
 * @param problems what was composed, in the order found
 * @param counts how many candidates each filter of the scan saw and let through
 * @param rejected how many that passed the scan were turned away afterwards, by reason
 * @param exhausted whether every candidate was looked at, so that there are no others
 * @param relaxations what would help, if nothing was found
 */
public record Composition(
    Blueprint blueprint,
    List<Composed> problems,
    List<ScanResult.FilterCount> counts,
    Map<String, Integer> rejected,
    boolean exhausted,
    List<Relaxation> relaxations) {
  public Composition {
    problems = List.copyOf(problems);
    counts = List.copyOf(counts);
    rejected = Map.copyOf(rejected);
    relaxations = List.copyOf(relaxations);
  }
}
