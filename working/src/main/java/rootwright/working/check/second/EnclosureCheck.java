package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import rootwright.algebra.enclosure.BallContainsZeroException;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Dyadic;
import rootwright.algebra.enclosure.Precision;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.check.ClaimCheck;
import rootwright.working.check.Nameless;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.ClaimCases;
import rootwright.working.step.Setting;

/**
 * The second opinion: a claim is confirmed when both sides, evaluated on certified enclosures of
 * the roots and carried as balls, agree to 30 digits.
 *
 * <p>It shares the reader and the number types with the exact check and nothing else.
 */
public final class EnclosureCheck implements ClaimCheck {

  /**
   * Decimal digits to which the two sides must agree, relative to the larger of 1 and the value.
   */
  public static final int DIGITS = 30;

  private static final String METHOD = "certified enclosures of the roots";
  private static final String SAMPLED = METHOD + ", sampled at five values of the free letter";
  private static final String SAMPLED_LETTERS = METHOD + ", sampled at five values of the letters";
  private static final Rational TOLERANCE = Rational.of(10).power(-DIGITS);
  private static final int[] PRECISIONS = {50, 120, 400, 1500};
  private static final long SEED = 20_260_101L;
  private static final int SAMPLES = 5;

  /** A sample is a number between these over that prime: a fraction between 1 and 11. */
  private static final int LEAST_OVER = 101;

  private static final int MOST_OVER = 997;
  private static final int UNDER = 97;

  /** What evaluating a long formula may lose. */
  private static final int SPARE_BITS = 24;

  /** Below 10⁻³⁰, so that a radius up to it needs no look at the size of the value. */
  private static final Dyadic SURELY_NARROW = Dyadic.powerOfTwo(-100);

  /** The setting, the numbers put for the free letters, and the precision. */
  private record Place(Setting setting, Map<String, Rational> letters, int digits) {}

  private final KnownEnclosures enclosures;
  private final Optional<Nameless<Place, ComplexBall>> kept;

  /** A check that keeps the enclosures of the last few polynomials. */
  public EnclosureCheck() {
    this(new KnownEnclosures(), Optional.empty());
  }

  private EnclosureCheck(KnownEnclosures enclosures, Optional<Nameless<Place, ComplexBall>> kept) {
    this.enclosures = enclosures;
    this.kept = kept;
  }

  @Override
  public ClaimCheck forOneProblem() {
    return new EnclosureCheck(enclosures, Optional.of(new Nameless<>()));
  }

  private Map<Formula, ComplexBall> nameless(
      Setting setting, Map<String, Rational> letters, int digits) {
    return kept.map(all -> all.in(new Place(setting.withoutFunctions(), letters, digits)))
        .orElseGet(HashMap::new);
  }

  @Override
  public Verdict of(Claim claim) {
    Verdict verdict = new Verdict.Undecided("an argument in words");
    if (claim instanceof Claim.Argument) {
      return verdict;
    }
    for (int digits : PRECISIONS) {
      try {
        verdict = claim.choose(new ToDigits(digits));
      } catch (Unbounded stuck) {
        return new Verdict.Undecided(String.valueOf(stuck.getMessage()));
      } catch (BallContainsZeroException close) {
        verdict = new Verdict.Undecided("a denominator cannot be told from zero");
      }
      if (!(verdict instanceof Verdict.Undecided)) {
        return verdict;
      }
    }
    return verdict;
  }

  private Verdict equal(Claim.Equal claim, int digits) {
    Setting setting = claim.setting();
    for (Map<String, Rational> letters : samples(setting.free())) {
      Verdict verdict = equalAt(setting, claim.sides(), letters, digits);
      if (!verdict.isConfirmed()) {
        return verdict;
      }
    }
    return Verdict.confirmed(
        switch (setting.free().size()) {
          case 0 -> METHOD;
          case 1 -> SAMPLED;
          default -> SAMPLED_LETTERS;
        },
        DIGITS);
  }

  private Verdict equal(Claim.EqualWithLetters claim, int digits) {
    for (Map<String, Rational> letters : samples(claim.setting().letters())) {
      Optional<Setting> special = claim.setting().at(letters);
      if (special.isEmpty()) {
        return new Verdict.Undecided("the lead coefficient is zero at a sample");
      }
      Verdict verdict = equalAt(special.get(), claim.sides(), letters, digits);
      if (!verdict.isConfirmed()) {
        return verdict;
      }
    }
    return Verdict.confirmed(SAMPLED_LETTERS, DIGITS);
  }

