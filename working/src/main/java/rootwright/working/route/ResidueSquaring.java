package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * S_k modulo m by squaring: x^(2e) from x^e, reduced by P and by m each time, and the last
 * remainder added up over the roots. Every line is an identity of polynomials, the multiples of P
 * and of m written out.
 */
final class ResidueSquaring implements Route {

  /** Binary digits of the index: as many squarings, with about half as many steps by x between. */
  private static final int LONGEST_INDEX = 64;

  private static final int HIGHEST_DEGREE = 5;

  @Override
  public String name() {
    return "residue-squaring";
  }

  @Override
  public String title() {
    return "square modulo P and the modulus";
  }

  @Override
  public String teaches() {
    return "A high power is reached by squaring, as often as its exponent has binary digits.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<ResidueAsk> read = ResidueAsk.of(asked);
    if (read.isEmpty()) {
      return ResidueAsk.OTHER;
    }
    ResidueAsk ask = read.get();
    return ask.degree() < 2
            || ask.degree() > HIGHEST_DEGREE
            || ask.index().bitLength() > LONGEST_INDEX
        ? new Attempt.Declined("too many squarings, or of too many terms, to be written")
        : worked(ask);
  }

  private Attempt worked(ResidueAsk ask) {
    String x = ask.problem().unknown();
    Setting setting = ask.problem().setting();
    List<Step> steps = new ArrayList<>();
    Polynomial power = Polynomial.X;
    BigInteger exponent = BigInteger.ONE;
    for (int bit = ask.index().bitLength() - 2; bit >= 0; bit--) {
      exponent = exponent.shiftLeft(1);
      Formula square = PolynomialFormula.of(power, x).power(2);
      power = reduced(steps, ask, square, power.times(power), exponent);
      if (ask.index().testBit(bit)) {
        exponent = exponent.add(BigInteger.ONE);
        Formula next = Formula.name(x).times(PolynomialFormula.of(power, x));
        power = reduced(steps, ask, next, power.times(Polynomial.X), exponent);
      }
    }
    PowerSumLines sums =
        new PowerSumLines(
            CoefficientLines.of(ask.problem()),
            ask.problem().polynomial(),
            ask.letter(),
            ask.degree());
    Lines plain = new Lines(setting);
    sums.write(plain, PowerSumLines.indices(power));
    // Σ over a constant has one term, not one for every root.
    Formula added =
        power.degree() > 0
            ? new Formula.Aggregate(
                Formula.Aggregate.Operation.SUM,
                PolynomialFormula.of(power, ask.problem().roots().get(0)))
            : Formula.number(ask.degree()).times(Formula.number(power.coefficient(0)));
    if (power.degree() > 0) {
      sums.total(plain, added, power);
    }
    BigInteger total = sums.value(power).numerator();
    plain.add(
        Idea.ARITHMETIC,
        power.degree() > 0
            ? "divide by " + ask.modulus()
            : "one remainder for every root, divided by " + ask.modulus(),
        added,
        Formula.number(total),
        ask.divided(total));
    steps.addAll(plain.steps());
    BigInteger residue = total.mod(ask.modulus());
    steps.add(ask.end(residue, "modulo " + ask.modulus()));
    return ask.worked(title(), steps, residue);
  }

  /** Writes product = q·P(x) + m·h + remainder and gives the remainder. */
  private static Polynomial reduced(
      List<Step> steps, ResidueAsk ask, Formula shown, Polynomial product, BigInteger exponent) {
    String x = ask.problem().unknown();
    Polynomial.Division division = product.divide(ask.problem().polynomial());
    Polynomial whole = division.remainder();
    BigInteger[] rest = new BigInteger[whole.degree() + 1];
    BigInteger[] times = new BigInteger[whole.degree() + 1];
    Arrays.setAll(rest, k -> whole.numerator(k).mod(ask.modulus()));
    Arrays.setAll(times, k -> whole.numerator(k).subtract(rest[k]).divide(ask.modulus()));
    Polynomial remainder = Polynomial.ofAscending(rest, BigInteger.ONE);
    Polynomial multiple = Polynomial.ofAscending(times, BigInteger.ONE);
    Combination sum = new Combination();
    Formula applied = new Formula.Application("P", List.of(Formula.name(x)));
    if (!division.quotient().isZero()) {
      sum.plus(Combination.product(List.of(PolynomialFormula.of(division.quotient(), x), applied)));
    }
    if (!multiple.isZero()) {
      sum.plus(
          Combination.product(
              List.of(Formula.number(ask.modulus()), PolynomialFormula.of(multiple, x))));
    }
    sum.plusTerms(PolynomialFormula.of(remainder, x));
    // The same identity may come again for another exponent, and must be said again.
    Lines line = new Lines(ask.problem().setting().withFree(x));
    line.add(
        Idea.REDUCE,
        "so %s leaves %s"
            .formatted(
                UnicodeWriter.write(new Formula.Power(Formula.name(x), Formula.number(exponent))),
                UnicodeWriter.write(PolynomialFormula.of(remainder, x))),
        shown,
        sum.formula());
    steps.addAll(line.steps());
    return remainder;
  }
}
