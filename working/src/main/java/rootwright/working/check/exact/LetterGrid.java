package rootwright.working.check.exact;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rootwright.algebra.number.Rational;
import rootwright.working.check.Verdict;

/**
 * A claim looked at on a grid of whole numbers put for its letters. A polynomial of degree at most
 * d_i in the i-th letter and of degree at most d in all together that is zero on a grid of d_i + 1
 * numbers for each letter, or only where their places on the grid have a sum of at most d, is zero.
 */
final class LetterGrid {

  /** Most points at which a claim is looked at. */
  private static final long MOST_POINTS = 4_000;

  /** How often a grid with a pole on it is moved elsewhere. */
  private static final int MOST_MOVES = 12;

  private final List<String> letters;
  private final int[] degrees;
  private final int total;

  /** A grid for letters in which degrees are bounded so, one by one and together. */
  LetterGrid(List<String> letters, int total, int... degrees) {
    this.letters = letters;
    this.degrees = degrees.clone();
    this.total = total;
    if (points() > MOST_POINTS) {
      throw Unevaluable.tooLarge("the degree in the letters is too high to be compared");
    }
  }

  private long points() {
    long[] withSum = new long[total + 1];
    withSum[0] = 1;
    for (int degree : degrees) {
      long[] next = new long[total + 1];
      for (int sum = 0; sum <= total; sum++) {
        for (int k = 0; k <= Math.min(degree, sum); k++) {
          next[sum] = Math.min(next[sum] + withSum[sum - k], MOST_POINTS + 1);
        }
      }
      withSum = next;
    }
    return Arrays.stream(withSum).sum();
  }

  /**
   * Confirmed if the claim is confirmed everywhere on a grid.
   *
   * @param claim what is said at a point; empty where the claim has no meaning there, which moves
   *     the grid
   */
  Verdict everywhere(String method, Function<Map<String, Rational>, Optional<Verdict>> claim) {
    for (int move = 0; move < MOST_MOVES; move++) {
      int[] point = new int[degrees.length];
      boolean pole = false;
      do {
        Optional<Verdict> verdict = claim.apply(numbers(point, move));
        if (verdict.isEmpty()) {
          pole = true;
          break;
        } else if (!verdict.get().isConfirmed()) {
          return verdict.get();
        }
      } while (advance(point));
      if (!pole) {
        return Verdict.confirmed(method);
      }
    }
    return new Verdict.Undecided("a denominator or the lead coefficient is zero too often");
  }

  private Map<String, Rational> numbers(int[] point, int move) {
    Map<String, Rational> numbers = new HashMap<>();
    for (int k = 0; k < point.length; k++) {
      // Far apart, so that the letters do not meet by accident; small, so that numbers stay short.
      numbers.put(letters.get(k), Rational.of(point[k] + 7L + 41L * k + 97L * move * (k + 1)));
    }
    return numbers;
  }

  private boolean advance(int[] point) {
    for (int k = 0; k < point.length; k++) {
      if (point[k] < degrees[k] && Arrays.stream(point).sum() < total) {
        point[k]++;
        return true;
      }
      point[k] = 0;
    }
    return false;
  }
}
