package rootwright.algebra.notation;

/** How the comparisons are written. */
final class Comparisons {

  private Comparisons() {}

  static String ascii(Formula.Comparison comparison) {
    return switch (comparison) {
      case EQUAL -> "=";
      case NOT_EQUAL -> "!=";
      case LESS -> "<";
      case AT_MOST -> "<=";
      case GREATER -> ">";
      case AT_LEAST -> ">=";
      case CONGRUENT -> "===";
    };
  }

  static String typeset(Formula.Comparison comparison) {
    return switch (comparison) {
      case EQUAL -> "=";
      case NOT_EQUAL -> "≠";
      case LESS -> "<";
      case AT_MOST -> "≤";
      case GREATER -> ">";
      case AT_LEAST -> "≥";
      case CONGRUENT -> "≡";
    };
  }
}
