package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.step.NumberDomain;

/** What a coach should know of a problem with letters. */
final class LetterWarnings {

  private LetterWarnings() {}

  /** About a letter that was found. */
  static List<Warning> of(LettersAsked asked) {
    List<Warning> warnings = new ArrayList<>();
    LetterSolution solution = asked.solution();
    List<String> complex = new ArrayList<>();
    for (Candidate candidate : solution.thrownOut()) {
      Candidate.Objection objection = candidate.objection().orElseThrow();
      if (code(objection.sort(), asked) == WarningCode.DOMAIN_OPEN) {
        complex.add(LetterSolution.text(candidate.value()));
        continue;
      }
      warnings.add(
          new Warning(
              code(objection.sort(), asked),
              "%s = %s solves the equations and is thrown out: %s."
                  .formatted(
                      asked.letter(), LetterSolution.text(candidate.value()), objection.words())));
    }
    if (!complex.isEmpty()) {
      warnings.add(
          new Warning(
              WarningCode.DOMAIN_OPEN,
              "%s is taken to be real. Over the complex numbers there %s: %s."
                  .formatted(
                      asked.letter(),
                      complex.size() == 1
                          ? "is one more value"
                          : "are %d more values".formatted(complex.size()),
                      String.join(" and ", complex))));
    }
    int kept = solution.kept().size();
    if (kept == 0) {
      warnings.add(
          new Warning(
              WarningCode.NO_PARAMETER,
              solution.candidates().isEmpty()
                  ? "No value of %s satisfies the condition; “no such value” is the answer."
                      .formatted(asked.letter())
                  : "No value of %s is left; “no such value” is the answer."
                      .formatted(asked.letter())));
    } else if (kept > 1) {
      warnings.add(
          new Warning(
              WarningCode.SEVERAL_PARAMETERS,
              "%d values of %s satisfy the condition; ask for all of them, or for their sum."
                  .formatted(kept, asked.letter())));
    }
    domainOpen(asked).ifPresent(warnings::add);
    lead(asked.problem()).ifPresent(warnings::add);
    return warnings;
  }

  private static WarningCode code(Candidate.Objection.Sort sort, LettersAsked asked) {
    boolean taken =
        sort == Candidate.Objection.Sort.LETTER
            && asked.problem().domain(asked.letter()).isEmpty()
            && asked.problem().conditions(Condition.LetterBound.class).isEmpty();
    return sort == Candidate.Objection.Sort.LEAD
        ? WarningCode.LEAD_ZERO
        : taken ? WarningCode.DOMAIN_OPEN : WarningCode.EXTRANEOUS;
  }

  /** Whether it matters that nobody said where the roots lie. */
  private static Optional<Warning> domainOpen(LettersAsked asked) {
    LetteredProblem problem = asked.problem();
    if (!problem.conditions(Condition.AllRoots.class).isEmpty()
        || !problem.conditions(Condition.RealCount.class).isEmpty()) {
      return Optional.empty();
    }
    List<String> unreal =
        asked.solution().candidates().stream()
            .filter(Candidate::kept)
            .filter(candidate -> candidate.roots().stream().anyMatch(root -> !root.isReal()))
            .map(candidate -> LetterSolution.text(candidate.value()))
            .toList();
    return unreal.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Warning(
                WarningCode.DOMAIN_OPEN,
                "For %s = %s not all roots are real; with real roots demanded the answer is another. Say which is meant."
                    .formatted(asked.letter(), String.join(" and ", unreal))));
  }

  /** Where the lead coefficient can vanish. */
  static Optional<Warning> lead(LetteredProblem problem) {
    LetteredPolynomial polynomial = problem.polynomial();
    if (polynomial.lead().isConstant()) {
      return Optional.empty();
    }
    String lead = UnicodeWriter.write(InLetters.formula(polynomial.lead(), polynomial.letters()));
    String where = "";
    if (polynomial.letters().size() == 1) {
      Polynomial inLetter = InLetters.inOne(polynomial.lead(), 1);
      where =
          ExactValues.rootsOf(inLetter).stream()
              .map(ExactRoot::value)
              .filter(NumberDomain.REAL::contains)
              .map(value -> there(polynomial, value))
              .reduce("", String::concat);
    }
    return Optional.of(
        new Warning(
            WarningCode.LEAD_ZERO,
            "The lead coefficient %s may be 0; then there are fewer roots.%s"
                .formatted(lead, where)));
  }

  /** " At m = 3 the equation becomes linear, with the solution x = 5/6." */
  private static String there(LetteredPolynomial polynomial, ExactValue value) {
    String here = " For %s = %s".formatted(polynomial.letters().get(0), LetterSolution.text(value));
    Optional<Polynomial> special = new NumberAt(polynomial, value).rational();
    if (special.isEmpty()) {
      return here + " the degree drops.";
    }
    Polynomial p = special.get();
    return switch (p.degree()) {
      case 1 ->
          "%s the equation becomes linear, with the solution %s."
              .formatted(
                  here,
                  UnicodeWriter.write(
                      Formula.equation(
                          Formula.name(polynomial.unknown()),
                          Formula.number(p.coefficient(0).over(p.lead()).negate()))));
      case -1 -> here + " every number is a solution.";
      case 0 -> here + " there is no solution.";
      default ->
          "%s the equation becomes %s = 0."
              .formatted(here, UnicodeWriter.write(PolynomialFormula.of(p, polynomial.unknown())));
    };
  }
}
