package rootwright.working.surd;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSum;
import rootwright.algebra.roots.PowerSumResidue;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/** The wrong turnings on the way to a whole part. */
final class FloorSlips {

  static final List<SlipOn<Turn>> ALL =
      List.of(new FloorForgotten(), new IndexOff(), new ParityForgotten());

  private FloorSlips() {}

  /**
   * What the slips are taken on.
   *
   * @param shift what is rightly added to the power sum
   */
  record Turn(FloorAsk ask, ConjugatePair pair, int shift) {

    List<Answer> answer(BigInteger index, int added) {
      PowerSums sums = PowerSums.of(pair.polynomial());
      if (ask.modulus().isPresent()) {
        BigInteger m = ask.modulus().get();
        return sums.modulo(index, m) instanceof PowerSumResidue.Residue residue
            ? List.of(new Answer.Residue(residue.value().add(BigInteger.valueOf(added)).mod(m), m))
            : List.of();
      }
      return sums.exact(index) instanceof PowerSum.Exact exact
          ? List.of(Answer.exact(exact.value().plus(Rational.of(added))))
          : List.of();
    }

    BigInteger index() {
      return pair.index(ask.exponent());
    }
  }

  /** The power sum given for its whole part. Common practice. */
  private record FloorForgotten() implements SlipOn<Turn> {
    @Override
    public String name() {
      return "floor-forgotten";
    }

    @Override
    public String text() {
      return "The whole number is the sum of both powers; take off what the conjugate adds.";
    }

    @Override
    public Idea spot() {
      return Idea.DOMAIN;
    }

    @Override
    public int weight() {
      return 25;
    }

    @Override
    public List<Answer> answers(Turn turn) {
      return turn.answer(turn.index(), 0);
    }
  }

  /** One place too early or too late in the recurrence. Common practice. */
  private record IndexOff() implements SlipOn<Turn> {
    @Override
    public String name() {
      return "index-off-by-one";
    }

    @Override
    public String text() {
      return "Number the rows of the table from S₀ = 2 on.";
    }

    @Override
    public Idea spot() {
      return Idea.RECURRENCE;
    }

    @Override
    public int weight() {
      return 12;
    }

    @Override
    public List<Answer> answers(Turn turn) {
      List<Answer> answers =
          new ArrayList<>(turn.answer(turn.index().subtract(BigInteger.ONE), turn.shift()));
      answers.addAll(turn.answer(turn.index().add(BigInteger.ONE), turn.shift()));
      return answers;
    }
  }

  /** The conjugate's power taken for positive although it is not, or the reverse. */
  private record ParityForgotten() implements SlipOn<Turn> {
    @Override
    public String name() {
      return "sign-of-the-conjugate";
    }

    @Override
    public String text() {
      return "A negative conjugate has negative odd powers: look at the exponent first.";
    }

    @Override
    public Idea spot() {
      return Idea.INEQUALITY;
    }

    @Override
    public int weight() {
      return 15;
    }

    @Override
    public List<Answer> answers(Turn turn) {
      if (turn.pair().conjugate().signum() > 0) {
        return List.of();
      }
      int other = turn.ask().up() ? 1 - turn.shift() : -1 - turn.shift();
      return turn.answer(turn.index(), other);
    }
  }
}
