package rootwright.algebra.notation;

/** How strongly the parts of a formula are bound together, weakest first. */
final class Binding {

  static final int LISTING = 5;
  static final int MODULO = 10;
  static final int RELATION = 20;
  static final int SUM = 30;

  /** What a minus at the front takes with it. */
  static final int SIGNED = 39;

  static final int PRODUCT = 40;

  /** What stands right of a sign of multiplication. */
  static final int FACTOR = 41;

  /** What stands below a stroke. */
  static final int DIVISOR = 42;

  static final int JUXTAPOSITION = 50;
  static final int POWER = 60;

  /** What a power is raised to. */
  static final int EXPONENT = 60;

  private Binding() {}
}
