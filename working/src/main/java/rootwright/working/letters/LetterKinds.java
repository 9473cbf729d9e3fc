package rootwright.working.letters;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.RouteOn;
import rootwright.working.slip.SlipOn;
import rootwright.working.solve.RouteRunner;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.NumberDomain;

/** What can be asked of a polynomial with letters. */
final class LetterKinds {

  private final TwoChecks checks;

  LetterKinds(TwoChecks checks) {
    this.checks = checks;
  }

  /**
   * Works a problem.
   *
   * @throws UnreadableException if nothing is given from which the letters could be found
   * @throws BeyondLettersException if it is too large
   */
  Solution solve(LetteredProblem problem, ClassProfile profile, String typed)
      throws UnreadableException {
    boolean equations =
        problem.conditions().stream()
            .anyMatch(
                condition ->
                    condition instanceof Condition.Zeros
                        || condition instanceof Condition.RootIs
                        || condition instanceof Condition.DividedBy);
    if (problem.ask() instanceof LetterAsk.Value value && !equations) {
      return function(problem, value.expression(), profile);
    }
    boolean region =
        !problem.conditions(Condition.AllRoots.class).isEmpty()
            || !problem.conditions(Condition.RealCount.class).isEmpty()
            || !problem.conditions(Condition.Placed.class).isEmpty();
    if (!equations && region && problem.polynomial().letters().size() == 1) {
      return problem.ask() instanceof LetterAsk.Extreme extreme
          ? extreme(problem, extreme, profile)
          : region(problem, profile);
    }
    if (!equations) {
      throw new UnreadableException(
          new Refusal(
              "condition-missing",
              "Nothing is given from which %s could be found."
                  .formatted(String.join(", ", problem.polynomial().letters())),
              typed,
              typed.codePointCount(0, typed.length()),
              "a condition behind “if”, such as “if r = 2s” or “if all roots real”",
              typed.strip() + " if r = 2s"));
    }
    if (problem.ask() instanceof LetterAsk.NumberOf && problem.polynomial().letters().size() > 1) {
      throw new BeyondLettersException("how many values there are is worked for one letter");
    }
    if (problem.ask() instanceof LetterAsk.Extreme) {
      throw new BeyondLettersException(
          "a least or greatest value is worked where the conditions are about the nature of the roots");
    }
    if (problem.ask() instanceof LetterAsk.Relation) {
      return relation(problem);
    }
    if (problem.polynomial().letters().size() > 1) {
      if (!(problem.ask() instanceof LetterAsk.Letters)) {
        throw new BeyondLettersException(
            "with several letters and conditions one may ask for the letters, or for the condition");
      }
      return system(problem, profile);
    }
    LettersAsked asked = new LettersAsked(problem, LetterSolution.of(problem));
    return problem.ask() instanceof LetterAsk.Value value
        ? valueUnderConditions(asked, value.expression(), profile)
        : letter(asked, profile);
  }

  /** All values of the letter at which the roots are of some nature. */
  private Solution region(LetteredProblem problem, ClassProfile profile) {
    RegionAsked asked = new RegionAsked(problem, LetterRegion.of(problem));
    Answer answer = asked.answer();
    List<Warning> warnings = new ArrayList<>();
    if (answer instanceof Answer.Solutions set && set.values().isEmpty()) {
      warnings.add(
          new Warning(
              WarningCode.NO_PARAMETER,
              "No value of %s satisfies the condition; “no such value” is the answer."
                  .formatted(asked.letter())));
    } else if (answer instanceof Answer.Solutions set && set.values().size() > 1) {
      warnings.add(
          new Warning(
              WarningCode.SEVERAL_PARAMETERS,
              "%d values of %s satisfy the condition; ask for all of them."
                  .formatted(set.values().size(), asked.letter())));
    }
    LetterWarnings.lead(problem).ifPresent(warnings::add);
    RegionWarnings.ends(asked).ifPresent(warnings::add);
    return solution("letter-region", problem, answer, List.of(), warnings, confirm(asked))
        .with(
            new RouteRunner(checks)
                .run(
                    List.of(new RegionBySigns(), new RegionByDiscriminant()),
                    asked,
                    answer,
                    profile),
            SlipRunner.run(RegionSlips.ALL, asked, answer));
  }

