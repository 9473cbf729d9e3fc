package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.composing.scan.Hit;
import rootwright.composing.scan.Scan;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.scan.ScanResult;
import rootwright.composing.scan.ScanState;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.filter.AnswerFilter;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.ExactTests;
import rootwright.composing.scan.filter.PolynomialTests;
import rootwright.composing.scan.filter.PositiveLead;
import rootwright.composing.scan.filter.Primitive;

/**
 * The candidates for one ask, drawn by a seed and handed to the picker in the order of the walk
 * while the scan goes on; the scan ends when enough are picked.
 */
final class Draw implements Lot {

  private final CompiledAsk ask;
  private final Judge judge;
  private final Scan scan;
  private final int kept;

  private Draw(CompiledAsk ask, Judge judge, Scan scan, int kept) {
    this.ask = ask;
    this.judge = judge;
    this.scan = scan;
    this.kept = kept;
  }

  /** The draw for an ask of an order; so many candidates are worked at most. */
  static Draw of(CompiledAsk ask, Blueprint blueprint, Judge judge, int kept, long seed) {
    ExactTests exact = new PolynomialTests(p -> Factorisation.of(p).isIrreducible());
    PolynomialWish wish = blueprint.polynomial();
    CoefficientBox box = wish.box();
    List<CandidateFilter> filters = new ArrayList<>();
    filters.add(new PositiveLead());
    filters.add(new Primitive());
    if (ask.isValue()) {
      blueprint
          .answer()
          .shape()
          .ifPresent(shape -> filters.add(new AnswerFilter(ask.expression(), shape)));
    }
    filters.addAll(wish.roots().filters(exact));
    filters.addAll(wish.real().filters(wish.degree(), exact));
    return new Draw(ask, judge, Scan.seeded(box, ask.expression(), filters, kept, seed), kept);
  }

  /** The ask as it is read. */
  String ask() {
    return UnicodeWriter.write(ask.pattern().ask());
  }

  /** The scan. */
  Scan scan() {
    return scan;
  }

  /** How many candidates are worked at most. */
  int kept() {
    return kept;
  }

  @Override
  public Outcome run(Picker picker, int until, ComposingControl control, int wanted) {
    Handing handing = new Handing(picker, until, control, wanted);
    ScanState start = control.book().stateOf(scan.identity()).orElseGet(() -> scan.start());
    handing.reached(start);
    ScanControl scanControl =
        control.scan().telling(handing::reached).endingWhen(handing::isEnough);
    ScanResult result = scan.resume(start, scanControl);
    if (!control.isStopped() && !handing.isEnough()) {
      handing.handOver(result.state().hits());
    }
    return new Outcome(result.counts(), result.isExhausted() && result.accepted() <= kept);
  }

  /** Hands hits over as they come. */
  private final class Handing {

    private final Picker picker;
    private final int until;
    private final ComposingControl control;
    private final int wanted;
    private int handed;

    Handing(Picker picker, int until, ComposingControl control, int wanted) {
      this.picker = picker;
      this.until = until;
      this.control = control;
      this.wanted = wanted;
    }

    boolean isEnough() {
      return picker.picked().size() >= until;
    }

    void reached(ScanState state) {
      control.book().keep(state);
      // Only those that are first in their rows keep their place whatever comes later.
      handOver(state.hits().stream().takeWhile(hit -> hit.rank() == 0).toList());
      control
          .listener()
          .screened(
              new Screened(
                  ask(),
                  state.examined(),
                  scan.box().candidates(),
                  state.accepted(),
                  scan.countsIn(state),
                  picker.rejected(),
                  picker.picked().size(),
                  wanted));
    }

    void handOver(List<Hit> hits) {
      while (handed < hits.size() && !isEnough() && !control.isStopped()) {
        picker.offer(ask.on(scan.box().polynomialAt(hits.get(handed).index())), judge);
        handed++;
      }
    }
  }
}
