package rootwright.composing.pattern;

import java.util.List;
import java.util.SplittableRandom;

/** Numbers drawn by a seed: the same seed draws the same. Belongs to one draw of one statement. */
public final class Chance {

  private final SplittableRandom random;

  /** Chance that starts from a seed. */
  public Chance(long seed) {
    random = new SplittableRandom(seed);
  }

  /** A whole number from low to high, both included. */
  public int between(int low, int high) {
    return random.nextInt(low, high + 1);
  }

  /** A whole number from −size to size, 0 left out. */
  int nonZero(int size) {
    int drawn = between(1, 2 * size);
    return drawn <= size ? drawn : size - drawn;
  }

  /** Heads or tails. */
  boolean flip() {
    return random.nextBoolean();
  }

  /** One of several. */
  public <T> T oneOf(List<T> several) {
    return several.get(random.nextInt(several.size()));
  }

  /** One of several texts. */
  String oneOf(String... several) {
    return several[random.nextInt(several.length)];
  }
}
