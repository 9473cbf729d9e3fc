package rootwright.working.check.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.IsolatedRoot;
import rootwright.algebra.real.RealRootIsolation;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.RootPlace;

/**
 * The number of roots in a place can change only where the discriminant, the lead coefficient or
 * the value at an end of the place is zero; between such values one count suffices.
 */
final class CountsByDiscriminant {

  private CountsByDiscriminant() {}

  static Verdict of(Claim.CountsBetween claim) {
    Polynomial change = change(claim.polynomial(), claim.place());
    if (change.isZero()) {
      return new Verdict.Undecided("a root is repeated for every value of the letter");
    }
    if (change.degree() > 0
        && (claim.boundaries().degree() < 1
            || !claim.boundaries().remainder(change.squarefreePart()).isZero())) {
      return new Verdict.Refuted("the number of roots may change elsewhere too");
    }
    List<Rational> samples = between(claim.boundaries());
    if (samples.size() != claim.counts().size()) {
      return new Verdict.Refuted("there are %d intervals".formatted(samples.size()));
    }
    for (int k = 0; k < samples.size(); k++) {
      Polynomial special = at(claim.polynomial(), samples.get(k));
      Verdict verdict = of(new Claim.CountInPlace(special, claim.place(), claim.counts().get(k)));
      if (!verdict.isConfirmed()) {
        return verdict;
      }
    }
    return Verdict.confirmed("zeros of the discriminant and Sturm's count between them");
  }

  /** Sturm's count of the roots in a place. */
  static Verdict of(Claim.CountInPlace claim) {
    Polynomial p = claim.polynomial();
    int found = p.degree() < 1 ? 0 : count(p.squarefreePart(), claim.place());
    return found == claim.distinct()
        ? Verdict.confirmed("Sturm's count of the roots in the place")
        : new Verdict.Refuted(
            "there are %d roots among the %s".formatted(found, claim.place().words()));
  }

  private static int count(Polynomial squarefree, RootPlace place) {
    SturmSequence sturm = SturmSequence.of(squarefree);
    int above = place.low().map(sturm::countAbove).orElse(sturm.count());
    int beyond =
        place
            .high()
            .map(end -> sturm.countAbove(end) + (squarefree.at(end).isZero() ? 1 : 0))
            .orElse(0);
    return above - beyond;
  }

  /** Discriminant times lead, times the values at the ends of the place, by interpolation. */
  private static Polynomial change(MultivariatePolynomial polynomial, RootPlace place) {
    int n = polynomial.degreeIn(0);
    Polynomial lead = coefficient(polynomial, n);
    Polynomial product = lead;
    for (Rational end : place.ends()) {
      Polynomial value = valueAt(polynomial, end);
      // Where the end is a root always, another root can pass it only by meeting it.
      product = value.isZero() ? product : product.times(value);
    }
    if (n < 2) {
      return product;
    }
    int degree = (2 * n - 2) * polynomial.degreeIn(1);
    Polynomial sum = Polynomial.ZERO;
    Polynomial vanishing = Polynomial.ONE;
    int found = 0;
    for (int point = 0; found <= degree; point++) {
      Rational k = Rational.of(point);
      if (lead.at(k).isZero()) {
        continue;
      }
      Rational value = Discriminant.of(at(polynomial, k));
      sum = sum.plus(vanishing.times(value.minus(sum.at(k)).over(vanishing.at(k))));
      vanishing = vanishing.times(Polynomial.withRoots(List.of(k)));
      found++;
    }
    return product.times(sum);
  }

  /** The polynomial in the letter that arises when a number is put for the unknown. */
  private static Polynomial valueAt(MultivariatePolynomial polynomial, Rational number) {
    Polynomial value = Polynomial.ZERO;
    for (int power = polynomial.degreeIn(0); power >= 0; power--) {
      value = value.times(number).plus(coefficient(polynomial, power));
    }
    return value;
  }

  private static Polynomial coefficient(MultivariatePolynomial polynomial, int power) {
    List<MultivariatePolynomial> parts = polynomial.coefficientsIn(0);
    return power < parts.size() ? Unknowns.inOne(parts.get(power), 1) : Polynomial.ZERO;
  }

  private static Polynomial at(MultivariatePolynomial polynomial, Rational number) {
    Rational[] ascending = new Rational[polynomial.degreeIn(0) + 1];
    Arrays.fill(ascending, Rational.ZERO);
    for (Map.Entry<Monomial, Rational> term : polynomial.terms().entrySet()) {
      int power = term.getKey().exponent(0);
      ascending[power] =
          ascending[power].plus(term.getValue().times(number.power(term.getKey().exponent(1))));
    }
    return Polynomial.ofAscending(List.of(ascending));
  }

  /** One rational number below, between and above the real roots of a polynomial. */
  static List<Rational> between(Polynomial boundaries) {
    if (boundaries.degree() < 1) {
      return List.of(Rational.ZERO);
    }
    List<IsolatedRoot> roots = new ArrayList<>();
    for (IsolatedRoot root : RealRootIsolation.of(boundaries.squarefreePart())) {
      roots.add(root);
    }
    if (roots.isEmpty()) {
      return List.of(Rational.ZERO);
    }
    Rational width = Rational.of(1, 4);
    while (touching(roots)) {
      width = width.over(Rational.TWO);
      Rational narrow = width;
      roots.replaceAll(root -> root.refinedTo(narrow));
    }
    List<Rational> samples = new ArrayList<>();
    samples.add(Rational.of(roots.get(0).low().floor()).minus(Rational.ONE));
    for (int k = 1; k < roots.size(); k++) {
      samples.add(roots.get(k - 1).high().plus(roots.get(k).low()).over(Rational.TWO));
    }
    Rational last = roots.get(roots.size() - 1).high();
    samples.add(Rational.of(last.floor()).plus(Rational.TWO));
    return samples;
  }

  private static boolean touching(List<IsolatedRoot> roots) {
    for (int k = 1; k < roots.size(); k++) {
      if (roots.get(k - 1).high().compareTo(roots.get(k).low()) >= 0) {
        return true;
      }
    }
    return false;
  }
}
