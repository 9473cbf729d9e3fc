package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;

/** Wrong turnings on the way to a member of a sequence. */
final class RecurrenceSlips {

  /** Power sums and wrong signs are followed up to this index. */
  private static final int HIGHEST = 2000;

  private RecurrenceSlips() {}

  /** Those that lead to another member. */
  static List<Solution.WrongTurning> of(Recurrence sequence, int wanted, Answer answer) {
    List<Solution.WrongTurning> slips = new ArrayList<>();
    int place = wanted - sequence.start();
    List<Rational> members = sequence.members(place + 2);
    shifted(slips, Answer.exact(members.get(place + 1)));
    if (place > 0) {
      shifted(slips, Answer.exact(members.get(place - 1)));
    }
    if (place <= HIGHEST) {
      List<Rational> turned = sequence.coefficients().stream().map(Rational::negate).toList();
      Recurrence wrong =
          new Recurrence(
              sequence.letter(),
              sequence.index(),
              turned,
              sequence.constant(),
              sequence.start(),
              sequence.first());
      slips.add(
          new Solution.WrongTurning(
              "reduction-sign",
              "A coefficient changes its sign when it is brought to the other side.",
              Answer.exact(wrong.members(place + 1).get(place)),
              Idea.RECURRENCE,
              20));
      Polynomial p = sequence.characteristic();
      if (wanted >= 0 && p.degree() > 1) {
        slips.add(
            new Solution.WrongTurning(
                "taken-for-power-sums",
                "It is a sequence of power sums only if its first members are those.",
                Answer.exact(PowerSums.of(p).value(wanted)),
                Idea.RECURRENCE,
                20));
      }
    }
    slips.removeIf(slip -> slip.value().equals(answer));
    return slips;
  }

  /** Those that lead to another remainder. */
  static List<Solution.WrongTurning> ofRemainder(
      Residues residues, BigInteger wanted, Answer answer) {
    List<Solution.WrongTurning> slips = new ArrayList<>();
    BigInteger first = BigInteger.valueOf(residues.sequence().start());
    for (int by : new int[] {1, -1}) {
      BigInteger at = wanted.add(BigInteger.valueOf(by));
      if (at.compareTo(first) >= 0) {
        shifted(slips, new Answer.Residue(residues.byPowers(at), residues.modulus()));
      }
    }
    slips.removeIf(slip -> slip.value().equals(answer));
    return slips;
  }

  private static void shifted(List<Solution.WrongTurning> slips, Answer value) {
    slips.add(
        new Solution.WrongTurning(
            "index-off-by-one",
            "The counting begins with the index of the first given member.",
            value,
            Idea.RECURRENCE,
            30));
  }
}
