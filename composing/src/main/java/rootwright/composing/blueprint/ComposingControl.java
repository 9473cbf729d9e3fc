package rootwright.composing.blueprint;

import rootwright.composing.scan.ScanControl;

/**
 * Who does the work of an order, who may stop it, who is told and where its progress is kept. None
 * of it changes the result of an order that is not stopped.
 *
 * @param scan who does the work of the scans, and who may stop them
 * @param listener who is told
 * @param book where progress is kept
 */
public record ComposingControl(ScanControl scan, ComposingListener listener, ScanBook book) {

  /** Nobody is told and nothing kept. */
  public static ComposingControl of(ScanControl scan) {
    return new ComposingControl(scan, ComposingListener.NOBODY, ScanBook.NONE);
  }

  /** The same with another listener. */
  public ComposingControl telling(ComposingListener other) {
    return new ComposingControl(scan, other, book);
  }

  /** The same keeping its progress elsewhere. */
  public ComposingControl keepingIn(ScanBook other) {
    return new ComposingControl(scan, listener, other);
  }

  /** Whether somebody wants it to end. */
  boolean isStopped() {
    return scan.stopped().getAsBoolean();
  }
}
