package rootwright.working.gate;

import java.math.BigInteger;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;
import rootwright.working.problem.WholeNumber;

/** The degree a polynomial seems to have as it is written, before anything cancels. */
final class FormalDegree {

  private final String unknown;

  FormalDegree(String unknown) {
    this.unknown = unknown;
  }

  /** The degree by the form alone: 3 for {@code 0x^3 + x}. */
  BigInteger of(Formula formula) {
    if (formula instanceof Formula.Name name) {
      return name.spelling().equals(unknown) ? BigInteger.ONE : BigInteger.ZERO;
    } else if (formula instanceof Formula.Power power) {
      return WholeNumber.of(power.exponent())
          .map(exponent -> of(power.base()).multiply(exponent))
          .orElse(BigInteger.ZERO);
    } else if (formula instanceof Formula.Quotient quotient) {
      return of(quotient.over()).subtract(of(quotient.under()));
    }
    Stream<BigInteger> parts = formula.parts().stream().map(this::of);
    return formula instanceof Formula.Product
        ? parts.reduce(BigInteger.ZERO, BigInteger::add)
        : parts.reduce(BigInteger.ZERO, BigInteger::max);
  }
}
