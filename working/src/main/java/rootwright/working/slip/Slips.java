package rootwright.working.slip;

import java.util.List;

/** Every slip of the house; a new one registers itself here. */
public final class Slips {

  /** In the order of a page that lists them. */
  public static final List<Slip> ALL =
      List.of(
          new SignSlip(),
          new LeadForgotten(),
          new LeadHalfForgotten(),
          new GapBlind(),
          new ReadBackwards(),
          new SquareOfTheSum(),
          new OneCrossTerm(),
          new CrossSign(),
          new TwoRootHabit(),
          new NewtonCount(),
          new NewtonAllPlus(),
          new PowerSumZeroIsOne(),
          new ConstantOnce(),
          new ReciprocalOfTheSum(),
          new FractionFlipped(),
          new ReciprocalSign(),
          new SquareOfReciprocalsSum(),
          new ProductUndivided(),
          new ProductSign(),
          new ProductSpread(),
          new LogDerivativeFlipped(),
          new CoverUpUndivided(),
          new OneSignKept(),
          new DoubleRootOnce(),
          new RealRootsOnly(),
          new PairsTwiceOrHalf(),
          new ReductionSign(),
          new IndexOffByOne(),
          new TruncatedRecurrence(),
          new DiscriminantNormalisation());

  private Slips() {}
}
