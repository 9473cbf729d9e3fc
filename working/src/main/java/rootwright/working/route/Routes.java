package rootwright.working.route;

import java.util.List;

/** Every route of the house; a new one registers itself here. */
public final class Routes {

  /** In the order of the names a coach meets first. */
  public static final List<Route> ALL =
      List.of(
          new ReadOff(),
          new BuildFromElementary(),
          new NewtonSums(),
          new ReducePowers(),
          new Recurrence(),
          new MultiplySums(),
          new ReciprocalOfRoot(),
          new EvaluateAtPoint(),
          new EvaluateAtZeros(),
          new LogDerivative(),
          new TransformRoots(),
          new PartialFractions(),
          new InvertDenominator(),
          new InterpolateAtRoots(),
          new EulerSums(),
          new ReversedSums(),
          new PassToPairs(),
          new Substitute(),
          new SplitOffRationalRoot(),
          new PairUp(),
          new SumAndDifference());

  private Routes() {}
}
