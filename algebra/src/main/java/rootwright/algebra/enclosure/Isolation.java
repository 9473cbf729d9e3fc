package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.stop.Stop;

/**
 * The search for small disjoint discs round the roots of a squarefree polynomial. Hardware guesses
 * are judged first; those whose discs are not disjoint, or too large to contract, are improved at
 * twice the length, and so on; the others stay where they are.
 */
final class Isolation {

  private static final int HARDWARE_BITS = 53;

  /** Bits by which values are reckoned longer than the points they are taken at. */
  private static final int SPARE_BITS = 48;

  private final WholeCoefficients polynomial;
  private final Contraction contraction;
  private final List<Point> guesses;

  /** How many bits each guess was last reckoned with. */
  private final int[] lengths;

  private Isolation(BigInteger[] ascending) {
    polynomial = new WholeCoefficients(ascending);
    contraction = new Contraction(polynomial);
    guesses = new ArrayList<>(FirstGuesses.of(ascending));
    lengths = new int[guesses.size()];
    Arrays.fill(lengths, HARDWARE_BITS);
  }

  /**
   * A disc with radius at most 2^−bits·|centre| for each real root and for the upper one of each
   * pair.
   *
   * @param ascending whole coefficients of a squarefree polynomial, constant term first; neither
   *     the first nor the last is zero
   */
  static List<IsolatingDisc> of(BigInteger[] ascending, int bits) {
    return new Isolation(ascending).run(bits);
  }

  private List<IsolatingDisc> run(int bits) {
    for (int length = HARDWARE_BITS; ; length = Math.multiplyExact(length, 2)) {
      Stop.ifUnwanted();
      Mirroring mirroring = Mirroring.of(guesses);
      List<Optional<IsolatingDisc>> discs = proved(mirroring);
      List<IsolatingDisc> small = new ArrayList<>();
      boolean[] settled = new boolean[guesses.size()];
      for (int i = 0; i < discs.size(); i++) {
        Optional<IsolatingDisc> shrunk =
            discs.get(i).flatMap(disc -> contraction.shrunk(disc, bits));
        if (shrunk.isPresent()) {
          small.add(shrunk.get());
          mirroring.sources().get(i).forEach(source -> settled[source] = true);
        }
      }
      if (small.size() == discs.size()) {
        return small;
      }
      SimultaneousIteration.improve(polynomial, guesses, settled, 2 * length);
      for (int i = 0; i < settled.length; i++) {
        lengths[i] = settled[i] ? lengths[i] : 2 * length;
      }
    }
  }

  private List<Optional<IsolatingDisc>> proved(Mirroring mirroring) {
    List<Point> points = mirroring.points();
    List<Evaluation> values = new ArrayList<>(points.size());
    for (int i = 0; i < points.size(); i++) {
      int length = lengths[mirroring.sources().get(i).get(0)];
      int bits = length == HARDWARE_BITS ? WholeCoefficients.WORD_BITS : length + SPARE_BITS;
      values.add(polynomial.at(points.get(i), bits));
    }
    return IsolatingDisc.around(polynomial, points, values);
  }
}
