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

  /** So many boxes that are too large to be looked at whole are tried. */
  private static final int MOST_SAMPLED = 3;

  private final Scan scan;
  private final long budget;
  private final ScanControl control;

  /**
   * The search.
   *
   * @param scan the scan that found nothing
   * @param budget of boxes with more candidates than this a sample of so many is looked at
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
    addWithoutOne(found);
    widerBox().ifPresent(found::add);
    return List.copyOf(found);
  }

  private void addWithoutOne(List<Relaxation> found) {
    Optional<Look> look = Look.at(scan.with(Counting.LEAVE_ONE_OUT), budget, control);
    if (look.isEmpty()) {
      return;
    }
    ScanResult result = look.get().result();
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
            look.get()
                .found(
                    new Relaxation.WithoutFilter(
                        filter.name(),
                        filter.explanation(),
                        result.accepted() + count.alone(),
                        examples)));
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
      Optional<Look> look = Look.at(scan.with(filters), budget, control);
      if (look.isPresent() && look.get().result().accepted() > 0) {
        return Optional.of(
            look.get()
                .found(
                    new Relaxation.WeakerFilter(
                        filter.name(),
                        weaker.name(),
                        weaker.explanation(),
                        look.get().result().accepted(),
                        polynomials(look.get().result()))));
      }
    }
    return Optional.empty();
  }

  private Optional<Relaxation> widerBox() {
    int sampled = 0;
    for (long step = 1; step < 1L << 40 && sampled < MOST_SAMPLED; step *= 2) {
      CoefficientBox wider;
      try {
        wider = scan.box().widened(step);
      } catch (ArithmeticException | IllegalArgumentException tooLarge) {
        return Optional.empty();
      }
      if (wider.equals(scan.box())) {
        return Optional.empty();
      }
      Optional<Look> look = Look.at(scan.with(wider), budget, control);
      if (look.isEmpty()) {
        return Optional.empty();
      }
      ScanResult result = look.get().result();
      if (result.accepted() > 0) {
        return Optional.of(
            look.get()
                .found(new Relaxation.WiderBox(wider, result.accepted(), polynomials(result))));
      }
      sampled += look.get().isWhole() ? 0 : 1;
    }
    return Optional.empty();
  }

  private static List<Polynomial> polynomials(ScanResult result) {
    return result.found().stream().map(ScanResult.Found::polynomial).toList();
  }
}
