package rootwright.working.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.RationalValue;

/**
 * Numbers that satisfy the conditions of a conjecture and not its claim.
 *
 * @param values one for each letter
 * @param claim the claim that fails
 */
record Counterexample(List<Rational> values, Equation claim) {

  private static final long[] SMALL = {1, 2, -1, 3, -2, 0, 4, -3, 5};

  /** Most choices of numbers that are tried. */
  private static final int MOST = 30_000;

  Counterexample {
    values = List.copyOf(values);
  }

  /** The first one in small numbers, one letter being found from the conditions. */
  static Optional<Counterexample> of(Conjecture conjecture) {
    return new Search(conjecture, true).run();
  }

  /** Small numbers that satisfy the conditions and also the claims, such as all letters equal. */
  static Optional<List<Rational>> agreeing(Conjecture conjecture) {
    return new Search(conjecture, false).run().map(Counterexample::values);
  }

  /** The search through small numbers for all letters but one. */
  private static final class Search {

    private final Conjecture conjecture;
    private final boolean failing;
    private final MultivariatePolynomial mustNotVanish;
    private int tried;

    Search(Conjecture conjecture, boolean failing) {
      this.conjecture = conjecture;
      this.failing = failing;
      this.mustNotVanish = conjecture.mustNotVanish();
    }

    Optional<Counterexample> run() {
      int letters = conjecture.letters().size();
      for (int size = 1; size <= SMALL.length; size++) {
        for (int last = letters - 1; last >= 0; last--) {
          Optional<Counterexample> found = choose(new ArrayList<>(), last, size, false);
          if (found.isPresent() || tried > MOST) {
            return found;
          }
        }
      }
      return Optional.empty();
    }

    /** Numbers among the first ones of the list, the newest of them used at least once. */
    private Optional<Counterexample> choose(
        List<Rational> chosen, int last, int size, boolean newest) {
      if (chosen.size() == conjecture.letters().size()) {
        boolean fresh = newest || conjecture.letters().size() == 1;
        return fresh ? solved(chosen, last) : Optional.empty();
      } else if (chosen.size() == last) {
        return choose(appended(chosen, Rational.ZERO), last, size, newest);
      }
      for (int k = 0; k < size && tried <= MOST; k++) {
        Optional<Counterexample> found =
            choose(appended(chosen, Rational.of(SMALL[k])), last, size, newest || k == size - 1);
        if (found.isPresent()) {
          return found;
        }
      }
      return Optional.empty();
    }

    private Optional<Counterexample> solved(List<Rational> chosen, int last) {
      tried++;
      Polynomial common = Polynomial.ZERO;
      for (Equation condition : conjecture.conditions()) {
        Polynomial here = inOne(condition.cleared(), chosen, last);
        common = common.isZero() ? here : here.isZero() ? common : common.gcd(here);
      }
      List<Rational> candidates = new ArrayList<>();
      if (common.isZero()) {
        for (long number : SMALL) {
          candidates.add(Rational.of(number));
        }
      } else if (common.degree() > 0) {
        RationalRoots.of(common).forEach(root -> candidates.add(root.value()));
      }
      for (Rational candidate : candidates) {
        List<Rational> point = new ArrayList<>(chosen);
        point.set(last, candidate);
        Optional<Counterexample> found = judged(point);
        if (found.isPresent()) {
          return found;
        }
      }
      return Optional.empty();
    }

    private Optional<Counterexample> judged(List<Rational> point) {
      boolean allowed =
          !mustNotVanish.at(point).isZero()
              && conjecture.conditions().stream()
                  .allMatch(condition -> condition.cleared().at(point).isZero())
              && point.stream()
                  .allMatch(
                      value ->
                          conjecture
                              .domain()
                              .map(domain -> domain.contains(new RationalValue(value)))
                              .orElse(true));
      if (!allowed) {
        return Optional.empty();
      }
      Optional<Equation> failed =
          conjecture.claims().stream()
              .filter(claim -> !claim.cleared().at(point).isZero())
              .findFirst();
      return failing
          ? failed.map(claim -> new Counterexample(point, claim))
          : failed.isPresent()
              ? Optional.empty()
              : Optional.of(new Counterexample(point, conjecture.claims().get(0)));
    }

    private static List<Rational> appended(List<Rational> chosen, Rational value) {
      List<Rational> longer = new ArrayList<>(chosen);
      longer.add(value);
      return longer;
    }

    /** The polynomial in one letter that is left when numbers are put for the others. */
    private static Polynomial inOne(
        MultivariatePolynomial polynomial, List<Rational> chosen, int last) {
      List<Rational> ascending = new ArrayList<>();
      for (MultivariatePolynomial coefficient : polynomial.coefficientsIn(last)) {
        ascending.add(coefficient.at(chosen));
      }
      return Polynomial.ofAscending(ascending);
    }
  }
}
