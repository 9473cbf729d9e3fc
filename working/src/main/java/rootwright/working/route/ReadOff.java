package rootwright.working.route;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** Reads the ask off: a sum of multiples of e_1, e_2, …, or such a sum over a single e_k. */
final class ReadOff implements Route {

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
    } else if (asked.quotient().isEmpty()) {
      return Reasons.NOT_SYMMETRIC;
    }
    return SymmetricFraction.of(asked)
        .map(fraction -> fraction(asked, fraction))
        .orElse(Reasons.TOO_LONG);
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
    return Attempt.Worked.of(
        "write it over the common denominator and read it off", lines.steps(), value.get());
  }

  private static boolean isBare(SymmetricPolynomial ask) {
    return ask.terms().values().iterator().next().isOne();
  }
}
