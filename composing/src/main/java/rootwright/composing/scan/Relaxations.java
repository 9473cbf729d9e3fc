package rootwright.composing.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.filter.CandidateFilter;

/**
 * Looks for the nearest relaxations of a scan that found nothing: each wish replaced by a weaker
 * one, each wish given up, and larger coefficients.
 */
public final class Relaxations {

  private static final int EXAMPLES = Tally.EXAMPLES;

  private final Scan scan;
  private final long budget;
  private final ScanControl control;

  /**
   * The search.
   *
   * @param scan the scan that found nothing
   * @param budget boxes with more candidates than this are not tried
   * @param control who does the work; if it stops the scans, what is known by then is returned
   */
  public Relaxations(Scan scan, long budget, ScanControl control) {
    this.scan = scan.with(new ScanOrder.Exhaustive(EXAMPLES));
    this.budget = budget;
    this.control = control;
  }

  /**
   * All relaxations that give something: weaker wishes first, then wishes given up, then the
   * smallest of the larger boxes tried, whose sizes grow by 1, 2, 4, …
   */
  public List<Relaxation> find() {
    List<Relaxation> found = new ArrayList<>();
    if (scan.box().candidates() <= budget) {
      addWithoutOne(found);
    }
    widerBox().ifPresent(found::add);
    return List.copyOf(found);
  }

  private void addWithoutOne(List<Relaxation> found) {
    ScanResult result = scan.with(Counting.LEAVE_ONE_OUT).run(control);
    if (!result.isExhausted()) {
      return;
    }
    List<Relaxation> without = new ArrayList<>();
    for (int k = 0; k < scan.filters().size(); k++) {
      CandidateFilter filter = scan.filters().get(k);
      ScanState.Count count = result.state().counts().get(k);
      // What a weaker wish lets through is among what the wish alone keeps out.
      if (count.alone() > 0) {
        weaker(k).ifPresent(found::add);
        List<Polynomial> examples =
            count.examples().stream().map(scan.box()::polynomialAt).toList();
        without.add(
            new Relaxation.WithoutFilter(
                filter.name(), filter.explanation(), result.accepted() + count.alone(), examples));
      }
    }
    found.addAll(without);
  }

  private Optional<Relaxation> weaker(int position) {
    CandidateFilter filter = scan.filters().get(position);
    for (CandidateFilter weaker : filter.weaker()) {
      List<CandidateFilter> filters = new ArrayList<>(scan.filters());
      filters.set(position, weaker);
      boolean known = scan.filters().stream().anyMatch(other -> other.name().equals(weaker.name()));
      if (known) {
        continue;
      }
      ScanResult result = scan.with(filters).run(control);
      if (result.isExhausted() && result.accepted() > 0) {
        return Optional.of(
            new Relaxation.WeakerFilter(
                filter.name(),
                weaker.name(),
                weaker.explanation(),
                result.accepted(),
                polynomials(result)));
      }
    }
    return Optional.empty();
  }

  private Optional<Relaxation> widerBox() {
    for (long step = 1; step < 1L << 40; step *= 2) {
      CoefficientBox wider;
      try {
        wider = scan.box().widened(step);
      } catch (ArithmeticException | IllegalArgumentException tooLarge) {
        return Optional.empty();
      }
      if (wider.candidates() > budget || wider.equals(scan.box())) {
        return Optional.empty();
      }
      ScanResult result = scan.with(wider).run(control);
      if (!result.isExhausted()) {
        return Optional.empty();
      }
      if (result.accepted() > 0) {
        return Optional.of(new Relaxation.WiderBox(wider, result.accepted(), polynomials(result)));
      }
    }
    return Optional.empty();
  }

  private static List<Polynomial> polynomials(ScanResult result) {
    return result.found().stream().map(ScanResult.Found::polynomial).toList();
  }
}
