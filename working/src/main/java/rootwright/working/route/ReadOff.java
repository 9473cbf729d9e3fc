package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Expansion;
import rootwright.working.step.Idea;

/** Reads the ask off: a sum of multiples of e_1, e_2, …, or such a sum over a single e_k. */
final class ReadOff implements Route {

  private static final String OVER_COMMON = "write it over the common denominator and read it off";

  @Override
  public String name() {
    return "read-off";
  }

  @Override
  public String title() {
    return "read it off the coefficients";
  }

  @Override
  public String teaches() {
    return "Coefficient over lead, with alternating sign, is a sum of products of roots.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.symmetric().isPresent()) {
      return upright(asked, asked.symmetric().get());
    }
    Optional<Integer> factors = rootsBelow(asked);
    if (factors.isPresent()) {
      return reciprocals(asked, factors.get());
    } else if (asked.quotient().isEmpty()) {
      return Reasons.notSymmetric(asked);
    }
    return SymmetricFraction.of(asked)
        .map(fraction -> fraction(asked, fraction))
        .orElse(Reasons.TOO_LONG);
  }

  /** k, if the ask is the sum of one over all products of k roots. */
  private static Optional<Integer> rootsBelow(Asked asked) {
    if (!(asked.formula() instanceof Formula.Aggregate sum)
        || sum.operation() != Formula.Aggregate.Operation.SUM) {
      return Optional.empty();
    }
    return Expansion.of(sum.body(), asked.problem())
        .filter(body -> body.numerator().equals(MultivariatePolynomial.ONE))
        .filter(body -> body.denominator().terms().size() == 1)
        .map(body -> body.denominator().terms().firstEntry())
        .filter(under -> under.getValue().isOne())
        .map(under -> under.getKey())
        .filter(
            under ->
                IntStream.range(0, under.length()).allMatch(place -> under.exponent(place) <= 1))
        .map(Monomial::degree);
  }

  /** Σ 1/(r·s·…) = e_(n−k)/e_n. */
  private static Attempt reciprocals(Asked asked, int k) {
    CoefficientLines coefficients = CoefficientLines.of(asked.problem());
    int n = asked.problem().degree();
    Rational below = coefficients.values().get(n);
    if (below.isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    Rational above = coefficients.values().get(n - k);
    Lines lines = new Lines(asked.problem().setting());
    coefficients.write(lines, new TreeSet<>(k == n ? List.of(n) : List.of(n - k, n)));
    lines.add(
        Idea.COMMON_DENOMINATOR,
        "over the common denominator",
        asked.formula(),
        (k == n ? Formula.number(1) : NamedForm.elementary(n - k)).over(NamedForm.elementary(n)),
        Formula.number(above).over(Formula.number(below)),
        Formula.number(above.over(below)));
    return Attempt.Worked.of(OVER_COMMON, lines.steps(), above.over(below));
  }

  private static Attempt upright(Asked asked, SymmetricPolynomial ask) {
    if (ask.terms().keySet().stream().allMatch(Partition.EMPTY::equals)) {
      return new Attempt.Declined("the roots cancel, so there is nothing to read off");
    } else if (!OrbitSums.isElementary(ask)) {
      return new Attempt.Declined("there are powers of roots in it, which no coefficient shows");
    }
    NamedForm form = NamedForm.inElementary(ask.toElementary().polynomial());
    CoefficientLines coefficients = CoefficientLines.of(asked.problem());
    Lines lines = new Lines(asked.problem().setting());
    Rational value = form.value(coefficients.values());
    if (form.form().terms().size() == 1 && form.indices().size() == 1 && isBare(ask)) {
      int k = form.indices().first();
      Formula named = NamedForm.elementary(k);
      lines.add(
          Idea.READ_COEFFICIENTS,
          coefficients.reason(k),
          asked.formula(),
          named,
          coefficients.worked(k).get(0),
          Formula.number(value));
    } else {
      coefficients.write(lines, form.indices());
      lines.add(
          Idea.STATE,
          "in terms of the coefficients",
          asked.formula(),
          form.written(),
          form.worked(coefficients.values()),
          Formula.number(value));
    }
    return Attempt.Worked.of("read it off the coefficients", lines.steps(), value);
  }

  private static Attempt fraction(Asked asked, SymmetricFraction fraction) {
    if (!OrbitSums.isElementary(fraction.quotient().numerator())
        || !OrbitSums.isElementary(fraction.quotient().denominator())
        || fraction.quotient().denominator().terms().size() > 1) {
      return new Attempt.Declined("over the common denominator it is no quotient of coefficients");
    }
    CoefficientLines coefficients = CoefficientLines.of(asked.problem());
    Optional<Rational> value = fraction.value(coefficients.values());
    if (value.isEmpty()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    Lines lines = new Lines(asked.problem().setting());
    coefficients.write(lines, fraction.indices());
    lines.add(
        Idea.COMMON_DENOMINATOR,
        "over the common denominator",
        asked.formula(),
        fraction.written(),
        fraction.worked(coefficients.values()),
        Formula.number(value.get()));
    return Attempt.Worked.of(OVER_COMMON, lines.steps(), value.get());
  }

  private static boolean isBare(SymmetricPolynomial ask) {
    return ask.terms().values().iterator().next().isOne();
  }
}
