package rootwright.composing.blueprint;

/**
 * How many candidates that pass the scan are worked before an order is given up; part of what the
 * result depends on.
 *
 * @param atLeast how many at least, however few problems are wanted
 * @param forEach how many for every problem wanted
 */
public record Effort(int atLeast, int forEach) {

  /** For an order of a coach. */
  public static final Effort USUAL = new Effort(400, 40);

  /** Checks the numbers. */
  public Effort {
    if (atLeast < 1 || forEach < 1) {
      throw new IllegalArgumentException("no effort: %d, %d".formatted(atLeast, forEach));
    }
  }

  int forProblems(int many) {
    return Math.max(atLeast, forEach * many);
  }
}
