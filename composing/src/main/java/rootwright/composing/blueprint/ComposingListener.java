package rootwright.composing.blueprint;

/**
 * Is told how an order gets on. Called by one thread at a time, not always the same one, while the
 * others wait; a listener that takes long slows the scan.
 */
public interface ComposingListener {

  /** Hears nothing. */
  ComposingListener NOBODY =
      new ComposingListener() {
        @Override
        public void screened(Screened sofar) {}

        @Override
        public void found(Composed problem) {}
      };

  /** The scan has come this far. */
  void screened(Screened sofar);

  /** A problem passed everything and is part of the result, its options included. */
  void found(Composed problem);
}
