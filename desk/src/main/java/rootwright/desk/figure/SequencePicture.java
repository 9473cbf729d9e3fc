package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;

/**
 * The power sums S_0, S_1, … of a polynomial as a picture shows them.
 *
 * @param sums in order
 */
public record SequencePicture(List<PicturedSum> sums) {

  private static final int FEWEST = 5;
  private static final int MOST = 10;

  public SequencePicture {
    sums = List.copyOf(sums);
  }

  /**
   * The first sums, as far as the asked one if that is near enough to be drawn.
   *
   * @param polynomial not constant
   * @param asked the exponent that was asked for
   */
  public static SequencePicture of(Polynomial polynomial, int asked) {
    int last = Math.max(FEWEST, Math.min(asked, MOST));
    List<Rational> values = PowerSums.of(polynomial).upTo(last);
    List<PicturedSum> sums = new ArrayList<>();
    for (int k = 0; k <= last; k++) {
      sums.add(new PicturedSum(k, values.get(k).toString(), k == asked));
    }
    return new SequencePicture(sums);
  }
}
