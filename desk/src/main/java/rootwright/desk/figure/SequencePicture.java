package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;

/**
 * The power sums S_0, S_1, … of a polynomial, or another sequence, as a picture shows them.
 *
 * @param name the letter of the sequence
 * @param sums in order
 */
public record SequencePicture(String name, List<PicturedSum> sums) {

  private static final int FEWEST = 5;
  private static final int MOST = 10;
  private static final int FAR = 1_000_000;
  private static final Set<String> LETTERS = Set.of("S", "p");

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
    return new SequencePicture("S", sums);
  }

  /**
   * The sums round the one that an ask names by its index, near or far, also below 0.
   *
   * @param polynomial not constant
   * @param ask what was asked for
   * @param all whether the ask is about the whole sequence
   */
  static Optional<SequencePicture> about(Polynomial polynomial, Formula ask, boolean all) {
    if (all) {
      return Optional.of(of(polynomial, Integer.MAX_VALUE));
    }
    OptionalInt index = index(ask);
    if (index.isEmpty()) {
      return Optional.empty();
    }
    int asked = index.getAsInt();
    if (asked > 0) {
      return Optional.of(of(polynomial, asked));
    }
    boolean drawable = asked < 0 && asked >= -MOST && !polynomial.coefficient(0).isZero();
    return drawable ? Optional.of(from(polynomial, asked)) : Optional.empty();
  }

  /** From a sum below 0, which is one of the reciprocals of the roots, to the first ones above. */
  private static SequencePicture from(Polynomial polynomial, int asked) {
    List<Rational> below = PowerSums.of(polynomial.reversed()).upTo(-asked);
    List<Rational> above = PowerSums.of(polynomial).upTo(FEWEST);
    List<PicturedSum> sums = new ArrayList<>();
    for (int k = asked; k <= FEWEST; k++) {
      Rational value = k < 0 ? below.get(-k) : above.get(k);
      sums.add(new PicturedSum(k, value.toString(), k == asked));
    }
    return new SequencePicture("S", sums);
  }

  private static OptionalInt index(Formula ask) {
    if (ask instanceof Formula.Family family && LETTERS.contains(family.letter())) {
      double index = Sampled.of(family.index());
      if (index == Math.rint(index)) {
        return OptionalInt.of((int) Math.max(-FAR, Math.min(FAR, index)));
      }
    }
    return OptionalInt.empty();
  }

  /** The members of a sequence, which are given with their indices. */
  static SequencePicture of(String name, Map<Integer, Rational> members) {
    List<PicturedSum> sums = new ArrayList<>();
    members.forEach((index, member) -> sums.add(new PicturedSum(index, member.toString(), false)));
    return new SequencePicture(name, sums);
  }
}
