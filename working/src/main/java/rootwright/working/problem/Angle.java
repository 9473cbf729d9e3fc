package rootwright.working.problem;

import java.math.BigInteger;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;

/** Angles that are rational multiples of π, and the functions of angles that are known. */
public final class Angle {

  private static final Set<String> FUNCTIONS = Set.of("cos", "sin", "tan", "cot", "sec", "csc");

  private Angle() {}

  /** Whether a function of this name is one of an angle. */
  public static boolean isFunction(String name) {
    return FUNCTIONS.contains(name);
  }

  /** The angle of a formula such as {@code cos(2π/7)}, as a multiple of π. */
  public static Optional<Rational> argument(Formula.Application application) {
    return isFunction(application.function()) && application.arguments().size() == 1
        ? inPi(application.arguments().get(0))
        : Optional.empty();
  }

  /** q, if the formula is q·π for a rational number q. */
  public static Optional<Rational> inPi(Formula formula) {
    if (formula instanceof Formula.Name name) {
      return name.spelling().equals("π") ? Optional.of(Rational.ONE) : Optional.empty();
    } else if (formula instanceof Formula.Numeral numeral) {
      return numeral.value().isZero() ? Optional.of(Rational.ZERO) : Optional.empty();
    } else if (formula instanceof Formula.Negative negative) {
      return inPi(negative.of()).map(Rational::negate);
    } else if (formula instanceof Formula.Quotient quotient) {
      return inPi(quotient.over())
          .flatMap(
              over -> number(quotient.under()).filter(under -> !under.isZero()).map(over::over));
    } else if (formula instanceof Formula.Product product) {
      return product(product);
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream()
          .map(Angle::inPi)
          .reduce(Optional.of(Rational.ZERO), (a, b) -> a.flatMap(x -> b.map(x::plus)));
    }
    return Optional.empty();
  }

  /** q with whole turns taken off, 0 ≤ q < 2. */
  public static Rational withinOneTurn(Rational q) {
    return new Rational(q.numerator().mod(q.denominator().shiftLeft(1)), q.denominator());
  }

  /** The angle q·π as it is written. */
  public static Formula written(Rational q) {
    Formula pi = Formula.name("π");
    Rational size = q.absolute();
    Formula over =
        size.numerator().equals(BigInteger.ONE) ? pi : Formula.number(size.numerator()).times(pi);
    Formula angle =
        q.isZero()
            ? Formula.number(0)
            : q.isInteger() ? over : over.over(Formula.number(size.denominator()));
    return q.signum() < 0 ? new Formula.Negative(angle) : angle;
  }

  private static Optional<Rational> product(Formula.Product product) {
    Rational factor = Rational.ONE;
    Optional<Rational> angle = Optional.empty();
    for (Formula part : product.factors()) {
      Optional<Rational> number = number(part);
      if (number.isPresent()) {
        factor = factor.times(number.get());
      } else if (angle.isEmpty()) {
        angle = inPi(part);
        if (angle.isEmpty()) {
          return Optional.empty();
        }
      } else {
        return Optional.empty();
      }
    }
    Rational outside = factor;
    return angle.map(outside::times);
  }

  private static Optional<Rational> number(Formula formula) {
    if (formula instanceof Formula.Numeral numeral) {
      return Optional.of(numeral.value());
    } else if (formula instanceof Formula.Negative negative) {
      return number(negative.of()).map(Rational::negate);
    } else if (formula instanceof Formula.Quotient quotient) {
      return number(quotient.over())
          .flatMap(
              over -> number(quotient.under()).filter(under -> !under.isZero()).map(over::over));
    }
    return WholeNumber.of(formula).map(Rational::of);
  }

  /** How often q fits into whole turns: the least N with N·q·π a multiple of 2π. */
  public static BigInteger order(Rational q) {
    return q.over(Rational.TWO).denominator();
  }
}
