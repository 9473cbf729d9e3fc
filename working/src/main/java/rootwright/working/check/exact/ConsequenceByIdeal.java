package rootwright.working.check.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;

/**
 * Decides whether a polynomial vanishes wherever others do: it does if and only if 1 is a
 * combination of these and of 1 − y·f with a new unknown y (Rabinowitsch 1929, Math. Ann. 102).
 */
final class ConsequenceByIdeal {

  private static final String METHOD = "a combination of the equations";

  private ConsequenceByIdeal() {}

  static Verdict of(Claim.Consequence claim) {
    MultivariatePolynomial f = claim.conclusion();
    Optional<Ideal> ideal = Ideal.of(claim.equations(), claim.unknowns());
    if (ideal.isPresent() && ideal.get().factors(f).isPresent()) {
      return Verdict.confirmed(METHOD);
    }
    List<MultivariatePolynomial> more = new ArrayList<>(claim.equations());
    MultivariatePolynomial y = MultivariatePolynomial.unknown(claim.unknowns());
    more.add(MultivariatePolynomial.ONE.minus(y.times(f)));
    Optional<Ideal> without = Ideal.of(more, claim.unknowns() + 1);
    if (without.isEmpty()) {
      throw Unevaluable.tooLarge("eliminating takes too long");
    }
    return without.get().isEverything()
        ? Verdict.confirmed(METHOD)
        : new Verdict.Refuted("there are common zeros at which it is not zero");
  }
}
