package rootwright.working.clothing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** An equation in powers b^x, (b²)^x, …: a polynomial in u = b^x, which must be positive. */
final class ExponentialEquation {

  private static final String U = "u";

  private final String unknown;
  private final int base;

  private ExponentialEquation(String unknown, int base) {
    this.unknown = unknown;
    this.base = base;
  }

  /** The equation left = 0 as a polynomial; empty if it has another form. */
  static Optional<Undressed> of(Formula left, String unknown) {
    List<Integer> bases = new ArrayList<>();
    collect(left, unknown, bases);
    Optional<Integer> base = bases.stream().min(Integer::compare).filter(b -> b > 1);
    if (base.isEmpty()) {
      return Optional.empty();
    }
    Optional<Polynomial> polynomial =
        new ExponentialEquation(unknown, base.get()).value(left).filter(p -> p.degree() > 0);
    return polynomial.map(p -> undressed(p.primitive(), base.get(), unknown));
  }

  private static void collect(Formula formula, String unknown, List<Integer> bases) {
    if (formula instanceof Formula.Power power
        && power.exponent().contains(part -> part.equals(Formula.name(unknown)))) {
      bases.add(
          power.base() instanceof Formula.Numeral numeral
                  && numeral.value().isInteger()
                  && numeral.value().numerator().bitLength() < 20
              ? numeral.value().intValueExact()
              : 0);
    }
    formula.parts().forEach(part -> collect(part, unknown, bases));
  }

  private static Undressed undressed(Polynomial polynomial, int base, String unknown) {
    Formula power = new Formula.Power(Formula.number(base), Formula.name(unknown));
    List<Step> lines = new ArrayList<>();
    lines.add(
        Step.argument(
            Idea.SUBSTITUTE,
            "give the power a name; it is positive for every real " + unknown,
            Formula.equation(Formula.name(U), power)));
    lines.add(
        Step.argument(
            Idea.SUBSTITUTE,
            "the equation in " + U,
            Undressed.zero(PolynomialFormula.of(polynomial, U))));
    List<ExactValue> kept = new ArrayList<>();
    List<Undressed.Rejected> rejected = new ArrayList<>();
    for (ExactRoot root : ExactValues.rootsOf(polynomial)) {
      ExactValue value = root.value();
      if (!value.isReal()) {
        rejected.add(new Undressed.Rejected(value, "it is not real"));
      } else if (ExactValues.compareReal(value, RationalValue.of(0)) <= 0) {
        rejected.add(new Undressed.Rejected(value, "a power of %d is positive".formatted(base)));
      } else {
        kept.add(value);
      }
    }
    return new Undressed(polynomial, U, lines, kept, rejected, base);
  }

  private Optional<Polynomial> value(Formula formula) {
    if (formula instanceof Formula.Numeral numeral) {
      return Optional.of(Polynomial.constant(numeral.value()));
    } else if (formula instanceof Formula.Negative negative) {
      return value(negative.of()).map(Polynomial::negate);
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream()
          .map(this::value)
          .reduce(Optional.of(Polynomial.ZERO), (a, b) -> a.flatMap(x -> b.map(x::plus)));
    } else if (formula instanceof Formula.Product product) {
      return product.factors().stream()
          .map(this::value)
          .reduce(Optional.of(Polynomial.ONE), (a, b) -> a.flatMap(x -> b.map(x::times)));
    } else if (formula instanceof Formula.Power power
        && power.base() instanceof Formula.Numeral numeral) {
      return power(numeral.value(), power.exponent());
    }
    return Optional.empty();
  }

  /** (b^j)^(mx + k) = b^(jk)·u^(jm). */
  private Optional<Polynomial> power(Rational number, Formula exponent) {
    int j = 0;
    BigInteger rest = number.numerator();
    BigInteger b = BigInteger.valueOf(base);
    while (rest.signum() > 0 && rest.mod(b).signum() == 0 && !rest.equals(BigInteger.ONE)) {
      rest = rest.divide(b);
      j++;
    }
    if (!number.isInteger() || !rest.equals(BigInteger.ONE)) {
      return Optional.empty();
    }
    try {
      Polynomial line = FormulaExpansion.polynomial(exponent, unknown);
      Rational m = line.coefficient(1).times(j);
      Rational k = line.coefficient(0).times(j);
      boolean fits =
          line.degree() <= 1
              && m.isInteger()
              && k.isInteger()
              && m.signum() >= 0
              && m.compareTo(Rational.of(12)) <= 0
              && k.absolute().compareTo(Rational.of(60)) <= 0;
      return fits
          ? Optional.of(
              Polynomial.monomial(Rational.of(base).power(k.intValueExact()), m.intValueExact()))
          : Optional.empty();
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }
}
