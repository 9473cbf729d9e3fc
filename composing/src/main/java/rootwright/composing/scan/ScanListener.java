package rootwright.composing.scan;

/** Is told how a scan gets on. Called by one thread at a time, after each finished task. */
@FunctionalInterface
public interface ScanListener {

  /**
   * The scan has come this far.
   *
   * @param state what can be written down to go on from here later
   */
  void reached(ScanState state);
}
