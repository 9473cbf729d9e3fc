package rootwright.composing.scan;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.AnswerDefined;
import rootwright.composing.scan.filter.CandidateFilter;

/**
 * A search through a box for the candidates that pass all filters. A scan is a value: running it
 * twice, on any number of threads, interrupted or not, gives the same result.
 *
 * @param box where to look
 * @param expression what is asked about the roots
 * @param filters the wishes, sorted from the cheapest stage to the dearest; that the expression has
 *     a value is always among them
 * @param order in which order, and how many to keep
 * @param counting what to count
 */
public record Scan(
    CoefficientBox box,
    CompiledExpression expression,
    List<CandidateFilter> filters,
    ScanOrder order,
    Counting counting) {

  /**
   * Sorts the filters.
   *
   * @throws IllegalArgumentException if the degrees of box and expression differ, or two filters
   *     have one name
   */
  public Scan {
    if (box.degree() != expression.degree()) {
      throw new IllegalArgumentException(
          "box of degree " + box.degree() + ", expression of degree " + expression.degree());
    }
    CandidateFilter defined = new AnswerDefined(expression);
    List<CandidateFilter> sorted = new ArrayList<>();
    filters.forEach(filter -> sorted.add(filter.within(box)));
    if (!expression.isAlwaysDefined()
        && filters.stream().noneMatch(filter -> filter.name().equals(defined.name()))) {
      sorted.add(0, defined);
    }
    sorted.sort(Comparator.comparing(CandidateFilter::stage));
    filters = List.copyOf(sorted);
    Set<String> names = new HashSet<>();
    for (CandidateFilter filter : filters) {
      if (!names.add(filter.name())) {
        throw new IllegalArgumentException("two filters with the name " + filter.name());
      }
    }
  }

  /** Every candidate, keeping the first that pass. */
  public static Scan exhaustive(
      CoefficientBox box, CompiledExpression expression, List<CandidateFilter> filters, int kept) {
    return new Scan(box, expression, filters, new ScanOrder.Exhaustive(kept), Counting.CASCADE);
  }

  /** So many candidates, drawn by a seed. */
  public static Scan seeded(
      CoefficientBox box,
      CompiledExpression expression,
      List<CandidateFilter> filters,
      int wanted,
      long seed) {
    return new Scan(box, expression, filters, new ScanOrder.Seeded(wanted, seed), Counting.CASCADE);
  }

  /** The same scan with another box. */
  public Scan with(CoefficientBox other) {
    return new Scan(other, expression, filters, order, counting);
  }

  /** The same scan with other filters. */
  public Scan with(List<CandidateFilter> others) {
    return new Scan(box, expression, others, order, counting);
  }

  /** The same scan in another order. */
  public Scan with(ScanOrder other) {
    return new Scan(box, expression, filters, other, counting);
  }

  /** The same scan counting otherwise. */
  public Scan with(Counting other) {
    return new Scan(box, expression, filters, order, other);
  }

  /**
   * A short text that tells this scan from others: a number made from the ranges, the expression,
   * the names of the filters, the order and the counting.
   */
  public String identity() {
    List<String> names = filters.stream().map(CandidateFilter::name).toList();
    String text = box + "|" + expression + "|" + names + "|" + order + "|" + counting;
    // FNV-1a with 64 bits (Fowler, Noll and Vo; constants from memory).
    long hash = 0xCBF29CE484222325L;
    for (byte octet : text.getBytes(StandardCharsets.UTF_8)) {
      hash = (hash ^ (octet & 0xFF)) * 0x100000001B3L;
    }
    return Long.toHexString(hash);
  }

  /** How many tasks the scan is cut into. */
  public long tasks() {
    return (box.rows() - 1) / Walk.of(box, order).rowsPerTask() + 1;
  }

  /** The state in which nothing is done. */
  public ScanState start() {
    return newTally().state(0, identity());
  }

  /** Runs the scan from the start. */
  public ScanResult run(ScanControl control) {
    return resume(start(), control);
  }

  /** What each filter has done when a state is reached, in the order they are asked. */
  public List<ScanResult.FilterCount> countsIn(ScanState state) {
    return new ScanResult(this, state, Ending.STOPPED).counts();
  }

  /**
   * Goes on from a state that this scan has reached before.
   *
   * @throws IllegalArgumentException if the state belongs to another scan
   */
  public ScanResult resume(ScanState state, ScanControl control) {
    if (!state.identity().equals(identity()) || state.counts().size() != filters.size()) {
      throw new IllegalArgumentException(
          "the state of scan " + state.identity() + " cannot continue scan " + identity());
    }
    if (state.next() < 0 || state.next() > tasks()) {
      throw new IllegalArgumentException(
          "no task " + state.next() + " in a scan of " + tasks() + " tasks");
    }
    return new ScanRun(this, state, control).run();
  }

  Tally newTally() {
    return new Tally(filters.size(), order.kept());
  }
}