  private SecondOpinion confirm(RegionAsked asked) {
    for (ExactValue end : asked.region().ends()) {
      RegionByDiscriminant.endLines(asked, end)
          .forEach(step -> checks.require(step.shown(), step.claim()));
    }
    return RegionByDiscriminant.counts(asked).stream()
        .map(step -> checks.require(step.shown(), step.claim()))
        .reduce((first, second) -> second)
        .orElseThrow();
  }

  /** The least or greatest value of an expression where the roots are of some nature. */
  private Solution extreme(LetteredProblem problem, LetterAsk.Extreme ask, ClassProfile profile) {
    RegionAsked region = new RegionAsked(problem, LetterRegion.of(problem));
    if (region.wholeNumbers()) {
      return firstWhole(region, ask, profile);
    }
    Formula expression = Meaning.of(ask.expression(), problem);
    RationalFunction function =
        FunctionAsked.valueOf(expression, problem.polynomial(), problem.roots())
            .orElseThrow(
                () ->
                    new BeyondLettersException(
                        "only an expression that is symmetric in the roots has a least or greatest value here"));
    checks.require(
        expression,
        Claim.equal(
            problem.setting(),
            expression,
            InLetters.formula(function, problem.polynomial().letters())));
    SecondOpinion counted = confirm(region);
    ExtremeAsked asked = ExtremeAsked.of(region, ask, function);
    List<Warning> warnings = new ArrayList<>();
    LetterWarnings.lead(problem).ifPresent(warnings::add);
    Optional<ExtremeAsked.Attained> best = asked.best();
    Optional<Claim> claim = asked.claim();
    if (best.isEmpty() || claim.isEmpty()) {
      warnings.add(0, new Warning(WarningCode.NO_PARAMETER, asked.why() + "."));
      return solution(
          "extreme", problem, new Answer.None(asked.why()), List.of(), warnings, counted);
    }
    Answer answer = new Answer.Exact(best.get().value());
    List<String> conditions =
        List.of(
            "%s = %s, where it is attained"
                .formatted(region.letter(), LetterSolution.text(best.get().letter())));
    SecondOpinion second = checks.require(ask.shown(), claim.get());
    return solution("extreme", problem, answer, conditions, warnings, second)
        .with(
            new RouteRunner(checks).run(ExtremeRoutes.ALL, asked, answer, profile),
            SlipRunner.run(ExtremeRoutes.SLIPS, asked, answer));
  }

  /** The least or greatest whole number for the letter. */
  private Solution firstWhole(RegionAsked asked, LetterAsk.Extreme ask, ClassProfile profile) {
    LetteredProblem problem = asked.problem();
    if (!ask.expression().equals(Formula.name(asked.letter()))) {
      throw new BeyondLettersException(
          "for whole numbers the least or greatest value is worked for the letter itself");
    }
    SecondOpinion second = confirm(asked);
    Optional<ExactValue> first = WholeNumbers.first(asked.region().pieces(), ask.side());
    if (first.isEmpty()) {
      String why = "there is no %s whole number with the condition".formatted(ask.word());
      return solution(
          "extreme",
          problem,
          new Answer.None(why),
          List.of(),
          List.of(new Warning(WarningCode.NO_PARAMETER, why + ".")),
          second);
    }
    Answer answer = new Answer.Exact(first.get());
    List<RouteOn<RegionAsked>> routes = List.of(new FirstWholeNumber(ask.word(), first.get()));
    return solution("extreme", problem, answer, List.of(), List.of(), second)
        .with(
            new RouteRunner(checks).run(routes, asked, answer, profile),
            new SlipRunner.Slipped(List.of(), List.of()));
  }

