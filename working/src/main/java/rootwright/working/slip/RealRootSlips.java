package rootwright.working.slip;

import java.util.List;

/** The slips on asks about real roots; a new one registers itself here. */
public final class RealRootSlips {

  /** On the number of real roots, or of those of one sign. */
  public static final List<Turning> COUNTS =
      List.of(new RuleTakenAsCount(), new EveryRootCounted());

  /** On whether all roots are real. */
  public static final List<Turning> WHETHER_ALL = List.of(new SquaresPositiveMeansReal());

  /** On the sum over the real roots. */
  public static final List<Turning> SUMS = List.of(new AllRoots());

  private RealRootSlips() {}
}
