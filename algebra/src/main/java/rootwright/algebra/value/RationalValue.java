package rootwright.algebra.value;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Decimals;
import rootwright.algebra.enclosure.Precision;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** A rational number as an exact value. */
public record RationalValue(Rational number) implements ExactValue {

  /** A whole number. */
  public static RationalValue of(long number) {
    return new RationalValue(Rational.of(number));
  }

  @Override
  public boolean isReal() {
    return true;
  }

  @Override
  public Formula toFormula() {
    return Formula.number(number);
  }

  @Override
  public Polynomial minimalPolynomial() {
    return Polynomial.ofAscending(List.of(number.negate(), Rational.ONE)).primitive();
  }

  @Override
  public ComplexBall enclosure(int digits) {
    return ComplexBall.of(number, Precision.bits(digits));
  }

  @Override
  public Optional<String> decimal(int digits) {
    return number.isInteger()
        ? Optional.empty()
        : Optional.of(Decimals.significant(number, digits));
  }

  @Override
  public String toString() {
    return number.toString();
  }
}
