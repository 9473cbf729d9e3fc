package rootwright.working.ask;

import java.math.BigInteger;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;
import rootwright.working.problem.WholeNumber;

/**
 * How far out a power may lie to be written out exactly. A residue has no such limit: S_(10^18) mod
 * m is worked whatever m is.
 */
public final class AskLimits {

  /** Exponent times degree times bits of the coefficients, for powers of one root. */
  private static final long MOST_BITS = 400_000L;

  /** The same for powers of an expression in several roots, which has many values to tell apart. */
  private static final long MOST_BITS_OF_SEVERAL = 1_000L;

  private final Problem problem;
  private final long bits;

  private AskLimits(Problem problem) {
    this.problem = problem;
    Polynomial primitive = problem.polynomial().primitive();
    long longest = 1;
    for (int k = 0; k <= primitive.degree(); k++) {
      longest = Math.max(longest, primitive.coefficient(k).numerator().bitLength());
    }
    bits = longest;
  }

  /**
   * Refuses powers whose value would be too long to write.
   *
   * @throws UnreadableException if there is one, naming it
   */
  public static void require(Problem problem, String text) throws UnreadableException {
    Optional<Formula> beyond = new AskLimits(problem).beyond(problem.ask());
    if (beyond.isPresent()) {
      String part = PlainWriter.write(beyond.get());
      throw new UnreadableException(
          new Refusal(
              "too-large",
              "The value of %s has too many digits to write out.".formatted(shortened(part)),
              text,
              0,
              "a smaller exponent, or a residue",
              beyond.get() instanceof Formula.Family ? part + " mod 1000" : ""));
    }
  }

  private Optional<Formula> beyond(Formula formula) {
    if (formula instanceof Formula.Modulo modulo && modulo.of() instanceof Formula.Family) {
      return Optional.empty();
    } else if ((formula instanceof Formula.Family family && isTooFar(family))
        || (formula instanceof Formula.Power power && isTooHigh(power))) {
      return Optional.of(formula);
    }
    return formula.parts().stream().map(this::beyond).flatMap(Optional::stream).findFirst();
  }

  private boolean isTooFar(Formula.Family family) {
    return (family.letter().equals("S") || family.letter().equals("p"))
        && WholeNumber.of(family.index()).filter(k -> exceeds(k, MOST_BITS)).isPresent();
  }

  private boolean isTooHigh(Formula.Power power) {
    boolean ofOne =
        power.base() instanceof Formula.Numeral numeral && numeral.value().absolute().isOne();
    long most = rootsIn(power.base()) > 1 ? MOST_BITS_OF_SEVERAL : MOST_BITS;
    return !ofOne && WholeNumber.of(power.exponent()).filter(k -> exceeds(k, most)).isPresent();
  }

  private long rootsIn(Formula formula) {
    return problem.roots().stream()
        .filter(
            root ->
                formula.contains(
                    part -> part instanceof Formula.Name name && name.spelling().equals(root)))
        .count();
  }

  /** The bits of the coefficients bound how fast the powers of the roots grow. */
  private boolean exceeds(BigInteger exponent, long most) {
    return exponent
            .abs()
            .multiply(BigInteger.valueOf(bits * problem.degree()))
            .compareTo(BigInteger.valueOf(most))
        > 0;
  }

  private static String shortened(String part) {
    return part.length() > 40 ? part.substring(0, 36) + "…" : part;
  }
}
