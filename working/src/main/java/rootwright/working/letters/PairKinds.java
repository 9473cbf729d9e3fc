package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Resultant;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.PairsByResultants;
import rootwright.working.check.exact.Unevaluable;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.RouteRunner;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;

/** What can be asked of two polynomials. */
final class PairKinds {

  private final TwoChecks checks;

  PairKinds(TwoChecks checks) {
    this.checks = checks;
  }

  /**
   * Works a problem.
   *
   * @throws UnreadableException if letters stand where numbers are needed
   * @throws BeyondLettersException if it is too large
   */
  Solution solve(PairProblem problem, ClassProfile profile, String typed)
      throws UnreadableException {
    if (problem.ask() instanceof PairProblem.Ask.OfResultant) {
      return resultant(problem, profile);
    } else if (problem.ask() instanceof PairProblem.Ask.OfLetter) {
      if (problem.common().isEmpty()) {
        throw PairReader.refused(
            "Nothing is given from which the letter could be found.",
            typed,
            "a condition such as “if exactly one common root”");
      } else if (problem.letters().size() > 1) {
        throw new BeyondLettersException("one letter is found from a common root, not several");
      }
      return letter(problem, profile);
    }
    if (!problem.letters().isEmpty()) {
      throw new BeyondLettersException(
          "with letters in two polynomials one may ask for the resultant, or for the letter");
    }
    return problem.ask() instanceof PairProblem.Ask.OfPairs pairs
        ? pairs(problem, pairs.aggregate(), profile)
        : commonRoots(problem, profile);
  }

  private Solution resultant(PairProblem problem, ClassProfile profile) {
    RationalFunction value = PairRoutes.resultantValue(problem);
    Formula written = InLetters.formula(value, problem.letters());
    Formula product = PairRoutes.resultant(problem);
    Claim claim = Claim.equal(PairRoutes.setting(problem), product, written);
    SecondOpinion second = checks.require(problem.ask().shown(), claim);
    boolean number = value.isPolynomial() && value.numerator().isConstant();
    Answer answer =
        number
            ? Answer.exact(value.numerator().coefficient(Monomial.ONE))
            : new Answer.FunctionOf(written);
    return solution("resultant", problem, answer, List.of(), second)
        .with(
            new RouteRunner(checks)
                .run(
                    List.of(new ResultantRoutes.OverFirst(written, answer)),
                    problem,
                    answer,
                    profile),
            SlipRunner.run(ResultantRoutes.SLIPS, problem, answer));
  }

  private Solution letter(PairProblem problem, ClassProfile profile) {
    RationalFunction value = PairRoutes.resultantValue(problem);
    Polynomial resultant = InLetters.inOne(value.numerator(), 1);
    SecondOpinion equal =
        checks.require(
            problem.ask().shown(),
            Claim.equal(
                PairRoutes.setting(problem),
                PairRoutes.resultant(problem),
                InLetters.formula(value, problem.letters())));
    if (resultant.isZero()) {
      Answer every =
          new Answer.Interval(new Formula.Words("every value of " + problem.letters().get(0)));
      return solution("common-root", problem, every, List.of(), equal);
    }
    PairAsked asked = PairAsked.of(problem, resultant);
    Answer answer = new Answer.Solutions(asked.kept());
    SecondOpinion second =
        checks.require(
            problem.ask().shown(),
            new Claim.SolutionSet(
                resultant,
                NumberDomain.COMPLEX,
                asked.candidates().stream().map(Candidate::value).toList()));
    return solution("common-root", problem, answer, warnings(asked), second)
        .with(
            new RouteRunner(checks).run(PairRoutes.LETTER, asked, answer, profile),
            SlipRunner.run(PairSlips.LETTER, asked, answer));
  }

  private static List<Warning> warnings(PairAsked asked) {
    List<Warning> warnings = new ArrayList<>();
    for (Candidate candidate : asked.candidates()) {
      candidate
          .objection()
          .ifPresent(
              objection ->
                  warnings.add(
                      new Warning(
                          WarningCode.EXTRANEOUS,
                          "%s = %s solves the equation and is thrown out: %s."
                              .formatted(
                                  asked.letter(),
                                  LetterSolution.text(candidate.value()),
                                  objection.words()))));
      int common =
          candidate.kept()
              ? NumberAt.common(
                  asked.problem().first(), asked.problem().second(), candidate.value())
              : 0;
      if (common > 1) {
        warnings.add(
            new Warning(
                WarningCode.SEVERAL_PARAMETERS,
                "For %s = %s they share %d roots; say whether exactly one is meant."
                    .formatted(asked.letter(), LetterSolution.text(candidate.value()), common)));
      }
    }
    if (asked.kept().isEmpty()) {
      warnings.add(
          new Warning(
              WarningCode.NO_PARAMETER,
              "No value of %s is left; “no such value” is the answer.".formatted(asked.letter())));
    } else if (asked.kept().size() > 1) {
      warnings.add(
          new Warning(
              WarningCode.SEVERAL_PARAMETERS,
              "%d values of %s satisfy the condition; ask for all of them."
                  .formatted(asked.kept().size(), asked.letter())));
    }
    return warnings;
  }

