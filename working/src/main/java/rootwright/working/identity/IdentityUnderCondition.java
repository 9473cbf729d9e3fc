package rootwright.working.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/** “Prove r³ + s³ + t³ = 3rst if r + s + t = 0”: a proof by reduction, or an example against it. */
public final class IdentityUnderCondition implements Subject {

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return inquiry.polynomial().isEmpty()
        && inquiry.ask().length() < 2_000
        && ConjectureReader.isClaim(inquiry.ask());
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(ConjectureReader.read(inquiry));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Conjecture conjecture = ConjectureReader.read(inquiry);
    Optional<Ideal> conditions =
        Ideal.of(Proof.equations(conjecture), conjecture.letters().size() + 1);
    if (conditions.map(Ideal::isEverything).orElse(false)) {
      return undecided(
          conjecture,
          "no numbers satisfy the conditions",
          new Warning(
              WarningCode.CONTRADICTORY,
              "The conditions contradict one another, so nothing can be asked under them."));
    }
    List<Proof> proofs = new ArrayList<>();
    for (Equation claim : conjecture.claims()) {
      Proof.of(conjecture, claim).ifPresent(proofs::add);
    }
    if (proofs.size() == conjecture.claims().size()) {
      return proved(conjecture, proofs, profile);
    }
    return Counterexample.of(conjecture)
        .map(example -> refuted(conjecture, example, profile))
        .orElseGet(() -> open(conjecture));
  }

  private Solution proved(Conjecture conjecture, List<Proof> proofs, ClassProfile profile) {
    ProofRoutes routes = new ProofRoutes(conjecture, proofs);
    List<Warning> warnings = new ArrayList<>();
    boolean always = conjecture.claims().stream().allMatch(claim -> claim.cleared().isZero());
    if (always && !conjecture.conditions().isEmpty()) {
      warnings.add(
          new Warning(
              WarningCode.REDUNDANT, "The claim always holds; the condition is not needed."));
    }
    List<Working> workings = new ArrayList<>();
    List<Solution.DeclinedRoute> declined = new ArrayList<>();
    Optional<SecondOpinion> second = Optional.empty();
    for (Working working : routes.workings()) {
      Optional<SecondOpinion> opinion = confirmed(working);
      second = opinion.isPresent() ? opinion : second;
      if (!profile.has(working.route())) {
        declined.add(
            new Solution.DeclinedRoute(
                working.route(), working.title(), "this class does not have it yet"));
      } else if (opinion.isPresent()) {
        workings.add(working);
      }
    }
    if (second.isEmpty()) {
      return undecided(
          conjecture,
          "a proof was found that is too long to be checked twice",
          new Warning(WarningCode.DOMAIN_OPEN, "Try fewer letters or lower powers."));
    }
    workings.sort(Working.CHEAPEST_FIRST);
    return solution(conjecture, new Answer.Truth(true), warnings, workings, declined, second.get());
  }

  private Solution refuted(Conjecture conjecture, Counterexample example, ClassProfile profile) {
    Refutation refutation = new Refutation(conjecture, example);
    Working working = refutation.working();
    SecondOpinion second = confirmed(working).orElseThrow();
    boolean taught = profile.has(working.route());
    return solution(
        conjecture,
        new Answer.Truth(false),
        List.of(),
        taught ? List.of(working) : List.of(),
        List.of(),
        second);
  }

  /** Neither a proof nor an example. */
  private static Solution open(Conjecture conjecture) {
    boolean restricted =
        conjecture.domain().filter(domain -> domain != NumberDomain.COMPLEX).isPresent();
    boolean fails =
        conjecture.claims().stream()
            .anyMatch(claim -> Proof.fails(conjecture, claim).orElse(false));
    String why =
        fails
            ? "over the complex numbers the claim does not follow, but no example against it was found in small numbers"
            : "the equations are too hard to be reduced here";
    return undecided(
        conjecture,
        why,
        new Warning(
            WarningCode.DOMAIN_OPEN,
            restricted
                ? "The claim may hold for %s all the same; that is not decided here."
                    .formatted(conjecture.domain().orElseThrow().words())
                : "Say which numbers are meant, or add a condition."));
  }

  private Optional<SecondOpinion> confirmed(Working working) {
    Optional<SecondOpinion> last = Optional.empty();
    for (Step step : working.steps()) {
      if (!step.isArgument()) {
        last = checks.confirm("route " + working.route(), step.shown(), step.claim());
        if (last.isEmpty()) {
          return last;
        }
      }
    }
    return last;
  }

  private static Solution undecided(Conjecture conjecture, String why, Warning warning) {
    return Solution.none("identity", given(conjecture), statement(conjecture, false), why)
        .withWarnings(List.of(warning));
  }

  private static Solution solution(
      Conjecture conjecture,
      Answer.Truth answer,
      List<Warning> warnings,
      List<Working> routes,
      List<Solution.DeclinedRoute> declined,
      SecondOpinion second) {
    SlipRunner.Slipped slipped = SlipRunner.run(IdentitySlips.ALL, conjecture, answer);
    List<String> conditions =
        conjecture.mustNotVanish().isConstant()
            ? List.of()
            : List.of("that no denominator is zero and what is said to differ does");
    return Solution.of(
            "identity", given(conjecture), statement(conjecture, answer.holds()), answer, second)
        .withConditions(conditions)
        .withWarnings(warnings)
        .withRoutes(routes)
        .withDeclined(declined)
        .withSlips(slipped);
  }

  private static String statement(Conjecture conjecture, boolean holds) {
    return "%s %s %s."
        .formatted(
            conjecture.inWords(),
            holds ? "Prove that" : "Prove or refute:",
            UnicodeWriter.write(conjecture.claimed()));
  }

  private static Given given(Conjecture conjecture) {
    Formula nothing = new Formula.Words("");
    return new Given(
        nothing,
        nothing,
        "",
        conjecture.letters(),
        conjecture.claimed(),
        conjecture.shownConditions(),
        List.of());
  }
}