  /** What the one condition says of the letters. */
  private Solution relation(LetteredProblem problem) {
    List<LetterEquation> equations = new LetterEquations(problem).all();
    if (equations.size() != 1 || equations.get(0).shape() == LetterEquation.Shape.JOINT) {
      throw new BeyondLettersException(
          "the condition between the letters is worked for one equation");
    }
    LetterEquation equation = equations.get(0);
    SecondOpinion second = checks.require(equation.expression(), equation.claim());
    Formula written = equation.written();
    RationalFunction value =
        written instanceof Formula.Negative
                || (written instanceof Formula.Sum sum
                    && sum.terms().get(0) instanceof Formula.Negative)
            ? equation.value().negate()
            : equation.value();
    Formula numerator = InLetters.formula(value.numerator(), problem.polynomial().letters());
    Answer answer = new Answer.FunctionOf(Formula.equation(numerator, Formula.number(0)));
    List<Warning> warnings = new ArrayList<>();
    LetterWarnings.lead(problem).ifPresent(warnings::add);
    return solution("relation", problem, answer, List.of(), warnings, second)
        .with(
            new RouteRunner(checks)
                .run(
                    List.of(new RelationRoute(equation, answer)),
                    problem,
                    answer,
                    ClassProfile.EVERYTHING),
            new SlipRunner.Slipped(List.of(), List.of()));
  }

  /** Several letters together. */
  private Solution system(LetteredProblem problem, ClassProfile profile) {
    SystemAsked asked = SystemAsked.of(problem);
    for (LetterEquation equation : asked.equations()) {
      checks.require(equation.expression(), equation.claim());
    }
    List<Warning> warnings = new ArrayList<>();
    for (String reason : asked.reasons()) {
      warnings.add(
          new Warning(
              WarningCode.EXTRANEOUS,
              "A solution of the equations is thrown out: %s.".formatted(reason)));
    }
    if (asked.kept().isEmpty()) {
      warnings.add(
          new Warning(
              WarningCode.NO_PARAMETER,
              "No values of the letters are left; “no such value” is the answer."));
    } else if (asked.kept().size() > 1) {
      warnings.add(
          new Warning(
              WarningCode.SEVERAL_PARAMETERS,
              "%d solutions satisfy the conditions; ask for all of them."
                  .formatted(asked.kept().size())));
    }
    LetterWarnings.lead(problem).ifPresent(warnings::add);
    SecondOpinion second = checks.require(problem.ask().shown(), asked.claim());
    return solution("letters", problem, asked.answer(), List.of(), warnings, second)
        .with(
            new RouteRunner(checks).run(List.of(new SystemRoute()), asked, asked.answer(), profile),
            new SlipRunner.Slipped(List.of(), List.of()));
  }

  /** An expression as a function of the letters. */
  private Solution function(LetteredProblem problem, Formula ask, ClassProfile profile) {
    List<Warning> warnings = new ArrayList<>();
    LetterWarnings.lead(problem).ifPresent(warnings::add);
    Formula expression = Meaning.of(ask, problem);
    Optional<RationalFunction> value =
        FunctionAsked.valueOf(expression, problem.polynomial(), problem.roots());
    if (value.isEmpty()) {
      warnings.add(
          0,
          new Warning(
              WarningCode.NOT_SYMMETRIC,
              "The expression changes when two roots are exchanged, so it is no function of the coefficients. A sum over all namings would be."));
      return solution(
          "function",
          problem,
          new Answer.None("the value depends on which root has which name"),
          List.of(),
          warnings,
          SecondOpinion.NOTHING_TO_CHECK);
    }
    FunctionAsked asked = new FunctionAsked(problem, expression, value.get());
    Answer answer = new Answer.FunctionOf(asked.written());
    SecondOpinion second =
        checks.require(expression, Claim.equal(problem.setting(), expression, asked.written()));
    return solution("function", problem, answer, conditions(asked), warnings, second)
        .with(
            new RouteRunner(checks).run(FunctionRoutes.ALL, asked, answer, profile),
            SlipRunner.run(FunctionSlips.ALL, asked, answer));
  }

  private static List<String> conditions(FunctionAsked asked) {
    List<String> letters = asked.problem().polynomial().letters();
    List<String> conditions = new ArrayList<>();
    MultivariatePolynomial lead = asked.problem().polynomial().lead();
    if (!lead.isConstant()) {
      conditions.add(UnicodeWriter.write(InLetters.formula(lead, letters)) + " ≠ 0");
    }
    MultivariatePolynomial under = asked.value().denominator();
    if (!under.isConstant()) {
      String words = UnicodeWriter.write(InLetters.formula(under, letters)) + " ≠ 0";
      if (!conditions.contains(words)) {
        conditions.add(words);
      }
    }
    return conditions;
  }

