package rootwright.composing.pattern;

/** What sort of thing the answers of a pattern are, which decides what can be wished of them. */
public enum AnswerSort {
  /** Numbers that are whole often enough; the usual wish for whole numbers holds. */
  WHOLE("whole numbers", true),
  /** Rational numbers, seldom whole. */
  FRACTIONS("fractions", true),
  /** Numbers that may hold roots or logarithms. */
  SURDS("numbers with roots or logarithms in them", false),
  /** Polynomials. */
  POLYNOMIALS("polynomials", false),
  /** Formulas in letters. */
  FUNCTIONS("formulas in letters", false),
  /** Values of several letters or numbers at once. */
  SEVERAL("values of several letters at once", false),
  /** Ranges of a letter. */
  RANGES("ranges", false),
  /** Yes or no. */
  TRUTHS("yes or no", false);

  private final String words;
  private final boolean number;

  AnswerSort(String words, boolean number) {
    this.words = words;
    this.number = number;
  }

  /** The sort in a few words. */
  public String words() {
    return words;
  }

  /** Whether a range or one number can be wished. */
  public boolean isNumber() {
    return number;
  }
}
