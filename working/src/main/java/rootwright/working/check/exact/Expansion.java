package rootwright.working.check.exact;

import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Orbit;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.problem.Problem;
import rootwright.working.step.Setting;

/**
 * An ask written out in the roots, nothing used of the polynomial but its degree: what a route that
 * multiplies out starts from.
 */
public final class Expansion {

  /** Most terms that a written-out form may have. */
  private static final int MOST_TERMS = 3_000;

  /** Most fractions with several roots in them that are brought to one denominator. */
  private static final int MOST_FRACTIONS = 12;

  /** Highest index of S_k, e_k, h_k. */
  private static final int HIGHEST_INDEX = 40;

  private Expansion() {}

  /** The ask in the unknowns 0 … n−1; absent when it has no such form or it would be too long. */
  public static Optional<RationalFunction> of(Formula formula, Problem problem) {
    return of(formula, problem.setting());
  }

  /** The formula in the unknowns 0 … n−1, names of the setting written out; absent as above. */
  public static Optional<RationalFunction> of(Formula formula, Setting setting) {
    int degree = setting.polynomial().degree();
    try {
      RationalFunction written = new Written(setting, new Unknowns(degree)).of(formula);
      boolean short_ =
          written.numerator().terms().size() + written.denominator().terms().size() <= MOST_TERMS;
      return short_ && written.unknowns() <= degree ? Optional.of(written) : Optional.empty();
    } catch (Unevaluable stuck) {
      return Optional.empty();
    }
  }

  private static final class Written extends FormalEvaluation {

    private final int degree;

    Written(Setting setting, Unknowns unknowns) {
      super(setting, unknowns, Map.of());
      this.degree = setting.polynomial().degree();
    }

    @Override
    public RationalFunction aggregate(Formula.Aggregate aggregate) {
      RationalFunction body = of(aggregate.body());
      if (body.unknowns() > degree) {
        throw Unevaluable.form("square roots under Σ or Π are not supported");
      }
      Orbit orbit = Orbit.of(body, degree);
      boolean fractions = !body.isPolynomial() && body.unknowns() > 1;
      if (!orbit.isListed() || (fractions && orbit.size().intValueExact() > MOST_FRACTIONS)) {
        throw Unevaluable.tooLarge("too many images to write out");
      }
      boolean sum = aggregate.operation() == Formula.Aggregate.Operation.SUM;
      RationalFunction total = sum ? RationalFunction.ZERO : RationalFunction.ONE;
      for (RationalFunction image : orbit.images()) {
        total = sum ? total.plus(image) : total.times(image);
        if (total.numerator().terms().size() > MOST_TERMS) {
          throw Unevaluable.tooLarge("too many terms to write out");
        }
      }
      return total;
    }

    @Override
    public RationalFunction family(Formula.Family family) {
      Rational index = number(family.index());
      boolean short_ =
          index.isInteger()
              && index.signum() >= 0
              && index.compareTo(Rational.of(HIGHEST_INDEX)) <= 0
              && (degree <= 6 || family.letter().equals("S"));
      if (!short_) {
        throw Unevaluable.tooLarge("too long to write out");
      }
      int k = index.intValueExact();
      return RationalFunction.of(
          (switch (family.letter()) {
                case "S", "p" ->
                    k == 0
                        ? SymmetricPolynomial.constant(degree, Rational.of(degree))
                        : SymmetricPolynomial.powerSum(degree, k);
                case "e" -> SymmetricPolynomial.elementary(degree, k);
                default -> SymmetricPolynomial.complete(degree, k);
              })
              .expand());
    }
  }
}
