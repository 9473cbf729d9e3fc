package rootwright.working.letters;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.SomeFormulaCases;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.problem.WholeNumber;

/** The value of a formula as a function of the roots and the letters. */
final class LetteredEvaluation extends SomeFormulaCases<RationalFunction> {

  private static final int HIGHEST_POWER = 60;

  private final LetteredRoots roots;
  private final List<String> names;
  private final List<String> letters;
  private final LetteredPolynomial polynomial;

  /**
   * @param names of the roots
   * @param polynomial what P is, applied to something
   */
  LetteredEvaluation(
      LetteredRoots roots,
      List<String> names,
      List<String> letters,
      LetteredPolynomial polynomial) {
    this.roots = roots;
    this.names = names;
    this.letters = letters;
    this.polynomial = polynomial;
  }

  RationalFunction of(Formula formula) {
    return formula.choose(this);
  }

  @Override
  public RationalFunction numeral(Formula.Numeral numeral) {
    return RationalFunction.of(numeral.value());
  }

  @Override
  public RationalFunction name(Formula.Name name) {
    int root = names.indexOf(name.spelling());
    if (root >= 0) {
      return roots.root(root);
    }
    int letter = letters.indexOf(name.spelling());
    if (letter >= 0) {
      return roots.letter(letter + 1);
    }
    return otherwise(name);
  }

  @Override
  public RationalFunction negative(Formula.Negative negative) {
    return of(negative.of()).negate();
  }

  @Override
  public RationalFunction sum(Formula.Sum sum) {
    return sum.terms().stream().map(this::of).reduce(RationalFunction.ZERO, RationalFunction::plus);
  }

  @Override
  public RationalFunction product(Formula.Product product) {
    return product.factors().stream()
        .map(this::of)
        .reduce(RationalFunction.ONE, RationalFunction::times);
  }

  @Override
  public RationalFunction quotient(Formula.Quotient quotient) {
    RationalFunction under = of(quotient.under());
    if (under.numerator().isZero()) {
      throw new BeyondLettersException("a denominator is zero whatever the letters are");
    }
    return of(quotient.over()).over(under);
  }

  @Override
  public RationalFunction power(Formula.Power power) {
    int exponent = small(power.exponent());
    RationalFunction base = of(power.base());
    if (exponent < 0 && base.numerator().isZero()) {
      throw new BeyondLettersException("a denominator is zero whatever the letters are");
    }
    return base.power(exponent);
  }

  @Override
  public RationalFunction aggregate(Formula.Aggregate aggregate) {
    RationalFunction body = of(aggregate.body());
    return aggregate.operation() == Formula.Aggregate.Operation.SUM
        ? roots.sumOfImages(body)
        : roots.productOfImages(body);
  }

  @Override
  public RationalFunction family(Formula.Family family) {
    int k = small(family.index());
    return switch (family.letter()) {
      case "S", "p" -> k >= 0 ? roots.powerSum(k) : roots.sumOfImages(roots.root(0).power(k));
      case "e" -> roots.elementary(k);
      case "h" -> roots.complete(k);
      default -> otherwise(family);
    };
  }

  /** P, P′, … at a point. */
  @Override
  public RationalFunction application(Formula.Application application) {
    String name = application.function().replace("'", "");
    int primes = application.function().length() - name.length();
    if (!name.equals("P") || application.arguments().size() != 1) {
      return otherwise(application);
    }
    RationalFunction point = of(application.arguments().get(0));
    RationalFunction value = RationalFunction.ZERO;
    for (int power = polynomial.degree(); power >= primes; power--) {
      long factor = 1;
      for (int k = 0; k < primes; k++) {
        factor *= power - k;
      }
      value =
          value
              .times(point)
              .plus(
                  RationalFunction.of(
                      roots.inner(polynomial.coefficient(power)).times(Rational.of(factor))));
    }
    return value;
  }

  @Override
  protected RationalFunction otherwise(Formula formula) {
    throw new BeyondLettersException(
        "“%s” cannot be worked out with letters in the coefficients"
            .formatted(PlainWriter.write(formula)));
  }

  private static int small(Formula exponent) {
    return WholeNumber.of(exponent)
        .filter(e -> e.abs().compareTo(BigInteger.valueOf(HIGHEST_POWER)) <= 0)
        .orElseThrow(
            () ->
                new BeyondLettersException(
                    "with letters in the coefficients, exponents and indices are whole numbers up to "
                        + HIGHEST_POWER))
        .intValueExact();
  }
}
