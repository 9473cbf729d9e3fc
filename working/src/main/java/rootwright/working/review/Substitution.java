package rootwright.working.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * Puts known equations into a formula: whatever part of it is, by algebra alone, a multiple of the
 * left side of a fact gives way to the same multiple of the right side.
 */
final class Substitution {

  private final FormalValues formal;
  private final List<Fact> facts;
  private final Set<Fact> used = new LinkedHashSet<>();

  Substitution(FormalValues formal, List<Fact> facts) {
    this.formal = formal;
    this.facts = List.copyOf(facts);
  }

  /** The facts put in so far. */
  Set<Fact> used() {
    return Set.copyOf(used);
  }

  /** The formula with facts put in, larger parts first. */
  Formula into(Formula formula) {
    if (!formal.isInRoots(formula) || formula instanceof Formula.Numeral) {
      return formula;
    }
    for (Fact fact : facts) {
      Optional<Rational> factor = multiple(formula, fact.left());
      if (factor.isPresent() && !formal.same(formula, fact.right())) {
        used.add(fact);
        return factor.get().isOne()
            ? fact.right()
            : Formula.number(factor.get()).times(fact.right());
      }
    }
    List<Formula> parts = new ArrayList<>();
    formula.parts().forEach(part -> parts.add(into(part)));
    return formula.withParts(parts);
  }

  /** c, if the formula is by algebra alone c times the other. */
  private Optional<Rational> multiple(Formula formula, Formula of) {
    Optional<RationalFunction> value = formal.of(formula);
    Optional<RationalFunction> base = formal.of(of);
    if (value.isEmpty() || base.isEmpty()) {
      return formula.equals(of) ? Optional.of(Rational.ONE) : Optional.empty();
    }
    MultivariatePolynomial numerator = value.get().numerator();
    MultivariatePolynomial other = base.get().numerator();
    if (base.get().unknowns() == 0
        || value.get().unknowns() != base.get().unknowns()
        || value.get().isPolynomial() != base.get().isPolynomial()
        || numerator.isZero()
        || other.isZero()) {
      return Optional.empty();
    }
    // Only polynomials are compared up to a factor; fractions must be the same function.
    Rational factor =
        value.get().isPolynomial()
            ? numerator
                .terms()
                .lastEntry()
                .getValue()
                .over(
                    other.coefficient(numerator.terms().lastKey()).isZero()
                        ? Rational.ONE
                        : other.coefficient(numerator.terms().lastKey()))
            : Rational.ONE;
    return value.get().isSameFunction(base.get().times(RationalFunction.of(factor)))
        ? Optional.of(factor)
        : Optional.empty();
  }
}