  private Solution commonRoots(PairProblem problem, ClassProfile profile) {
    Polynomial a = problem.firstNumeric();
    Polynomial b = problem.secondNumeric();
    Polynomial common = a.gcd(b);
    List<ExactValue> values =
        common.degree() < 1
            ? List.of()
            : ExactValues.rootsOf(common).stream().map(ExactRoot::value).toList();
    String x = problem.first().unknown();
    Setting setting = Setting.ofLetters(List.of(x));
    for (Polynomial one : List.of(a, b)) {
      Formula written = PolynomialFormula.of(one, x);
      checks.require(
          written,
          Claim.equal(
              setting,
              written,
              PolynomialFormula.of(common, x)
                  .times(PolynomialFormula.of(one.divide(common).quotient(), x))));
    }
    // Nothing else is shared: the other factors have no root in common.
    Polynomial restA = a.divide(common).quotient();
    Polynomial restB = b.divide(common).quotient();
    Answer answer = new Answer.Solutions(values);
    SecondOpinion second =
        checks.require(
            problem.ask().shown(),
            new Claim.SolutionSet(
                common.degree() < 1 ? Polynomial.ONE : common, NumberDomain.COMPLEX, values));
    List<Warning> warnings = new ArrayList<>();
    if (values.isEmpty()) {
      warnings.add(new Warning(WarningCode.NO_PARAMETER, "The two polynomials share no root."));
    }
    if (restA.degree() >= 1 && restB.degree() >= 1) {
      Rational apart = Resultant.of(restA, restB);
      checks.require(
          problem.ask().shown(),
          new Claim.Equal(
              Setting.of(restA, List.of(problem.names().get(0))).withFunction("B", restB),
              List.of(
                  new Formula.Aggregate(
                      Formula.Aggregate.Operation.PRODUCT,
                      new Formula.Application("B", List.of(Formula.name(problem.names().get(0))))),
                  Formula.number(apart.over(restA.lead().power(restB.degree()))))));
    }
    return solution("common-roots", problem, answer, warnings, second)
        .with(
            new RouteRunner(checks).run(PairRoutes.COMMON, problem, answer, profile),
            new SlipRunner.Slipped(List.of(), List.of()));
  }

  private Solution pairs(PairProblem problem, Formula.Aggregate aggregate, ClassProfile profile) {
    Rational value;
    try {
      value =
          PairsByResultants.value(
              problem.firstNumeric(), problem.secondNumeric(), problem.names(), aggregate);
    } catch (Unevaluable stuck) {
      if (stuck.reason() != Unevaluable.Cause.ZERO_DENOMINATOR) {
        throw new BeyondLettersException(stuck.sentence());
      }
      return solution(
          "pairs",
          problem,
          new Answer.None(stuck.sentence()),
          List.of(
              new Warning(
                  WarningCode.ZERO_DENOMINATOR,
                  "The ask is undefined: %s.".formatted(stuck.sentence()))),
          SecondOpinion.NOTHING_TO_CHECK);
    }
    PairsAsked asked = new PairsAsked(problem, aggregate, value);
    Answer answer = Answer.exact(value);
    SecondOpinion second = checks.require(aggregate, asked.claim(Formula.number(value)));
    return solution("pairs", problem, answer, List.of(), second)
        .with(
            new RouteRunner(checks).run(PairsRoutes.ALL, asked, answer, profile),
            SlipRunner.run(PairSlips.PAIRS, asked, answer));
  }

  private static Solution solution(
      String kind,
      PairProblem problem,
      Answer answer,
      List<Warning> warnings,
      SecondOpinion second) {
    List<String> conditions = new ArrayList<>();
    for (LetteredPolynomial polynomial : List.of(problem.first(), problem.second())) {
      MultivariatePolynomial lead = polynomial.lead();
      if (!lead.isConstant()) {
        conditions.add(UnicodeWriter.write(InLetters.formula(lead, problem.letters())) + " ≠ 0");
      }
    }
    return Solution.of(kind, problem.given(), statement(problem), answer, second)
        .withConditions(conditions.stream().distinct().toList())
        .withWarnings(warnings);
  }

  private static String statement(PairProblem problem) {
    String a = UnicodeWriter.write(problem.first().formula());
    String b = UnicodeWriter.write(problem.second().formula());
    if (problem.ask() instanceof PairProblem.Ask.OfPairs pairs) {
      return "Let %s run over the roots of %s and %s over the roots of %s, complex roots counted with multiplicity. Find %s, taken over all pairs."
          .formatted(
              problem.names().get(0),
              a,
              problem.names().get(1),
              b,
              UnicodeWriter.write(pairs.aggregate()));
    } else if (problem.ask() instanceof PairProblem.Ask.OfLetter letter) {
      return "Given %s and %s, where %s is a real number, find all values of %s for which %s."
          .formatted(
              a,
              b,
              letter.letter(),
              letter.letter(),
              LetterStatement.joined(problem.shown().stream().map(UnicodeWriter::write).toList()));
    }
    return problem.ask() instanceof PairProblem.Ask.OfResultant
        ? "Find the resultant of %s and %s.".formatted(a, b)
        : "Find all numbers, real or not, that are roots of both %s and %s.".formatted(a, b);
  }
}
