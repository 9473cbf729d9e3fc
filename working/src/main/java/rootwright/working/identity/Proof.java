package rootwright.working.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * Why a cleared equation follows from others: claim^power = Σ factor_k · equation_k, the last
 * equation being 1 − q·d = 0 for the product d of what is not zero, if there is such.
 */
record Proof(
    MultivariatePolynomial claim,
    int power,
    List<MultivariatePolynomial> equations,
    List<MultivariatePolynomial> factors) {

  private static final int HIGHEST_POWER = 3;

  Proof {
    equations = List.copyOf(equations);
    factors = List.copyOf(factors);
  }

  /** Whether the reciprocal of what is not zero takes part. */
  boolean usesReciprocal(int conditions) {
    return factors.size() > conditions;
  }

  /** The left sides: cleared conditions, then 1 − q·d where something must not be zero. */
  static List<MultivariatePolynomial> equations(Conjecture conjecture) {
    List<MultivariatePolynomial> all = new ArrayList<>();
    conjecture.conditions().forEach(condition -> all.add(condition.cleared()));
    MultivariatePolynomial product = conjecture.mustNotVanish();
    if (!product.isConstant()) {
      all.add(
          MultivariatePolynomial.ONE.minus(
              product.times(MultivariatePolynomial.unknown(conjecture.letters().size()))));
    }
    return all;
  }

  /** A proof of one claim, if one is found. */
  static Optional<Proof> of(Conjecture conjecture, Equation claim) {
    List<MultivariatePolynomial> cleared =
        conjecture.conditions().stream().map(Equation::cleared).toList();
    int letters = conjecture.letters().size();
    // Without the reciprocal of denominators first: such a proof is shorter.
    return Ideal.of(cleared, letters)
        .flatMap(ideal -> of(claim, cleared, ideal))
        .or(
            () -> {
              List<MultivariatePolynomial> all = equations(conjecture);
              return Ideal.of(all, letters + 1).flatMap(ideal -> of(claim, all, ideal));
            });
  }

  private static Optional<Proof> of(
      Equation claim, List<MultivariatePolynomial> equations, Ideal ideal) {
    MultivariatePolynomial power = claim.cleared();
    for (int m = 1; m <= HIGHEST_POWER; m++) {
      Optional<List<MultivariatePolynomial>> factors = ideal.factors(power);
      if (factors.isPresent()) {
        return Optional.of(new Proof(claim.cleared(), m, equations, factors.get()));
      }
      power = power.times(claim.cleared());
    }
    return Optional.empty();
  }

  /**
   * Whether the claim fails somewhere over the complex numbers, decided by adding 1 − u·claim to
   * the equations (Rabinowitsch 1930, Mathematische Annalen 102, p 520); empty if the work is
   * beyond the bound.
   */
  static Optional<Boolean> fails(Conjecture conjecture, Equation claim) {
    List<MultivariatePolynomial> all = new ArrayList<>(equations(conjecture));
    int letters = conjecture.letters().size();
    all.add(
        MultivariatePolynomial.ONE.minus(
            claim.cleared().times(MultivariatePolynomial.unknown(letters + 1))));
    return Ideal.of(all, letters + 2).map(ideal -> !ideal.isEverything());
  }
}