  private Verdict equalAt(
      Setting setting, List<Formula> sides, Map<String, Rational> letters, int digits) {
    Map<Formula, ComplexBall> nameless = nameless(setting, letters, digits);
    for (Labelling labelling : labellings(setting, sides, digits)) {
      Verdict verdict =
          equalAt(sides, new BallEvaluation(setting, labelling, letters, bits(digits), nameless));
      if (!verdict.isConfirmed()) {
        return verdict;
      }
    }
    return Verdict.confirmed(METHOD, DIGITS);
  }

  private static Verdict equalAt(List<Formula> sides, BallEvaluation evaluation) {
    ComplexBall left = evaluation.of(sides.get(0));
    for (Formula side : sides.subList(1, sides.size())) {
      ComplexBall right = evaluation.of(side);
      Verdict verdict = zero(left.minus(right), right);
      if (!verdict.isConfirmed()) {
        return verdict;
      }
      left = right;
    }
    return Verdict.confirmed(METHOD, DIGITS);
  }

  private static Verdict ascending(Claim.Ascending claim, int digits) {
    for (int k = 1; k < claim.sides().size(); k++) {
      ComplexBall left = Enclosed.of(claim.sides().get(k - 1), digits);
      ComplexBall right = Enclosed.of(claim.sides().get(k), digits);
      ComplexBall gap = right.minus(left);
      if (!gap.imaginaryCentre().isZero() || gap.real().isNegative()) {
        return new Verdict.Refuted("the enclosures stand in another order");
      } else if (!gap.real().isPositive()) {
        return new Verdict.Undecided("the enclosures cannot be told apart");
      }
    }
    return Verdict.confirmed("enclosures of both sides", digits);
  }

  private Verdict hasRoots(Claim.HasRoots claim, int digits) {
    int bits = bits(digits);
    Map<Formula, ComplexBall> nameless = new HashMap<>();
    Labelling labelling = new Labelling(enclosures.of(claim.setting().polynomial(), digits));
    List<ComplexBall> product = new ArrayList<>(List.of(ComplexBall.ONE));
    for (int[] image : Images.of(claim.map(), claim.setting())) {
      ComplexBall root =
          new BallEvaluation(claim.setting(), labelling.permuted(image), Map.of(), bits, nameless)
              .of(claim.map());
      product.add(ComplexBall.ONE);
      for (int k = product.size() - 2; k >= 0; k--) {
        ComplexBall shifted = k == 0 ? ComplexBall.ZERO : product.get(k - 1);
        product.set(k, shifted.minus(product.get(k).times(root)));
      }
    }
    Polynomial monic = claim.image().monic();
    if (monic.degree() != product.size() - 1) {
      return new Verdict.Refuted(
          "there are %d images, not %d".formatted(product.size() - 1, monic.degree()));
    }
    for (int k = 0; k < monic.degree(); k++) {
      ComplexBall claimed = ComplexBall.of(monic.coefficient(k), bits);
      Verdict verdict = zero(product.get(k).minus(claimed), claimed);
      if (!verdict.isConfirmed()) {
        return verdict;
      }
    }
    return Verdict.confirmed(METHOD, DIGITS);
  }

  /** Every root of the one with every root of the other. */
  private Verdict overPairs(Claim.EqualOverPairs claim, int digits) {
    int bits = bits(digits);
    Setting shape =
        new Setting(Polynomial.X.power(2), claim.names(), Map.of(), Map.of(), List.of());
    boolean sum = claim.aggregate().operation() == Formula.Aggregate.Operation.SUM;
    ComplexBall total = sum ? ComplexBall.ZERO : ComplexBall.ONE;
    for (ComplexBall r : enclosures.of(claim.first().polynomial(), digits)) {
      for (ComplexBall s : enclosures.of(claim.second(), digits)) {
        ComplexBall value =
            new BallEvaluation(shape, new Labelling(List.of(r, s)), Map.of(), bits)
                .of(claim.aggregate().body());
        total = sum ? total.plus(value) : total.times(value);
      }
    }
    Labelling labelling = new Labelling(enclosures.of(claim.first().polynomial(), digits));
    ComplexBall value =
        new BallEvaluation(claim.first(), labelling, Map.of(), bits).of(claim.value());
    return zero(total.minus(value), value);
  }

