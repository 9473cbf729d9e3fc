package rootwright.desk.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.SomeFormulaCases;
import rootwright.algebra.number.Rational;

/**
 * A formula at a point, about as exact as a drawing needs. What has no real value there, or is no
 * number at all, is {@code NaN}.
 */
final class Sampled extends SomeFormulaCases<Double> {

  private static final Map<String, DoubleUnaryOperator> FUNCTIONS =
      Map.of(
          "sqrt", Math::sqrt,
          "cos", Math::cos,
          "sin", Math::sin,
          "tan", Math::tan,
          "cot", angle -> 1 / Math.tan(angle),
          "sec", angle -> 1 / Math.cos(angle),
          "csc", angle -> 1 / Math.sin(angle),
          "ln", Math::log,
          "exp", Math::exp);

  private final Map<String, Double> names;

  /** At these values of the names. */
  Sampled(Map<String, Double> names) {
    this.names = Map.copyOf(names);
  }

  @Override
  protected Double otherwise(Formula formula) {
    return Double.NaN;
  }

  /** A formula without names. */
  static double of(Formula formula) {
    return formula.choose(new Sampled(Map.of()));
  }

  /** A formula with one name. */
  static double of(Formula formula, String name, double value) {
    return formula.choose(new Sampled(Map.of(name, value)));
  }

  /** A fraction as a decimal. */
  static double of(Rational number) {
    return new BigDecimal(number.numerator())
        .divide(new BigDecimal(number.denominator()), MathContext.DECIMAL64)
        .doubleValue();
  }

  @Override
  public Double numeral(Formula.Numeral numeral) {
    return of(numeral.value());
  }

  @Override
  public Double name(Formula.Name name) {
    double otherwise =
        switch (name.spelling()) {
          case "pi", "π" -> Math.PI;
          case "e" -> Math.E;
          default -> Double.NaN;
        };
    return names.getOrDefault(name.spelling(), otherwise);
  }

  @Override
  public Double negative(Formula.Negative negative) {
    return -negative.of().choose(this);
  }

  @Override
  public Double sum(Formula.Sum sum) {
    return sum.terms().stream().mapToDouble(term -> term.choose(this)).sum();
  }

  @Override
  public Double product(Formula.Product product) {
    return product.factors().stream()
        .mapToDouble(factor -> factor.choose(this))
        .reduce(1, (one, other) -> one * other);
  }

  @Override
  public Double quotient(Formula.Quotient quotient) {
    return quotient.over().choose(this) / quotient.under().choose(this);
  }

  @Override
  public Double power(Formula.Power power) {
    return Math.pow(power.base().choose(this), power.exponent().choose(this));
  }

  @Override
  public Double radical(Formula.Radical radical) {
    double under = radical.radicand().choose(this);
    boolean odd = radical.index() % 2 == 1;
    return under < 0
        ? (odd ? -Math.pow(-under, 1.0 / radical.index()) : Double.NaN)
        : Math.pow(under, 1.0 / radical.index());
  }

  @Override
  public Double application(Formula.Application application) {
    double[] at =
        application.arguments().stream().mapToDouble(argument -> argument.choose(this)).toArray();
    if (application.function().equals("log") && at.length == 2) {
      return Math.log(at[0]) / Math.log(at[1]);
    }
    DoubleUnaryOperator function =
        FUNCTIONS.getOrDefault(application.function(), unknown -> Double.NaN);
    return at.length == 1 ? function.applyAsDouble(at[0]) : Double.NaN;
  }
}
