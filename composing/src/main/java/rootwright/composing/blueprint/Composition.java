package rootwright.composing.blueprint;

import java.util.Collections;
import java.util.LinkedHashMap;
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
 * @param ending why nothing more was looked at
 * @param conflicts if every candidate was looked at and none passed: which wishes no candidate
 *     meets, alone or two together, one sentence each
 * @param relaxations what would help, if nothing was found
 */
public record Composition(
    Blueprint blueprint,
    List<Composed> problems,
    List<ScanResult.FilterCount> counts,
    Map<String, Integer> rejected,
    Ending ending,
    List<String> conflicts,
    List<Relaxation> relaxations) {

  /** Why an order ended. */
  public enum Ending {
    /** As many problems as were wanted are found. */
    FILLED,
    /** Every candidate was looked at, so there are no others. */
    EXHAUSTED,
    /** Enough candidates were worked without finding as many problems as were wanted. */
    GIVEN_UP,
    /** Somebody stopped it. */
    STOPPED
  }

  /** Keeps its own copies. */
  public Composition {
    problems = List.copyOf(problems);
    counts = List.copyOf(counts);
    rejected = Collections.unmodifiableMap(new LinkedHashMap<>(rejected));
    conflicts = List.copyOf(conflicts);
    relaxations = List.copyOf(relaxations);
  }

  /** Whether every candidate was looked at, so that there are no others. */
  public boolean exhausted() {
    return ending == Ending.EXHAUSTED;
  }
}
