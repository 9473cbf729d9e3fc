package rootwright.lesson.plan;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.check.Verdict;
import rootwright.working.problem.Problem;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** Formulas about the roots of one polynomial; both checks of the house decide. */
final class ProblemJudge implements LineJudge {

  private final Problem problem;
  private final Setting setting;
  private final Map<String, Known> known = new HashMap<>();
  private final Set<String> names = new HashSet<>();
  private final TwoChecks checks = new TwoChecks();

  ProblemJudge(Problem problem, Solution solution, List<Step> shown) {
    this.problem = problem;
    for (Working working : solution.routes()) {
      working.steps().forEach(this::know);
    }
    shown.forEach(this::know);
    setting = setting(shown);
    names.addAll(problem.roots());
    names.add(problem.unknown());
    names.addAll(setting.definitions().keySet());
    names.addAll(setting.free());
  }

  private void know(Step step) {
    know(step, step.shown());
    // A chain may be written in two lines; each says less than the whole.
    Chain.parts(step).forEach(part -> know(step, part));
    names.addAll(FormulaNames.in(step.shown()));
  }

  private void know(Step step, Formula shown) {
    known.put(
        PlainWriter.write(shown), new Known(shown, Optional.of(step.idea()), step.isArgument()));
  }

  /** The setting in which the last computed line of the route stands; it has all definitions. */
  private Setting setting(List<Step> shown) {
    Setting last = Setting.of(problem.polynomial(), problem.roots());
    for (Step step : shown) {
      if (step.claim() instanceof Claim.Equal equal) {
        last = equal.setting();
      }
    }
    return last;
  }

  @Override
  public Optional<Known> known(String written) {
    return Optional.ofNullable(known.get(written));
  }

  @Override
  public Set<String> letters() {
    return names;
  }

  @Override
  public List<String> roots() {
    return problem.roots();
  }

  @Override
  public Verdict equal(Formula.Relation equation) {
    boolean open = FormulaNames.in(equation).contains(problem.unknown());
    Setting itsOwn =
        open && !setting.free().contains(problem.unknown())
            ? setting.withFree(problem.unknown())
            : setting;
    try {
      return checks
          .confirm("the plan", equation, new Claim.Equal(itsOwn, equation.sides()))
          .<Verdict>map(second -> Verdict.confirmed(second.method()))
          .orElseGet(() -> new Verdict.Undecided("the two checks cannot say"));
    } catch (CheckFailedException refuted) {
      String message = String.valueOf(refuted.getMessage());
      return new Verdict.Refuted(message);
    }
  }
}
