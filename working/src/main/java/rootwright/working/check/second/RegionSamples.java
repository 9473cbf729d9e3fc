package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.LetterInterval;
import rootwright.working.step.RootPlace;

/** Claims about regions of a letter, looked at in seeded places by certified enclosures. */
final class RegionSamples {

  private static final int DIGITS = 30;
  private static final int BITS = 160;
  private static final int SAMPLES = 5;
  private static final long SEED = 20_260_202L;

  private RegionSamples() {}

  /** Five values of the letter in every interval. */
  static Verdict of(Claim.CountsBetween claim) {
    List<RealBall> boundaries =
        claim.boundaries().degree() < 1
            ? List.of()
            : RootEnclosures.of(claim.boundaries(), DIGITS).stream()
                .filter(EnclosedRoot::real)
                .map(EnclosedRoot::interval)
                .toList();
    if (boundaries.size() + 1 != claim.counts().size()) {
      return new Verdict.Refuted("there are %d boundaries".formatted(boundaries.size()));
    }
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k < claim.counts().size(); k++) {
      for (int sample = 0; sample < SAMPLES; sample++) {
        Rational share = Rational.of(random.nextLong(1, 1000), 1000);
        Rational number = inside(boundaries, k, share);
        Polynomial special = at(claim.polynomial(), number);
        Verdict verdict = of(new Claim.CountInPlace(special, claim.place(), claim.counts().get(k)));
        if (!verdict.isConfirmed()) {
          return verdict;
        }
      }
    }
    return Verdict.confirmed(
        "certified enclosures of the roots, sampled at five values of the letter in every interval");
  }

  /** The enclosed roots in a place, narrowed until none of them covers an end that is no root. */
  static Verdict of(Claim.CountInPlace claim) {
    Polynomial p = claim.polynomial();
    for (int digits = DIGITS; ; digits *= 2) {
      List<RealBall> real =
          p.degree() < 1
              ? List.of()
              : RootEnclosures.of(p, digits).stream()
                  .filter(EnclosedRoot::real)
                  .map(EnclosedRoot::interval)
                  .toList();
      boolean open =
          claim.place().ends().stream()
              .anyMatch(
                  end ->
                      !p.at(end).isZero()
                          && real.stream().anyMatch(interval -> interval.contains(end)));
      if (!open) {
        long found = real.stream().filter(interval -> lies(interval, claim.place())).count();
        return found == claim.distinct()
            ? Verdict.confirmed("certified enclosures of the roots")
            : new Verdict.Refuted(
                "%d enclosed roots lie among the %s".formatted(found, claim.place().words()));
      }
    }
  }

  /** An interval that holds an end of the place holds a root that is that end. */
  private static boolean lies(RealBall interval, RootPlace place) {
    return place.ends().stream().noneMatch(interval::contains)
        && place.low().map(end -> low(interval).compareTo(end) > 0).orElse(true)
        && place.high().map(end -> high(interval).compareTo(end) < 0).orElse(true);
  }

  /** Five values of the letter between neighbouring zeros, and the ends of the region on zeros. */
  static Verdict of(Claim.SignOn claim) {
    List<RealBall> zeros =
        claim.function().degree() < 1
            ? List.of()
            : RootEnclosures.of(claim.function(), DIGITS).stream()
                .filter(EnclosedRoot::real)
                .map(EnclosedRoot::interval)
                .toList();
    for (LetterInterval interval : claim.region()) {
      for (Optional<ExactValue> end : List.of(interval.low(), interval.high())) {
        if (end.isPresent()
            && zeros.stream()
                .noneMatch(zero -> zero.overlaps(end.get().enclosure(DIGITS).real()))) {
          return new Verdict.Refuted("the sign does not change at " + end.get());
        }
      }
    }
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k <= zeros.size(); k++) {
      for (int sample = 0; sample < SAMPLES; sample++) {
        Rational number = inside(zeros, k, Rational.of(random.nextLong(1, 1000), 1000));
        RealBall value = ball(claim.function(), ComplexBall.of(number, BITS)).real();
        int sign = value.isPositive() ? 1 : value.isNegative() ? -1 : 0;
        boolean listed = claim.region().stream().anyMatch(piece -> piece.contains(number));
        if (sign == 0) {
          return new Verdict.Undecided("the sign at %s is too close to 0".formatted(number));
        } else if (listed != claim.holdsFor(sign)) {
          return new Verdict.Refuted("the sign at %s is another".formatted(number));
        }
      }
    }
    return Verdict.confirmed("balls, sampled at five values of the letter in every interval");
  }

  private static Rational inside(List<RealBall> boundaries, int k, Rational share) {
    if (boundaries.isEmpty()) {
      return share.times(20).minus(Rational.of(10));
    } else if (k == 0) {
      return low(boundaries.get(0)).minus(share.times(10));
    } else if (k == boundaries.size()) {
      return high(boundaries.get(k - 1)).plus(share.times(10));
    }
    Rational from = high(boundaries.get(k - 1));
    return from.plus(low(boundaries.get(k)).minus(from).times(share));
  }

  private static Rational low(RealBall ball) {
    return ball.low().toRational();
  }

  private static Rational high(RealBall ball) {
    return ball.high().toRational();
  }

  private static Polynomial at(MultivariatePolynomial polynomial, Rational number) {
    List<MultivariatePolynomial> parts = polynomial.coefficientsIn(0);
    List<Rational> ascending = new ArrayList<>();
    for (MultivariatePolynomial part : parts) {
      Rational value = Rational.ZERO;
      for (int power = part.degreeIn(1); power >= 0; power--) {
        value = value.times(number).plus(part.coefficient(Monomial.power(1, power)));
      }
      ascending.add(value);
    }
    return Polynomial.ofAscending(ascending);
  }

  /** The value where it is attained, and no better one at sampled places of the region. */
  static Verdict of(Claim.Extreme claim) {
    ComplexBall value = claim.value().enclosure(DIGITS);
    ComplexBall at = claim.attained().enclosure(DIGITS);
    ComplexBall there = ball(claim.over(), at).minus(value.times(ball(claim.under(), at)));
    if (!there.containsZero()) {
      return new Verdict.Refuted("the value is not attained");
    }
    SplittableRandom random = new SplittableRandom(SEED);
    for (LetterInterval interval : claim.region()) {
      for (int sample = 0; sample < 4 * SAMPLES; sample++) {
        Rational number = inside(interval, Rational.of(random.nextLong(1, 1000), 1000));
        if (!interval.contains(number)) {
          continue;
        }
        ComplexBall k = ComplexBall.of(number, BITS);
        RealBall difference =
            ball(claim.over(), k).over(ball(claim.under(), k), BITS).minus(value).real();
        boolean passed =
            claim.side() == Claim.Extreme.Side.LEAST
                ? difference.isNegative()
                : difference.isPositive();
        if (passed) {
          return new Verdict.Refuted("the function passes the value at " + number);
        }
      }
    }
    return Verdict.confirmed("balls, sampled at twenty values of the letter in every interval");
  }

  private static Rational inside(LetterInterval interval, Rational share) {
    Optional<ExactValue> low = interval.low();
    Optional<ExactValue> high = interval.high();
    if (low.isPresent() && high.isPresent()) {
      Rational from = low.get().enclosure(DIGITS).real().high().toRational();
      Rational to = high.get().enclosure(DIGITS).real().low().toRational();
      return from.plus(to.minus(from).times(share));
    } else if (low.isPresent()) {
      return low.get().enclosure(DIGITS).real().high().toRational().plus(share.times(20));
    } else if (high.isPresent()) {
      return high.get().enclosure(DIGITS).real().low().toRational().minus(share.times(20));
    }
    return share.times(40).minus(Rational.of(20));
  }

  private static ComplexBall ball(Polynomial polynomial, ComplexBall point) {
    ComplexBall value = ComplexBall.ZERO;
    for (int power = polynomial.degree(); power >= 0; power--) {
      value = value.times(point).plus(ComplexBall.of(polynomial.coefficient(power), BITS));
    }
    return value;
  }
}
