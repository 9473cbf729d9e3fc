package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Inverse;
import rootwright.algebra.roots.Orbit;
import rootwright.algebra.roots.OrbitPolynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.step.Setting;

/** What an expression in the roots comes out as, by exact normal forms. */
public sealed interface Valuation {

  /**
   * The same rational number for every naming of the roots.
   *
   * @param byForm whether the expression is symmetric by its form; if not, it is this polynomial
   *     that makes it single-valued
   */
  record Determined(Rational value, boolean byForm) implements Valuation {}

  /**
   * An expression in one root that is not the same for all of them.
   *
   * @param reduced the polynomial of lower degree than P that it equals
   * @param root the name of the root
   */
  record InOneRoot(Polynomial reduced, String root) implements Valuation {}

  /**
   * Different values for different namings of the roots.
   *
   * @param orbit the polynomial whose roots, with multiplicity, are the values of all formal images
   */
  record Several(Polynomial orbit) implements Valuation {}

  /**
   * Several values, too many images to find their polynomial.
   *
   * @param images how many formal images there are
   */
  record TooMany(BigInteger images) implements Valuation {}

  /**
   * A denominator is zero for some naming.
   *
   * @param why one plain sentence
   * @param culprit the monic polynomial whose roots make a denominator in one root zero
   */
  record Undefined(String why, Optional<Polynomial> culprit) implements Valuation {}

  /**
   * The exact method cannot say.
   *
   * @param why one plain sentence
   * @param bySize whether a smaller ask of the same form could be valued
   */
  record Refused(String why, boolean bySize) implements Valuation {}

  /** Values a formula in a setting without free letters. */
  static Valuation of(Formula formula, Setting setting) {
    Unknowns unknowns = new Unknowns(setting.polynomial().degree());
    try {
      RationalFunction value = new ExactEvaluation(setting, unknowns, Map.of()).of(formula);
      if (!unknowns.isInRootsAlone(value.numerator())
          || !unknowns.isInRootsAlone(value.denominator())) {
        return new Refused("square roots and i in what is asked are not supported", false);
      }
      return of(formula, value, setting, unknowns);
    } catch (Unevaluable stuck) {
      String why = stuck.sentence();
      return stuck.reason() == Unevaluable.Cause.ZERO_DENOMINATOR
          ? new Undefined(why, culprit(formula, setting))
          : new Refused(why, stuck.reason() == Unevaluable.Cause.TOO_LARGE);
    }
  }

  private static Valuation of(
      Formula formula, RationalFunction value, Setting setting, Unknowns unknowns) {
    List<Integer> roots = unknowns.rootsIn(value.numerator().times(value.denominator()));
    if (roots.size() <= 1) {
      return inOneRoot(value, setting, roots.isEmpty() ? 0 : roots.get(0));
    }
    Orbit images = Orbit.of(value, setting.polynomial().degree());
    boolean byForm = images.isSymmetric();
    if (!byForm && !images.isListed()) {
      return new TooMany(images.size());
    }
    if (byForm) {
      NormalForm normalForm = new NormalForm(setting.polynomial(), unknowns);
      Optional<Rational> over = normalForm.constant(value.numerator());
      Optional<Rational> under = normalForm.constant(value.denominator());
      if (under.isPresent() && under.get().isZero()) {
        return new Undefined("a root makes a denominator zero", culprit(formula, setting));
      }
      if (over.isPresent() && under.isPresent()) {
        return new Determined(over.get().over(under.get()), true);
      }
    }
    OrbitPolynomial orbit = OrbitPolynomial.of(setting.polynomial(), images);
    if (orbit instanceof OrbitPolynomial.Exact exact) {
      Polynomial found = exact.polynomial();
      Polynomial distinct = found.squarefreePart();
      return distinct.degree() == 1
          ? new Determined(distinct.coefficient(0).negate(), byForm)
          : new Several(found);
    } else if (orbit instanceof OrbitPolynomial.TooLarge large) {
      return new TooMany(large.size());
    }
    return new Undefined(
        "some choice of the roots makes a denominator zero", culprit(formula, setting));
  }

  private static Valuation inOneRoot(RationalFunction value, Setting setting, int root) {
    ResidueAlgebra algebra = ResidueAlgebra.of(setting.polynomial());
    Polynomial under = Unknowns.inOne(value.denominator(), root);
    Inverse inverse = algebra.inverse(under);
    if (inverse instanceof Inverse.SharedFactor shared) {
      return new Undefined("a root makes the denominator zero", Optional.of(shared.common()));
    }
    Polynomial reduced =
        algebra.times(
            Unknowns.inOne(value.numerator(), root), ((Inverse.Inverted) inverse).value());
    boolean byForm = value.numerator().isConstant() && value.isPolynomial();
    return reduced.degree() <= 0
        ? new Determined(reduced.coefficient(0), byForm)
        : new InOneRoot(reduced, setting.roots().get(root));
  }

  /** The first denominator in one root that shares a factor with P. */
  private static Optional<Polynomial> culprit(Formula formula, Setting setting) {
    if (formula instanceof Formula.Quotient quotient) {
      Unknowns unknowns = new Unknowns(setting.polynomial().degree());
      try {
        MultivariatePolynomial under =
            new ExactEvaluation(setting, unknowns, Map.of()).of(quotient.under()).numerator();
        List<Integer> roots = unknowns.rootsIn(under);
        if (roots.size() == 1 && unknowns.isInRootsAlone(under)) {
          Polynomial common = Unknowns.inOne(under, roots.get(0)).gcd(setting.polynomial());
          if (common.degree() > 0) {
            return Optional.of(common);
          }
        }
      } catch (Unevaluable deeper) {
        return culprit(quotient.under(), setting);
      }
    }
    return formula.parts().stream()
        .map(part -> culprit(part, setting))
        .flatMap(Optional::stream)
        .findFirst();
  }
}
