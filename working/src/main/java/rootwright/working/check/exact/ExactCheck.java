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
import rootwright.working.step.ClaimCases;
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
      return claim.choose(new BySort());
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
        kept.map(all -> all.in(new Place(setting.withoutFunctions(), letters)))
            .orElseGet(HashMap::new));
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

  /** What is done with each sort of claim. */
  private final class BySort implements ClaimCases<Verdict> {

    @Override
    public Verdict equal(Claim.Equal claim) {
      return ExactCheck.this.equal(claim);
    }

    @Override
    public Verdict equalWithLetters(Claim.EqualWithLetters claim) {
      return IdentityInLetters.of(claim);
    }

    @Override
    public Verdict hasRoots(Claim.HasRoots claim) {
      return ExactCheck.hasRoots(claim);
    }

    @Override
    public Verdict solutionSet(Claim.SolutionSet claim) {
      return SolutionSetByFactors.of(claim);
    }

    @Override
    public Verdict ascending(Claim.Ascending claim) {
      return OrderOfSurds.of(claim);
    }

    @Override
    public Verdict countOfRoots(Claim.CountOfRoots claim) {
      return SolutionSetByFactors.of(claim);
    }

    @Override
    public Verdict countInPlace(Claim.CountInPlace claim) {
      return CountsByDiscriminant.of(claim);
    }

    @Override
    public Verdict countsBetween(Claim.CountsBetween claim) {
      return CountsByDiscriminant.of(claim);
    }

    @Override
    public Verdict signOn(Claim.SignOn claim) {
      return SignBetweenZeros.of(claim);
    }

    @Override
    public Verdict extreme(Claim.Extreme claim) {
      return ExtremeBySigns.of(claim);
    }

    @Override
    public Verdict equalOverPairs(Claim.EqualOverPairs claim) {
      return PairsByResultants.of(claim);
    }

    @Override
    public Verdict systemSolutions(Claim.SystemSolutions claim) {
      return SystemByElimination.of(claim);
    }

    @Override
    public Verdict consequence(Claim.Consequence claim) {
      return ConsequenceByIdeal.of(claim);
    }

    @Override
    public Verdict argument(Claim.Argument claim) {
      return new Verdict.Undecided("an argument in words");
    }
  }
}
