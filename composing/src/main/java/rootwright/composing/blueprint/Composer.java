package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongSupplier;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.scan.Relaxation;
import rootwright.composing.scan.Relaxations;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.scan.ScanEstimate;
import rootwright.composing.scan.ScanResult;
import rootwright.working.kind.Kinds;
import rootwright.working.solve.Solution;

/**
 * Fills an order: compiles each ask once, scans a box of coefficients in 64-bit arithmetic, and
 * works every candidate that passes by all routes and both checks before it is offered.
 */
public final class Composer {

  /** Candidates that the search for a relaxation may look at. */
  private static final long RELAXATION_BUDGET = 4_000_000L;

  private final Kinds kinds;

  /** With the kinds of ask to work candidates by. */
  public Composer(Kinds kinds) {
    this.kinds = kinds;
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
    return compose(blueprint, known, solution -> Judgement.of(solution, blueprint), control);
  }

  /** Fills an order, with another judge of the worked candidates. */
  Composition compose(
      Blueprint blueprint,
      Set<String> known,
      Function<Solution, Judgement> judge,
      ComposingControl control)
      throws UnreadableException {
    List<CompiledAsk> asks = asks(blueprint);
    Picker picker = new Picker(kinds, judge, blueprint.choices(), known, control.listener());
    FilterCounts counts = new FilterCounts();
    boolean exhausted = true;
    int asksLeft = asks.size();
    for (CompiledAsk ask : asks) {
      int missing = blueprint.many() - picker.picked().size();
      int share = (missing + asksLeft - 1) / asksLeft--;
      if (share == 0 || control.isStopped()) {
        break;
      }
      Draw draw = Draw.of(ask, blueprint, share, blueprint.seed());
      ScanResult result =
          draw.run(picker, picker.picked().size() + share, control, blueprint.many());
      counts.add(result.counts());
      exhausted &= result.isExhausted() && result.accepted() <= draw.kept();
    }
    Composition.Ending ending =
        picker.picked().size() == blueprint.many()
            ? Composition.Ending.FILLED
            : control.isStopped()
                ? Composition.Ending.STOPPED
                : exhausted ? Composition.Ending.EXHAUSTED : Composition.Ending.GIVEN_UP;
    return new Composition(
        blueprint,
        picker.picked(),
        counts.all(),
        picker.rejected(),
        ending,
        relaxations(blueprint, asks.get(0), picker, ending, control));
  }

  /** What would help where nothing passed the scan. */
  private static List<Relaxation> relaxations(
      Blueprint blueprint,
      CompiledAsk ask,
      Picker picker,
      Composition.Ending ending,
      ComposingControl control) {
    return ending == Composition.Ending.EXHAUSTED
            && picker.picked().isEmpty()
            && picker.rejected().isEmpty()
        ? new Relaxations(
                Draw.of(ask, blueprint, 1, blueprint.seed()).scan(),
                RELAXATION_BUDGET,
                control.scan())
            .find()
        : List.of();
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
    List<CompiledAsk> asks = asks(blueprint);
    int share = (blueprint.many() + asks.size() - 1) / asks.size();
    List<OrderEstimate.OfAsk> estimates = new ArrayList<>();
    for (CompiledAsk ask : asks.subList(0, Math.min(asks.size(), blueprint.many()))) {
      Draw draw = Draw.of(ask, blueprint, share, blueprint.seed());
      ScanEstimate estimate =
          ScanEstimate.of(draw.scan(), blueprint.seed(), clock, budget / asks.size());
      estimates.add(new OrderEstimate.OfAsk(draw.ask(), estimate, draw.kept()));
    }
    return new OrderEstimate(estimates);
  }

  private List<CompiledAsk> asks(Blueprint blueprint) throws UnreadableException {
    List<String> contradictions = blueprint.contradictions();
    if (!contradictions.isEmpty()) {
      throw new ContradictoryBlueprintException(contradictions);
    }
    return AskList.of(blueprint, kinds);
  }
}
