package rootwright.working.check.exact;

import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Inverse;
import rootwright.algebra.roots.OrbitPolynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.step.Setting;

/** The polynomial whose roots are the images of an expression under all namings of the roots. */
public sealed interface ImagePolynomial {

  /** The polynomial, monic. */
  record Found(Polynomial polynomial) implements ImagePolynomial {}

  /** There is none, since a denominator is zero; one plain sentence. */
  record None(String why) implements ImagePolynomial {}

  /**
   * The exact method cannot find it.
   *
   * @param why one plain sentence
   * @param bySize whether a smaller expression of the same form has one that can be found
   */
  record Refused(String why, boolean bySize) implements ImagePolynomial {}

  /** The image polynomial of a map in a setting without free letters. */
  static ImagePolynomial of(Formula map, Setting setting) {
    Unknowns unknowns = new Unknowns(setting.polynomial().degree());
    try {
      RationalFunction written = written(map, setting, unknowns);
      if (!unknowns.isInRootsAlone(written.numerator())
          || !unknowns.isInRootsAlone(written.denominator())) {
        return new Refused("square roots and i in the map are not supported", false);
      }
      return of(written, setting.polynomial());
    } catch (Unevaluable stuck) {
      return stuck.reason() == Unevaluable.Cause.ZERO_DENOMINATOR
          ? new None(stuck.sentence())
          : new Refused(stuck.sentence(), stuck.reason() == Unevaluable.Cause.TOO_LARGE);
    }
  }

  /** As it stands, so that the images are counted by the form; reduced where that is too long. */
  private static RationalFunction written(Formula map, Setting setting, Unknowns unknowns) {
    try {
      return new FormalEvaluation(setting, unknowns, Map.of()).of(map);
    } catch (Unevaluable stuck) {
      return new ExactEvaluation(setting, unknowns, Map.of()).of(map);
    }
  }

  private static ImagePolynomial of(RationalFunction map, Polynomial polynomial) {
    if (map.unknowns() == 1) {
      ResidueAlgebra algebra = ResidueAlgebra.of(polynomial);
      Inverse inverse = algebra.inverse(Unknowns.inOne(map.denominator(), 0));
      RationalFunction shortest = map.lowestTerms();
      if (inverse instanceof Inverse.Inverted && shortest.unknowns() == 0) {
        // (2r + 2)/(r + 1) is one image, not n.
        Rational value = shortest.numerator().coefficient(Monomial.ONE);
        return new Found(Polynomial.withRoots(List.of(value)));
      }
      return inverse instanceof Inverse.Inverted inverted
          ? new Found(
              algebra.characteristic(
                  algebra.times(Unknowns.inOne(map.numerator(), 0), inverted.value())))
          : new None("a root makes a denominator zero");
    }
    OrbitPolynomial orbit = OrbitPolynomial.of(polynomial, map);
    if (orbit instanceof OrbitPolynomial.Exact exact) {
      return new Found(exact.polynomial());
    }
    return orbit instanceof OrbitPolynomial.TooLarge large
        ? new Refused(
            "the expression has %s images, too many to work with".formatted(large.size()), true)
        : new None("some choice of the roots makes a denominator zero");
  }
}