  /** All values of the letter. */
  private Solution letter(LettersAsked asked, ClassProfile profile) {
    LetteredProblem problem = asked.problem();
    if (asked.solution().isAlwaysTrue()) {
      return always(asked);
    }
    Answer answer = asked.answer();
    SecondOpinion second = confirm(asked);
    return solution("letters", problem, answer, List.of(), LetterWarnings.of(asked), second)
        .with(
            new RouteRunner(checks).run(LettersRoutes.ALL, asked, answer, profile),
            SlipRunner.run(LetterSlips.ALL, asked, answer));
  }

  private Solution always(LettersAsked asked) {
    for (LetterEquation equation : asked.solution().equations()) {
      checks.require(equation.expression(), equation.claim());
    }
    String words = "every value of " + asked.letter();
    return solution(
        "letters",
        asked.problem(),
        new Answer.Interval(new Formula.Words(words)),
        List.of(),
        List.of(
            new Warning(
                WarningCode.SEVERAL_PARAMETERS,
                "The condition holds whatever %s is, so it fixes nothing."
                    .formatted(asked.letter()))),
        checks.require(
            asked.solution().equations().get(0).expression(),
            asked.solution().equations().get(0).claim()));
  }

  /** Every equation, the solution set of what they have in common, and every root count. */
  private SecondOpinion confirm(LettersAsked asked) {
    LetterSolution solution = asked.solution();
    for (LetterEquation equation : solution.equations()) {
      checks.require(equation.expression(), equation.claim());
    }
    for (Candidate candidate : solution.candidates()) {
      JudgedLines.rootsLines(asked, candidate)
          .forEach(step -> checks.require(step.shown(), step.claim()));
    }
    return checks.require(
        asked.problem().ask().shown(),
        new Claim.SolutionSet(
            solution.common(), NumberDomain.COMPLEX, ConditionInLetter.all(solution)));
  }

  /** The values of an expression at all values of the letter that the conditions leave. */
  private Solution valueUnderConditions(LettersAsked asked, Formula ask, ClassProfile profile) {
    LetteredProblem problem = asked.problem();
    Formula expression = Meaning.of(ask, problem);
    RationalFunction value =
        FunctionAsked.valueOf(expression, problem.polynomial(), problem.roots())
            .orElseThrow(
                () ->
                    new BeyondLettersException(
                        "under conditions, only expressions that are symmetric in the roots are worked"));
    if (asked.solution().isAlwaysTrue()) {
      throw new BeyondLettersException("the conditions hold for every value of the letter");
    }
    checks.require(
        expression,
        Claim.equal(
            problem.setting(),
            expression,
            InLetters.formula(value, problem.polynomial().letters())));
    SecondOpinion second = confirm(asked);
    Set<ExactValue> values = new LinkedHashSet<>();
    for (ExactValue letter : asked.solution().kept()) {
      values.add(ValueAtLetter.of(value, letter));
    }
    List<ExactValue> ordered = new ArrayList<>(values);
    ordered.sort(ExactValues.order());
    Answer answer = new Answer.Solutions(ordered);
    List<RouteOn<LettersAsked>> routes = List.of(new ValueByLetter(expression, value, ordered));
    List<SlipOn<LettersAsked>> slips = List.of();
    return solution(
            "value-under-conditions", problem, answer, List.of(), LetterWarnings.of(asked), second)
        .with(
            new RouteRunner(checks).run(routes, asked, answer, profile),
            SlipRunner.run(slips, asked, answer));
  }

  private static Solution solution(
      String kind,
      LetteredProblem problem,
      Answer answer,
      List<String> conditions,
      List<Warning> warnings,
      SecondOpinion second) {
    return Solution.of(kind, problem.given(), LetterStatement.of(problem), answer, second)
        .withConditions(conditions)
        .withWarnings(warnings);
  }
}
