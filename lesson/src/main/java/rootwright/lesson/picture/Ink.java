package rootwright.lesson.picture;

/** What a mark is for, with its colour; colour never says anything alone. */
public enum Ink {
  /** Text and formulas. */
  INK("#1c1b19"),
  /** Reasons and what stood there before. */
  QUIET("#57534c"),
  /** What is new in a line; also underlined. */
  FRESH("#0072b2"),
  /** The stroke through what goes. */
  STRUCK("#a83e00"),
  /** The bar beside a warning. */
  WARNING("#a83e00"),
  /** Thin lines. */
  RULE("#b9b2a4"),
  /** The board. */
  PAPER("#fdfbf5");

  private final String colour;

  Ink(String colour) {
    this.colour = colour;
  }

  /** The colour as in a style sheet. */
  public String colour() {
    return colour;
  }
}
