package rootwright.composing.scan;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A look at a scan: at every candidate if they are few enough, else at rows drawn by a seed until
 * enough candidates were looked at. The same on any number of threads.
 *
 * @param result what was found
 * @param isWhole whether every candidate was looked at, so that what was not found is not there
 */
record Look(ScanResult result, boolean isWhole) {

  /**
   * Looks.
   *
   * @param budget how many candidates are looked at in a box that has more
   * @return empty if somebody stopped it
   */
  static Optional<Look> at(Scan scan, long budget, ScanControl control) {
    if (scan.box().candidates() <= budget) {
      return looked(scan.run(control), true);
    }
    AtomicLong examined = new AtomicLong();
    Scan drawn = scan.with(new ScanOrder.Seeded(Math.max(1, scan.order().kept()), 0));
    ScanResult result =
        drawn.run(
            control
                .telling(state -> examined.set(state.examined()))
                .endingWhen(() -> examined.get() >= budget));
    return looked(result, false);
  }

  private static Optional<Look> looked(ScanResult result, boolean whole) {
    return result.ending() == Ending.STOPPED
        ? Optional.empty()
        : Optional.of(new Look(result, whole && result.isExhausted()));
  }

  /** A relaxation as it was found: as it is if every candidate was looked at. */
  Relaxation found(Relaxation relaxation) {
    return isWhole
        ? relaxation
        : new Relaxation.InSample(relaxation, result.examined(), result.scan().box().candidates());
  }
}
