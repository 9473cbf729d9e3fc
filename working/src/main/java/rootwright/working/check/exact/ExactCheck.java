package rootwright.working.check.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.check.ClaimCheck;
import rootwright.working.check.Nameless;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/**
 * The first check: a claim is confirmed when its exact normal form in the algebra of the roots
 * agrees.
 */
public final class ExactCheck implements ClaimCheck {

  private static final String METHOD = "exact normal form";

  /** Degree in a free letter up to which an identity is decided. */
  private static final int HIGHEST_DEGREE = 200;

  /** The setting and the numbers put for the free letters. */
  private record Place(Setting setting, Map<String, Rational> letters) {}

  private final Optional<Nameless<Place, RationalFunction>> kept;

  /** A check that keeps nothing from one claim to the next. */
  public ExactCheck() {
    this(Optional.empty());
  }

  private ExactCheck(Optional<Nameless<Place, RationalFunction>> kept) {
    this.kept = kept;
  }

  @Override
  public ClaimCheck forOneProblem() {
    return new ExactCheck(Optional.of(new Nameless<>()));
  }

  @Override
  public Verdict of(Claim claim) {
    try {
      if (claim instanceof Claim.Equal equal) {
        return equal(equal);
      } else if (claim instanceof Claim.HasRoots hasRoots) {
        return hasRoots(hasRoots);
      } else if (claim instanceof Claim.EqualWithLetters lettered) {
        return IdentityInLetters.of(lettered);
      } else if (claim instanceof Claim.SolutionSet set) {
        return SolutionSetByFactors.of(set);
      } else if (claim instanceof Claim.Ascending ascending) {
        return OrderOfSurds.of(ascending);
      } else if (claim instanceof Claim.CountsBetween counts) {
        return CountsByDiscriminant.of(counts);
      } else if (claim instanceof Claim.Extreme extreme) {
        return ExtremeBySigns.of(extreme);
      } else if (claim instanceof Claim.EqualOverPairs pairs) {
        return PairsByResultants.of(pairs);
      } else if (claim instanceof Claim.SystemSolutions system) {
        return SystemByElimination.of(system);
      } else if (claim instanceof Claim.SignOn sign) {
        return SignBetweenZeros.of(sign);
      } else if (claim instanceof Claim.CountInPlace count) {
        return CountsByDiscriminant.of(count);
      } else if (claim instanceof Claim.Consequence consequence) {
        return ConsequenceByIdeal.of(consequence);
      } else if (claim instanceof Claim.CountOfRoots count) {
        return SolutionSetByFactors.of(count);
      }
      return new Verdict.Undecided("an argument in words");
    } catch (Unevaluable stuck) {
      return new Verdict.Undecided(stuck.sentence());
    }
  }

  private Verdict equal(Claim.Equal claim) {
    List<String> free = claim.setting().free();
    if (free.isEmpty()) {
      return equalAt(claim.setting(), claim.sides(), Map.of());
    } else if (free.size() > 1) {
      return IdentityInLetters.of(claim);
    }
    // A rational identity of degree d that holds at more than d points holds identically.
    int degree =
        DegreeInLetter.ofDifferences(claim.sides(), DegreeScope.of(claim.setting(), free.get(0)));
    if (degree > HIGHEST_DEGREE) {
      throw Unevaluable.tooLarge("the identity has a degree above " + HIGHEST_DEGREE);
    }
    int confirmed = 0;
    for (int point = 2; confirmed <= degree; point++) {
      Verdict verdict;
      try {
        verdict = equalAt(claim.setting(), claim.sides(), Map.of(free.get(0), Rational.of(point)));
      } catch (Unevaluable pole) {
        if (pole.reason() != Unevaluable.Cause.ZERO_DENOMINATOR || point > 4 * HIGHEST_DEGREE) {
          throw pole;
        }
        continue;
      }
      if (!verdict.isConfirmed()) {
        return verdict;
      }
      confirmed++;
    }
    return Verdict.confirmed(METHOD);
  }

  private Verdict equalAt(Setting setting, List<Formula> sides, Map<String, Rational> letters) {
    return equalAt(
        setting,
        sides,
        letters,
        kept.map(all -> all.in(new Place(setting, letters))).orElseGet(HashMap::new));
  }

  /**
   * Whether the sides are equal with these numbers put for the free letters.
   *
   * @param nameless what Σ, Π, S_k, e_k and h_k are known to be there; what is found is added
   */
  static Verdict equalAt(
      Setting setting,
      List<Formula> sides,
      Map<String, Rational> letters,
      Map<Formula, RationalFunction> nameless) {
    List<Formula> written = new ArrayList<>(sides);
    written.addAll(setting.definitions().values());
    Unknowns unknowns = new Unknowns(setting.polynomial().degree(), Turns.order(written));
    ExactEvaluation evaluation = new ExactEvaluation(setting, unknowns, letters, nameless);
    NormalForm normalForm = new NormalForm(setting.polynomial(), unknowns);
    RationalFunction left = defined(evaluation.of(sides.get(0)), normalForm);
    for (Formula side : sides.subList(1, sides.size())) {
      RationalFunction right = defined(evaluation.of(side), normalForm);
      MultivariatePolynomial difference =
          left.denominator().equals(right.denominator())
              ? left.numerator().minus(right.numerator())
              : left.numerator()
                  .times(right.denominator())
                  .minus(right.numerator().times(left.denominator()));
      if (!normalForm.isZero(difference)) {
        return new Verdict.Refuted("the normal form of the difference is not zero");
      }
      left = right;
    }
    return Verdict.confirmed(METHOD);
  }

  private static RationalFunction defined(RationalFunction side, NormalForm normalForm) {
    if (!side.isPolynomial() && normalForm.isZero(side.denominator())) {
      throw Unevaluable.zeroDenominator("a denominator is zero on the roots");
    }
    return side;
  }

  private static Verdict hasRoots(Claim.HasRoots claim) {
    Setting setting = claim.setting();
    ImagePolynomial image = ImagePolynomial.of(claim.map(), setting);
    if (image instanceof ImagePolynomial.None none) {
      return new Verdict.Undecided(none.why());
    } else if (image instanceof ImagePolynomial.Refused refused) {
      return new Verdict.Undecided(refused.why());
    }
    Polynomial found = ((ImagePolynomial.Found) image).polynomial();
    return found.primitive().equals(claim.image().primitive())
        ? Verdict.confirmed(METHOD)
        : new Verdict.Refuted("the images are the roots of " + found.primitive());
  }
}
