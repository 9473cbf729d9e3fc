package rootwright.composing.scan;

/** Why a scan ended. */
public enum Ending {
  /** Every candidate of the box was examined. */
  EXHAUSTED,
  /** As many candidates as were wanted are found. */
  ENOUGH,
  /** It was told to stop, and can be resumed from its state. */
  STOPPED
}