  private static Verdict zero(ComplexBall difference, ComplexBall value) {
    if (!difference.containsZero()) {
      return new Verdict.Refuted("the enclosures of the two sides are apart");
    }
    if (difference.radius().compareTo(SURELY_NARROW) <= 0) {
      return Verdict.confirmed(METHOD, DIGITS);
    }
    Rational size = value.absolute(64).high().toRational();
    Rational allowed = TOLERANCE.times(size.compareTo(Rational.ONE) > 0 ? size : Rational.ONE);
    return difference.radius().toRational().compareTo(allowed) <= 0
        ? Verdict.confirmed(METHOD, DIGITS)
        : new Verdict.Undecided("the enclosures are not narrow enough");
  }

  /** One labelling where names do not matter; else every turn of the names and one exchange. */
  private List<Labelling> labellings(Setting setting, List<Formula> sides, int digits) {
    Labelling first = new Labelling(enclosures.of(setting.polynomial(), digits));
    int n = setting.polynomial().degree();
    List<Labelling> all = new ArrayList<>(List.of(first));
    boolean named = sides.stream().anyMatch(side -> dependsOnNames(side, setting));
    if (named && n > 1) {
      for (int turn = 1; turn < n; turn++) {
        int shift = turn;
        int[] to = new int[n];
        Arrays.setAll(to, k -> (k + shift) % n);
        all.add(first.permuted(to));
      }
      int[] exchange = new int[n];
      Arrays.setAll(exchange, k -> k == 0 ? 1 : k == 1 ? 0 : k);
      all.add(first.permuted(exchange));
    }
    return all;
  }

  /** Under Σ and Π a name stands for every root in turn, so nothing depends on it. */
  private static boolean dependsOnNames(Formula formula, Setting setting) {
    if (formula instanceof Formula.Name name) {
      return setting.roots().contains(name.spelling())
          || setting.definitions().containsKey(name.spelling());
    }
    return !(formula instanceof Formula.Aggregate)
        && formula.parts().stream().anyMatch(part -> dependsOnNames(part, setting));
  }

  /** Numbers to put for the free letters: between 1 and 11, over a prime so that little cancels. */
  private static List<Map<String, Rational>> samples(List<String> free) {
    if (free.isEmpty()) {
      return List.of(Map.of());
    }
    SplittableRandom random = new SplittableRandom(SEED);
    List<Map<String, Rational>> samples = new ArrayList<>();
    for (int k = 0; k < SAMPLES; k++) {
      Map<String, Rational> sample = new HashMap<>();
      for (String letter : free) {
        sample.put(letter, Rational.of(random.nextLong(LEAST_OVER, MOST_OVER), UNDER));
      }
      samples.add(sample);
    }
    return samples;
  }

  private static int bits(int digits) {
    return Precision.bits(digits) + SPARE_BITS;
  }

  /** What is done with each sort of claim, at a number of digits. */
  private final class ToDigits implements ClaimCases<Verdict> {

    private final int digits;

    ToDigits(int digits) {
      this.digits = digits;
    }

    @Override
    public Verdict equal(Claim.Equal claim) {
      return EnclosureCheck.this.equal(claim, digits);
    }

    @Override
    public Verdict equalWithLetters(Claim.EqualWithLetters claim) {
      return EnclosureCheck.this.equal(claim, digits);
    }

    @Override
    public Verdict hasRoots(Claim.HasRoots claim) {
      return EnclosureCheck.this.hasRoots(claim, digits);
    }

    @Override
    public Verdict solutionSet(Claim.SolutionSet claim) {
      return SolutionSetByEnclosures.of(claim);
    }

    @Override
    public Verdict ascending(Claim.Ascending claim) {
      return EnclosureCheck.ascending(claim, digits);
    }

    @Override
    public Verdict countOfRoots(Claim.CountOfRoots claim) {
      return SolutionSetByEnclosures.of(claim);
    }

    @Override
    public Verdict countInPlace(Claim.CountInPlace claim) {
      return RegionSamples.of(claim);
    }

    @Override
    public Verdict countsBetween(Claim.CountsBetween claim) {
      return RegionSamples.of(claim);
    }

    @Override
    public Verdict signOn(Claim.SignOn claim) {
      return RegionSamples.of(claim);
    }

    @Override
    public Verdict extreme(Claim.Extreme claim) {
      return RegionSamples.of(claim);
    }

    @Override
    public Verdict equalOverPairs(Claim.EqualOverPairs claim) {
      return overPairs(claim, digits);
    }

    @Override
    public Verdict systemSolutions(Claim.SystemSolutions claim) {
      return SystemByDeterminants.of(claim);
    }

    @Override
    public Verdict consequence(Claim.Consequence claim) {
      return ConsequenceAtZeros.of(claim);
    }

    @Override
    public Verdict argument(Claim.Argument claim) {
      return new Verdict.Undecided("an argument in words");
    }
  }
}
