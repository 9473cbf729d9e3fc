package rootwright.composing.blueprint;

import java.util.List;
import java.util.Map;
import rootwright.composing.scan.ScanResult.FilterCount;

/**
 * How far an order has come.
 *
 * @param ask the ask whose candidates are being screened
 * @param examined how many candidates were looked at
 * @param candidates how many there are in all
 * @param passing how many of those looked at meet every wish of the scan
 * @param counts how many each wish saw and turned away, in the order they are asked
 * @param rejected how many that passed the scan were turned away when worked, by reason
 * @param found how many problems are found
 * @param wanted how many are wanted
 */
public record Screened(
    String ask,
    long examined,
    long candidates,
    long passing,
    List<FilterCount> counts,
    Map<String, Integer> rejected,
    int found,
    int wanted) {

  /** Keeps its own copies. */
  public Screened {
    counts = List.copyOf(counts);
    rejected = Map.copyOf(rejected);
  }
}
