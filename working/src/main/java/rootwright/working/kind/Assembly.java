package rootwright.working.kind;

import java.util.List;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Route;
import rootwright.working.slip.Turning;
import rootwright.working.solve.Given;
import rootwright.working.solve.RouteRunner;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;

/** Puts together what every kind of ask has in common: routes, slips, statement. */
final class Assembly {

  private final List<Route> routes;
  private final List<Turning> slips;
  private final TwoChecks checks;

  Assembly(List<Route> routes, List<? extends Turning> slips, TwoChecks checks) {
    this.routes = List.copyOf(routes);
    this.slips = List.copyOf(slips);
    this.checks = checks;
  }

  /** Runs routes and slips on the ask and joins them to the findings. */
  Solution assemble(String kind, Asked asked, Findings findings, ClassProfile profile) {
    RouteRunner.Routed routed =
        new RouteRunner(checks).run(routes, asked, findings.goal(), profile);
    SlipRunner.Slipped slipped = SlipRunner.run(slips, asked, findings.goal());
    return solution(kind, asked.problem(), findings, routed, slipped);
  }

  /** Joins findings alone, for an ask that no route can start on. */
  static Solution withoutRoutes(String kind, Problem problem, Findings findings) {
    return solution(
        kind,
        problem,
        findings,
        new RouteRunner.Routed(List.of(), List.of()),
        new SlipRunner.Slipped(List.of(), List.of()));
  }

  private static Solution solution(
      String kind,
      Problem problem,
      Findings findings,
      RouteRunner.Routed routed,
      SlipRunner.Slipped slipped) {
    return Solution.of(
            kind,
            Given.of(problem),
            StatementInWords.of(problem),
            findings.answer(),
            findings.second())
        .withReduced(findings.reduced())
        .withConditions(findings.conditions())
        .withWarnings(findings.warnings())
        .with(routed, slipped);
  }
}
