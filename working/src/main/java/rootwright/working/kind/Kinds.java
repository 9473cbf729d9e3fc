package rootwright.working.kind;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.OutOfReachException;
import rootwright.working.ask.RealRange;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.DiscriminantRoutes;
import rootwright.working.route.ImageRoutes;
import rootwright.working.route.RealRootRoutes;
import rootwright.working.route.ResidueRoutes;
import rootwright.working.route.RootRoutes;
import rootwright.working.route.Route;
import rootwright.working.route.Routes;
import rootwright.working.slip.ImageSlips;
import rootwright.working.slip.RealRootSlips;
import rootwright.working.slip.ResidueSlips;
import rootwright.working.slip.RootSlips;
import rootwright.working.slip.Slip;
import rootwright.working.slip.Slips;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.solve.UnconfirmedException;

/** All kinds of ask, in the order in which they are offered a problem. */
public final class Kinds {

  private final List<Kind> kinds;

  /** With the routes, slips and checks of the house. */
  public Kinds() {
    this(Routes.ALL, Slips.ALL, new TwoChecks());
  }

  /** With other routes, slips and checks. */
  public Kinds(List<Route> routes, List<Slip> slips, TwoChecks checks) {
    Assembly assembly = new Assembly(routes, slips, checks);
    kinds =
        List.of(
            new ResidueKind(new Assembly(ResidueRoutes.ALL, ResidueSlips.ALL, checks), checks),
            new DiscriminantKind(
                new Assembly(DiscriminantRoutes.before(routes), slips, checks), checks),
            new RootsKind(new Assembly(RootRoutes.ALL, RootSlips.ALL, checks)),
            counting(RealRange.ALL, checks),
            counting(RealRange.POSITIVE, checks),
            counting(RealRange.NEGATIVE, checks),
            new AllRealKind(
                new Assembly(RealRootRoutes.whetherAll(), RealRootSlips.WHETHER_ALL, checks)),
            new SumOfRealRootsKind(new Assembly(RealRootRoutes.SUMS, RealRootSlips.SUMS, checks)),
            new ReduceKind(assembly, checks),
            new PolynomialAnswerKind(
                "resolvent",
                Optional.of("T"),
                new Assembly(ImageRoutes.in(Optional.of("T")), List.of(), checks),
                checks),
            new PolynomialAnswerKind(
                "polynomial with roots",
                Optional.empty(),
                new Assembly(ImageRoutes.in(Optional.empty()), ImageSlips.ALL, checks),
                checks),
            new ValueKind(assembly, checks));
  }

  private static Kind counting(RealRange range, TwoChecks checks) {
    return new RealRootsKind(
        range, new Assembly(RealRootRoutes.counting(range), RealRootSlips.COUNTS, checks));
  }

  /**
   * Works a problem as the first kind that recognises its ask.
   *
   * @throws rootwright.working.solve.CheckFailedException if a check refutes something of ours
   */
  public Solution solve(Problem problem, ClassProfile profile) {
    if (problem.degree() < 1) {
      return WithoutRoots.solution(problem);
    }
    Kind kind = recognising(problem);
    try {
      return kind.solve(problem, profile);
    } catch (OutOfReachException far) {
      return BeyondLimits.tooLarge(kind.name(), problem, String.valueOf(far.getMessage()));
    } catch (UnconfirmedException unconfirmed) {
      return BeyondLimits.misshapen(kind.name(), problem, String.valueOf(unconfirmed.getMessage()));
    }
  }

  /** The names of all kinds, in the order in which they are offered a problem. */
  public List<String> names() {
    return kinds.stream().map(Kind::name).toList();
  }

  /** The name of the kind of ask of a problem, without working it. */
  public String nameFor(Problem problem) {
    return recognising(problem).name();
  }

  private Kind recognising(Problem problem) {
    return kinds.stream().filter(kind -> kind.recognises(problem)).findFirst().orElseThrow();
  }
}
