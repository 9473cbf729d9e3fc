package rootwright.press.formula;

/** The two sizes in which fractions and large signs are set, as in TeX. */
public enum Style {
  /** In a line: small fractions, limits beside the sign. */
  TEXT,
  /** On a line of its own, or where a reader needs full-size fractions. */
  DISPLAY
}
