package rootwright.working.check.exact;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.LetterInterval;

/**
 * Whether a value is the least or greatest one of a function on a region: the difference has one
 * sign between the zeros of numerator, denominator and the ends of the region.
 */
final class ExtremeBySigns {

  private static final ExactValue ZERO = new RationalValue(Rational.ZERO);

  private ExtremeBySigns() {}

  static Verdict of(Claim.Extreme claim) {
    if (claim.region().stream().noneMatch(interval -> interval.contains(claim.attained()))) {
      return new Verdict.Refuted(claim.attained() + " does not lie in the region");
    }
    Optional<ExactValue> there = difference(claim, claim.attained());
    if (there.isEmpty()) {
      return new Verdict.Undecided("the numbers are of too high a degree");
    } else if (!there.get().equals(ZERO)) {
      return new Verdict.Refuted("the value is not attained at " + claim.attained());
    }
    Polynomial cuts = norm(claim).times(claim.under());
    for (LetterInterval interval : claim.region()) {
      for (Optional<ExactValue> end : List.of(interval.low(), interval.high())) {
        if (end.isPresent()) {
          cuts = cuts.times(end.get().minimalPolynomial());
        }
      }
    }
    int wanted = claim.side() == Claim.Extreme.Side.LEAST ? 1 : -1;
    for (Rational sample : CountsByDiscriminant.between(cuts)) {
      boolean inside = claim.region().stream().anyMatch(interval -> interval.contains(sample));
      Optional<ExactValue> difference = difference(claim, new RationalValue(sample));
      if (inside && difference.isPresent()) {
        int sign =
            ExactValues.compareReal(difference.get(), ZERO) * claim.under().at(sample).signum();
        if (sign * wanted < 0) {
          return new Verdict.Refuted("the function passes the value at " + sample);
        }
      }
    }
    return Verdict.confirmed("exact signs on the whole region");
  }

  /** over − value·under at a number. */
  private static Optional<ExactValue> difference(Claim.Extreme claim, ExactValue at) {
    Optional<ExactValue> over = value(claim.over(), at);
    Optional<ExactValue> under = value(claim.under(), at);
    if (over.isEmpty() || under.isEmpty()) {
      return Optional.empty();
    }
    return times(under.get(), claim.value()).flatMap(product -> minus(over.get(), product));
  }

  private static Optional<ExactValue> value(Polynomial function, ExactValue at) {
    if (at instanceof RationalValue rational) {
      return Optional.of(new RationalValue(function.at(rational.number())));
    }
    Polynomial reduced = function.remainder(at.minimalPolynomial());
    if (reduced.degree() <= 0) {
      return Optional.of(new RationalValue(reduced.coefficient(0)));
    } else if (at instanceof QuadraticSurd surd
        && surd.times(reduced.coefficient(1)) instanceof QuadraticSurd scaled) {
      return Optional.of(scaled.plus(reduced.coefficient(0)));
    }
    return Optional.empty();
  }

  private static Optional<ExactValue> times(ExactValue one, ExactValue other) {
    if (one instanceof RationalValue a && other instanceof RationalValue b) {
      return Optional.of(new RationalValue(a.number().times(b.number())));
    } else if (one instanceof RationalValue a && other instanceof QuadraticSurd b) {
      return Optional.of(b.times(a.number()));
    } else if (one instanceof QuadraticSurd a && other instanceof RationalValue b) {
      return Optional.of(a.times(b.number()));
    } else if (one instanceof QuadraticSurd a
        && other instanceof QuadraticSurd b
        && a.sharesFieldWith(b)) {
      return Optional.of(a.times(b));
    }
    return Optional.empty();
  }

  private static Optional<ExactValue> minus(ExactValue one, ExactValue other) {
    if (one instanceof RationalValue a && other instanceof RationalValue b) {
      return Optional.of(new RationalValue(a.number().minus(b.number())));
    } else if (one instanceof RationalValue a && other instanceof QuadraticSurd b) {
      return Optional.of(b.negate().plus(a.number()));
    } else if (one instanceof QuadraticSurd a && other instanceof RationalValue b) {
      return Optional.of(a.plus(b.number().negate()));
    } else if (one instanceof QuadraticSurd a
        && other instanceof QuadraticSurd b
        && a.sharesFieldWith(b)) {
      return Optional.of(a.minus(b));
    }
    return Optional.empty();
  }

  /** A rational polynomial that is zero wherever the function takes the value. */
  private static Polynomial norm(Claim.Extreme claim) {
    if (claim.value() instanceof RationalValue rational) {
      Polynomial difference = claim.over().minus(claim.under().times(rational.number()));
      return difference.isZero() ? Polynomial.ONE : difference;
    }
    Polynomial minimal = claim.value().minimalPolynomial().monic();
    Polynomial sum = Polynomial.ZERO;
    for (int k = 0; k <= minimal.degree(); k++) {
      sum =
          sum.plus(
              claim
                  .over()
                  .power(k)
                  .times(claim.under().power(minimal.degree() - k))
                  .times(minimal.coefficient(k)));
    }
    return sum;
  }
}
