package rootwright.working.step;

/**
 * The one thought behind a line of a working.
 *
 * <p>Ideas are what a route costs beyond its lines, what a lesson teaches, and where a slip lurks:
 * a slip is shown beside the first line that has its idea.
 */
public enum Idea {
  READ_COEFFICIENTS("read e₁, e₂, … off the coefficients", true),
  ARITHMETIC("work the numbers out", true),
  STATE("say what is wanted in other words", true),
  EXPAND("multiply out and count the terms", false),
  BUILD("build the ask from products of e₁, e₂, …", false),
  NEWTON("Newton's identities", false),
  VANISHING("P(r) = 0 for every root", false),
  REDUCE("replace high powers by lower ones", false),
  SUM_OVER_ROOTS("add up over all roots", false),
  RECURRENCE("the power sums follow a recurrence", false),
  EVALUATE("put a number into P", false),
  LOG_DERIVATIVE("P′/P is the sum of 1/(x − r)", false),
  SHIFT("move the roots", false),
  REVERSE("turn the coefficients round", false),
  SCALE("stretch the roots", false),
  SQUARE_ROOTS("pass to the squares of the roots", false),
  COMMON_DENOMINATOR("one common denominator", false),
  PARTIAL_FRACTIONS("split into partial fractions", false),
  INTERPOLATE("interpolate at the roots", false),
  RATIONAL_ROOT("split off a rational root", false),
  SUBSTITUTE("give a name to a repeated quantity", false),
  CONJUGATE("pair what belongs together", false),
  SUM_AND_DIFFERENCE("find the sum and the difference of two values", false),
  DISCRIMINANT("the discriminant", false),
  MULTIPLE_ANGLE("a multiple of the angle is known", false),
  ELIMINATE("eliminate", false),
  CASES("go through the cases", false),
  DIVISORS("only divisors can occur", false),
  INEQUALITY("an inequality and when it is an equality", false),
  DOMAIN("keep only what the statement allows", false);

  private final String words;
  private final boolean routine;

  Idea(String words, boolean routine) {
    this.words = words;
    this.routine = routine;
  }

  /** The idea in a few words, as a margin would say it. */
  public String words() {
    return words;
  }

  /** Whether every student at this level does it without being told, so that it costs nothing. */
  public boolean routine() {
    return routine;
  }
}
