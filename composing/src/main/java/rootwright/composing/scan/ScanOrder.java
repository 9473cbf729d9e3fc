package rootwright.composing.scan;

/** In which order the rows of a box are screened, which candidates are kept, and when it ends. */
public sealed interface ScanOrder {

  /** How many candidates are kept at most. */
  int kept();

  /**
   * Every candidate, in the order of the box; the first ones that pass are kept, all are counted.
   *
   * @param kept how many are kept at most
   */
  record Exhaustive(int kept) implements ScanOrder {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is negative
     */
    public Exhaustive {
      if (kept < 0) {
        throw new IllegalArgumentException("negative number of candidates: " + kept);
      }
    }
  }

  /**
   * The rows in an order drawn from a seed, until enough candidates are found. At most one is taken
   * from each row, because neighbours look alike; only if the whole box holds too few does a row
   * give a second, and so on.
   *
   * @param kept how many are wanted, at least 1
   * @param seed what the order is drawn from
   */
  record Seeded(int kept, long seed) implements ScanOrder {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is less than 1
     */
    public Seeded {
      if (kept < 1) {
        throw new IllegalArgumentException("number of candidates wanted is not positive: " + kept);
      }
    }
  }
}
