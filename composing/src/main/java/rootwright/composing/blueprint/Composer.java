package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.scan.Conflicts;
import rootwright.composing.scan.Relaxations;
import rootwright.composing.scan.Scan;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.scan.ScanEstimate;
import rootwright.working.Subjects;
import rootwright.working.kind.Kinds;

/**
 * Fills an order: compiles each ask once, scans a box of coefficients in 64-bit arithmetic, and
 * works every candidate that passes by all routes and both checks before it is offered.
 */
public final class Composer {

  /** So many candidates are looked at each time when it is searched what would help. */
  private static final long RELAXATION_BUDGET = 4_000_000L;

  /** An odd number far from round in binary, by which the seeds of the asks are told apart. */
  private static final long APART = 0x9E3779B97F4A7C15L;

  private final Kinds kinds;
  private final Effort effort;
  private final Subjects subjects;

  /** With the kinds of ask to work candidates by, and the usual effort. */
  public Composer(Kinds kinds) {
    this(kinds, Effort.USUAL);
  }

  /** With the kinds of ask to work candidates by. */
  public Composer(Kinds kinds, Effort effort) {
    this.kinds = kinds;
    this.effort = effort;
    this.subjects = new Subjects(kinds);
  }

  /**
   * Fills an order, telling nobody.
   *
   * @param known fingerprints of problems to stay away from
   * @param control who does the work of the scan and who may stop it; does not change the result
   * @throws ContradictoryBlueprintException if the order contradicts itself
   * @throws UnreadableException if its ask cannot be read
   */
  public Composition compose(Blueprint blueprint, Set<String> known, ScanControl control)
      throws UnreadableException {
    return compose(blueprint, known, ComposingControl.of(control));
  }

  /**
   * Fills an order.
   *
   * @param known fingerprints of problems to stay away from
   * @param control who does the work, who is told and who may stop it; does not change the result
   * @throws ContradictoryBlueprintException if the order contradicts itself
   * @throws UnreadableException if its ask cannot be read
   */
  public Composition compose(Blueprint blueprint, Set<String> known, ComposingControl control)
      throws UnreadableException {
    return compose(blueprint, known, Judge.by(blueprint), control);
  }

  /** Fills an order, with another judge of the worked candidates. */
  Composition compose(Blueprint blueprint, Set<String> known, Judge judge, ComposingControl control)
      throws UnreadableException {
    return compose(asks(blueprint), blueprint, known, judge, control);
  }

  /** Fills an order for these asks, whatever ask it names. */
  Composition compose(
      List<? extends OrderedAsk> asks,
      Blueprint blueprint,
      Set<String> known,
      Judge judge,
      ComposingControl control) {
    Picker picker = new Picker(kinds, blueprint.choices(), known, control.listener());
    FilterCounts counts = new FilterCounts();
    boolean exhausted = true;
    for (int k = 0; k < asks.size() && !control.isStopped(); k++) {
      int missing = blueprint.many() - picker.picked().size();
      int share = share(missing, asks.size() - k);
      if (share == 0) {
        break;
      }
      Lot lot = lot(asks, k, share, blueprint, judge);
      Lot.Outcome outcome =
          lot.run(picker, picker.picked().size() + share, control, blueprint.many());
      counts.add(outcome.counts());
      exhausted &= outcome.exhausted();
    }
    Composition.Ending ending =
        picker.picked().size() == blueprint.many()
            ? Composition.Ending.FILLED
            : control.isStopped()
                ? Composition.Ending.STOPPED
                : exhausted ? Composition.Ending.EXHAUSTED : Composition.Ending.GIVEN_UP;
    boolean nothing =
        ending == Composition.Ending.EXHAUSTED
            && picker.picked().isEmpty()
            && picker.rejected().isEmpty();
    Optional<Scan> empty =
        nothing && asks.get(0) instanceof CompiledAsk first
            ? Optional.of(first.lot(blueprint, judge, 1, blueprint.seed()).scan())
            : Optional.empty();
    return new Composition(
        blueprint,
        picker.picked(),
        counts.all(),
        picker.rejected(),
        ending,
        empty.map(scan -> conflicts(scan, control.scan())).orElse(List.of()),
        empty
            .map(scan -> new Relaxations(scan, RELAXATION_BUDGET, control.scan()).find())
            .orElse(List.of()));
  }

  /** How many problems the next of so many asks is to give. */
  private static int share(int missing, int asksLeft) {
    return (missing + asksLeft - 1) / asksLeft;
  }

  private Lot lot(
      List<? extends OrderedAsk> asks, int k, int share, Blueprint blueprint, Judge judge) {
    return asks.get(k)
        .lot(blueprint, judge, effort.forProblems(share), blueprint.seed() + k * APART);
  }

  /** Which wishes no candidate meets, or none of a sample of a box too large to look at often. */
  private static List<String> conflicts(Scan empty, ScanControl control) {
    Conflicts conflicts = new Conflicts(empty, RELAXATION_BUDGET, control);
    String none =
        conflicts.isOfAll()
            ? "No polynomial here meets "
            : "Of a sample of %,d polynomials none meets ".formatted(RELAXATION_BUDGET);
    return conflicts.find().stream()
        .map(
            wishes ->
                none
                    + wishes.stream()
                        .map(wish -> "“%s”".formatted(wish.explanation()))
                        .collect(Collectors.joining(" and "))
                    + (wishes.size() == 1 ? "." : " together."))
        .toList();
  }

  /**
   * Looks at a sample of the candidates of an order, without composing anything.
   *
   * @param clock a clock in nanoseconds; only differences are used
   * @param budget how many nanoseconds the sample may take, all asks of the order together
   * @throws ContradictoryBlueprintException if the order contradicts itself
   * @throws UnreadableException if its ask cannot be read
   */
  public OrderEstimate estimate(Blueprint blueprint, LongSupplier clock, long budget)
      throws UnreadableException {
    List<OrderedAsk> asks = asks(blueprint);
    int sampled = Math.min(asks.size(), blueprint.many());
    List<OrderEstimate.OfAsk> estimates = new ArrayList<>();
    for (int k = 0; k < sampled; k++) {
      if (!(lot(asks, k, share(blueprint.many(), asks.size()), blueprint, Judge.by(blueprint))
          instanceof Draw draw)) {
        continue;
      }
      ScanEstimate estimate =
          ScanEstimate.of(draw.scan(), blueprint.seed(), clock, budget / sampled);
      estimates.add(new OrderEstimate.OfAsk(draw.ask(), estimate, draw.kept()));
    }
    return new OrderEstimate(estimates);
  }

  private List<OrderedAsk> asks(Blueprint blueprint) throws UnreadableException {
    List<String> contradictions = blueprint.contradictions();
    if (!contradictions.isEmpty()) {
      throw new ContradictoryBlueprintException(contradictions);
    }
    return AskList.of(blueprint, kinds, subjects);
  }
}
