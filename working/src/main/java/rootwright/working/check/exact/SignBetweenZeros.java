package rootwright.working.check.exact;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.LetterInterval;

/** A polynomial keeps its sign between neighbouring real zeros, so one number there decides. */
final class SignBetweenZeros {

  private SignBetweenZeros() {}

  static Verdict of(Claim.SignOn claim) {
    Polynomial function = claim.function();
    if (function.isZero()) {
      return new Verdict.Undecided("it is 0 everywhere");
    }
    for (LetterInterval interval : claim.region()) {
      for (Optional<ExactValue> end : List.of(interval.low(), interval.high())) {
        if (end.isPresent() && !function.remainder(end.get().minimalPolynomial()).isZero()) {
          return new Verdict.Refuted("%s is no zero, so no end".formatted(end.get()));
        }
      }
    }
    for (Rational sample : CountsByDiscriminant.between(function)) {
      boolean listed = claim.region().stream().anyMatch(piece -> piece.contains(sample));
      if (listed != claim.holdsFor(function.at(sample).signum())) {
        return new Verdict.Refuted("the sign at %s is another".formatted(sample));
      }
    }
    if (function.degree() > 0) {
      for (ExactRoot root : ExactValues.rootsOf(function)) {
        ExactValue zero = root.value();
        boolean listed =
            zero.isReal() && claim.region().stream().anyMatch(piece -> piece.contains(zero));
        if (zero.isReal() && listed != claim.holdsFor(0)) {
          return new Verdict.Refuted("at %s it is 0".formatted(zero));
        }
      }
    }
    return Verdict.confirmed("exact signs between the zeros");
  }
}
