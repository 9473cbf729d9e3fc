package rootwright.working.slip;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSumResidue;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.WholeNumber;
import rootwright.working.step.Idea;

/** The slips on the remainder of a power sum; a new one registers itself here. Common practice. */
public final class ResidueSlips {

  /** On S_k mod m. */
  public static final List<Turning> ALL =
      List.of(
          new OnResidue(
              "index-off-by-one",
              "Number the remainders from S₀ on.",
              Idea.RECURRENCE,
              10,
              ResidueSlips::neighbours),
          new OnResidue(
              "square-of-the-sum",
              "The sum of powers is not the power of the sum.",
              Idea.SUM_OVER_ROOTS,
              20,
              ResidueSlips::powerOfTheSum),
          new OnResidue(
              "p0-is-1",
              "S₀ counts the roots; the table begins with it and not with 1.",
              Idea.RECURRENCE,
              5,
              ResidueSlips::startingAtOne));

  /** Farthest index up to which a table is written. */
  private static final int FARTHEST = 5_000;

  private ResidueSlips() {}

  /** S_k mod m for whole coefficients and lead 1. */
  private record Ask(Polynomial polynomial, BigInteger index, BigInteger modulus) {

    static Optional<Ask> of(Asked asked) {
      Polynomial p = asked.problem().polynomial();
      if (!(asked.problem().ask() instanceof Formula.Modulo modulo)
          || !(modulo.of() instanceof Formula.Family family)
          || !(family.letter().equals("S") || family.letter().equals("p"))
          || !p.lead().isOne()
          || !p.denominator().equals(BigInteger.ONE)) {
        return Optional.empty();
      }
      Optional<BigInteger> index = WholeNumber.of(family.index()).filter(k -> k.signum() > 0);
      return WholeNumber.of(modulo.modulus())
          .filter(m -> m.compareTo(BigInteger.ONE) > 0)
          .flatMap(m -> index.map(k -> new Ask(p, k, m)));
    }
  }

  private record OnResidue(
      String name, String text, Idea spot, int weight, Function<Ask, List<BigInteger>> wrong)
      implements Turning {
    @Override
    public List<Answer> answers(Asked asked) {
      List<Answer> all = new ArrayList<>();
      Ask.of(asked)
          .ifPresent(
              ask ->
                  wrong
                      .apply(ask)
                      .forEach(
                          value ->
                              all.add(
                                  new Answer.Residue(value.mod(ask.modulus()), ask.modulus()))));
      return all;
    }
  }

  private static List<BigInteger> neighbours(Ask ask) {
    List<BigInteger> values = new ArrayList<>();
    for (BigInteger k :
        List.of(ask.index().subtract(BigInteger.ONE), ask.index().add(BigInteger.ONE))) {
      if (k.signum() > 0
          && PowerSums.of(ask.polynomial()).modulo(k, ask.modulus())
              instanceof PowerSumResidue.Residue residue) {
        values.add(residue.value());
      }
    }
    return values;
  }

  private static List<BigInteger> powerOfTheSum(Ask ask) {
    BigInteger sum = ask.polynomial().numerator(ask.polynomial().degree() - 1).negate();
    return List.of(sum.mod(ask.modulus()).modPow(ask.index(), ask.modulus()));
  }

  /** The recurrence from S₀ = 1 and the right S₁, …, S_(n−1). */
  private static List<BigInteger> startingAtOne(Ask ask) {
    int n = ask.polynomial().degree();
    if (ask.index().compareTo(BigInteger.valueOf(FARTHEST)) > 0
        || ask.index().compareTo(BigInteger.valueOf(n)) < 0) {
      return List.of();
    }
    List<BigInteger> table = new ArrayList<>(List.of(BigInteger.ONE));
    for (int k = 1; k < n; k++) {
      Rational sum = PowerSums.of(ask.polynomial()).value(k);
      table.add(sum.numerator().mod(ask.modulus()));
    }
    for (int k = n; k <= ask.index().intValueExact(); k++) {
      BigInteger next = BigInteger.ZERO;
      for (int j = 1; j <= n; j++) {
        next = next.subtract(ask.polynomial().numerator(n - j).multiply(table.get(k - j)));
      }
      table.add(next.mod(ask.modulus()));
    }
    return List.of(table.get(table.size() - 1));
  }
}
