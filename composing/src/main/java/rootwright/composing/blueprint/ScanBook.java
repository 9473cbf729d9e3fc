package rootwright.composing.blueprint;

import java.util.Optional;
import rootwright.composing.scan.ScanState;

/**
 * Where the scans of an order write down how far they are, and look up how far they were when the
 * order was stopped. It changes how long an order takes, not what comes of it.
 */
public interface ScanBook {

  /** Keeps nothing. */
  ScanBook NONE =
      new ScanBook() {
        @Override
        public Optional<ScanState> stateOf(String identity) {
          return Optional.empty();
        }

        @Override
        public void keep(ScanState state) {}
      };

  /** How far the scan with this identity was. */
  Optional<ScanState> stateOf(String identity);

  /** The scan named in the state has come this far; called after each task. */
  void keep(ScanState state);
}
